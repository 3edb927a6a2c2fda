/**
 * Jobs read from files in memory, as far as an editor or the command line takes them: text to findings
 * and views. Tests of whole jobs open theirs here.
 */

export { replaceText, textAfter } from './apply-edits.ts';
export { type Example, examples, exampleTexts } from './examples.ts';
export { type OpenJob, openJob, openJobs, textOfFinding } from './open-job.ts';
