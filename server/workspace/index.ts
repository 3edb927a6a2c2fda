/**
 * Files: which are read and when, what happens when they are opened and closed, and what waits for
 * which of them.
 *
 * Lives here: what holds for every host. `real-bounds.ts` alone needs Node and is left out, so that a
 * worker can be bundled; entries for Node import it by its own name.
 */
export { askAllFiles } from './ask-all-files.ts';
export { OpenFileUpdates } from './open-file-updates.ts';
export { PatientDocumentBuilder } from './patient-builder.ts';
export { GradualWorkspaceManager } from './workspace-manager.ts';
