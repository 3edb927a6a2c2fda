/**
 * The connection to the language server: starting it, and the few requests of our own.
 *
 * Lives here: everything that knows `vscode-languageclient`. Does not live here: what is done with answers.
 */
export { activateLanguageClient, type LanguageServer } from './activate.ts';
export type { PictureSource } from './picture-source.ts';
export type { MaterialsSource, ReckoningSource } from './reckoning-source.ts';
