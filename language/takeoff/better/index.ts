/**
 * What would be better: a search over what a builder may choose for a run within the job's limits, and of all that
 * is found the choices that no other beats.
 *
 * Lives here: what may be chosen, what each choice comes to, which are kept. Does not live here: judgment on limits,
 * which the caller brings (checks/).
 */
export type { Better, BetterChoice, BetterSearch, BetterTask } from './better-task.ts';
export { type ChoiceFigures, figuresOf, type SeenShare } from './choice-figures.ts';
export { beats, spreadOver, unbeaten } from './front.ts';
export { builtBy } from './kept-choices.ts';
export { refilled } from './restate.ts';
export { searchBetter } from './search-better.ts';
