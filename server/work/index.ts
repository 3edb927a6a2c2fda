/**
 * From a linked document to its job, layout, findings and picture, and what is kept of each open
 * document so that only what an edit changed is worked out and sent.
 *
 * Lives here: the order of the stages and the keeping. Does not live here: the stages themselves
 * (language/), anything of Node: this runs in a worker too.
 */
export { betterTask, verdictOf } from './better-task.ts';
export { type Kept, WorkKeeper } from './keeper.ts';
export { goodRuns, type LastGood, shownRuns, viewsOfShown } from './picture.ts';
export { type PileWay, pileWays } from './pile-ways.ts';
export { type PlacedFinding, placeFindings } from './place-findings.ts';
export { answerPictureRequests } from './requests.ts';
export { runAt, runsIn } from './run-at.ts';
export { jobContext, type Work, workOut } from './work-out.ts';
export { normalUri, workedOut } from './worked-out.ts';
