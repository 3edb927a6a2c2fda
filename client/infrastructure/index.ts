/**
 * What every feature of the client leans on: owning things that must be let go, the log, which document a
 * command is about and what it is called, leading to a place of a text, telling what went wrong.
 *
 * Lives here: nothing that knows of pictures, findings or the language. Does not live here: features.
 */
export { askedDocument } from './asked-document.ts';
export { DisposableStore } from './disposable-store.ts';
export { fileNameOf } from './file-name.ts';
export { createLog, type Log } from './log.ts';
export { SourceReveal } from './source-reveal.ts';
export { toldWhenItFails } from './told-when-it-fails.ts';
