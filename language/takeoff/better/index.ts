/**
 * What would be better: a search over what a builder may choose for a run within the job's limits, and of all that
 * is found the choices that no other beats.
 *
 * Lives here: what may be chosen, what each choice comes to, which are kept. Does not live here: judgment on limits,
 * which the caller brings (checks/).
 */
export { type ChoiceFigures, figuresOf, type SeenShare } from './choice-figures.ts';
export { beats, spreadOver, unbeaten } from './front.ts';
export { refilled } from './restate.ts';
export {
  type Better,
  type BetterChoice,
  type BetterSearch,
  type BetterTask,
  builtBy,
  searchBetter,
} from './search-better.ts';
