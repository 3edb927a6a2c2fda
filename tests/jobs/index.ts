/**
 * Jobs read from files in memory, as far as an editor or the command line takes them: text to findings
 * and views. Tests of whole jobs open theirs here.
 */
export { allJobs, openAll, type WholeJob } from './all-jobs.ts';
export { replaceText, textAfter } from './apply-edits.ts';
export { type Example, examples, exampleTexts } from './examples.ts';
export { type MadeJob, madeJobs } from './made-jobs.ts';
export { type OpenJob, openJob, openJobs, textOfFinding } from './open-job.ts';
