/**
 * The cutting planner: from pieces and boards to a plan that is proven to cost least, or is told how far from that
 * it may be. Plain numbers in, plain numbers out; nothing here knows screens, editors or clocks, so it runs alike in
 * Node, in a worker and in slices between keystrokes.
 *
 * The method. A plan is so many boards cut by each of many patterns. Their relaxed program is solved by column
 * generation (Gilmore and Gomory, "A linear programming approach to the cutting-stock problem", 1961 and 1963), with
 * bounded knapsacks for new patterns (Martello and Toth, "Knapsack Problems", 1990). The worths it ends with, made
 * whole numbers, bound what any number of boards can hold; so the cheapest numbers of boards that are not ruled out
 * are a lower bound that rests on no rounding. They are tried in the order of cost, ruled out by the relaxed program
 * for just these boards (as the cuts of Benders, 1962), or filled by diving (Belov and Scheithauer, "A
 * branch-and-cut-and-price algorithm", 2006) and by trying all ways. Worths at prices a little off are found beforehand:
 * they rule out most numbers of boards before any is tried. References are from memory.
 *
 * Where pieces are narrower than boards, a board is crosscut into parts, a part ripped into strips over its length, a
 * strip crosscut into pieces. What a board can hold is then a knapsack in two stages (Gilmore and Gomory, "Multistage
 * cutting stock problems of two and more dimensions", 1965); all else stays as it is. A proof is one for plans of this
 * kind. Its knapsacks take no piece too often within a strip, but may from strip to strip; where that leaves a gap, all
 * patterns that could close it are listed, as long as they are not too many.
 *
 * Fewest settings. Boards cut alike are cut together, and the stop is set once for each length of each pattern; so a plan has a
 * setting for each length, and one more each time that a length is in another pattern. (Fewest patterns, which is what is
 * mostly asked for, as by Haessler, "Controlling cutting pattern changes in one-dimensional trim problems", 1975, would
 * count one of five lengths as much as one of a single length.) Among plans that cost no more than is allowed, patterns
 * are combined a few at a time, and all ways are tried with as few settings as are not shown to be too few; of boards
 * that are ripped only the former, by different pieces instead of stops, so that fewest is proven there only where each
 * stop and each width of the fence is set once.
 *
 * Angled ends (`nest/`). Pieces lie so that ends cut alike meet, each turned by half a turn as its board allows. The planner
 * itself knows no angles: it is given what each piece takes from tip to tip, which always fits, and the least it can need
 * in any row, whose bound is one for every way to lay the pieces; and what lies between. Plans are then laid out, and those
 * whose pieces do not fit as found are dropped. So the cheapest plan need not be found, but what is proven holds; where no
 * plan meets the bound, that is said.
 */
export { turnedEnds } from './nest/ends.ts';
export type { CutSearch } from './plan-cuts.ts';
export type {
  CutBoard,
  CutDemand,
  CutEnd,
  CutInstance,
  CutPart,
  CutPlace,
  CutPlan,
  CutStock,
  CutStrip,
  CutTurn,
  NoPlan,
} from './problem.ts';
export { planCuts, searchCuts } from './search-cuts.ts';
