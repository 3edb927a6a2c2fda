import { startApp } from './app.ts';
import { editorHost } from './host.ts';

startApp(editorHost(), document.body);
