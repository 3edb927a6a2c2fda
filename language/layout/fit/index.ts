/**
 * Pattern fit: which slats, gaps and ends make a pattern fill its space to the tick, by which remedy,
 * what else would, and the edits of the text that make each. One file a remedy.
 *
 * Lives here: whole-tick arithmetic in the direction the pattern reads. Does not live here: pieces,
 * places in space, judgment on what is chosen.
 */
export { fitAlternate, type Layers, layOutAlternate } from './alternate.ts';
export type { Ask } from './asks.ts';
export { changesFor } from './changes.ts';
export { chosenFit, fitPattern, type PatternFit } from './fit-pattern.ts';
export { gapTolerance, leastOverlap } from './habits.ts';
export { type Laid, layOut, type Slot } from './lay-out.ts';
export type { FitProblem, FitTarget, RepeatSlat, TrimBoard } from './problem.ts';
export { MOST_SLATS } from './problem.ts';
export { TRIED } from './rank.ts';
export { spellName } from './spell-name.ts';
