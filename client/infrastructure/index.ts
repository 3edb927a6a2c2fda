/**
 * What every feature of the client leans on: owning things that must be let go, and the log.
 *
 * Lives here: nothing that knows of pictures, findings or the language. Does not live here: features.
 */
export { DisposableStore } from './disposable-store.ts';
export { createLog, type Log } from './log.ts';
