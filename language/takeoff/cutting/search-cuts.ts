import { searchNested } from './nest/nested-search.ts';
import { type CutSearch, searchSquare } from './plan-cuts.ts';
import type { CutInstance, CutPlan, NoPlan } from './problem.ts';

/**
 * Begins a search for the cheapest way to cut an instance: least cost, then fewest boards, then the longest single
 * offcut; or where it is asked for, then fewest settings of the saw. Where pieces are narrower than boards, of all plans
 * that crosscut a board into parts, rip each part into strips over its length, and crosscut these into pieces. The first
 * plan is there at once; `run` improves it and raises the bound until they meet. The same instance gives the same plans
 * in the same order, whenever it is interrupted.
 * Where pieces have angled ends, they lie so that alike ends meet where that saves a board.
 *
 * @throws RangeError for lengths, counts or prices that are negative, or not whole where they must be
 */
export function searchCuts(instance: CutInstance): CutSearch {
  return instance.pieces.some(({ ends }) => ends !== undefined)
    ? searchNested(instance, searchSquare)
    : searchSquare(instance);
}

/**
 * The cheapest way to cut an instance, as far as it is found before `enough`; without it, to the end, however long
 * that takes. See `searchCuts`.
 */
export function planCuts(instance: CutInstance, enough: () => boolean = () => false): CutPlan | NoPlan {
  const found = searchCuts(instance);
  found.run(enough);
  return found.plan();
}
