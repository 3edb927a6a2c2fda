/**
 * The preview's page: draws the picture with svg.js, patched by key, and lets it be looked at and picked from.
 *
 * Lives here: what runs in the page. Does not live here: `vscode`, `node:` modules, any calculation of the job.
 * `picture/` holds what is known, `canvas/` draws it, `page/` holds what stands around it.
 */
export { type App, startApp } from './app.ts';
export type { Host } from './host.ts';
