/**
 * The sheets of a takeoff: shown as they would be written, opened as files, saved into a folder.
 *
 * Lives here: showing and saving. Does not live here: what stands on a sheet (server).
 */
export { activateTakeoff } from './activate.ts';
