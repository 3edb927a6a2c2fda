import type { Job } from '../../language/model/index.ts';
import type { BoardPlan } from '../../language/takeoff/index.ts';
import { formatLength, type Ticks } from '../../language/units/index.ts';

/** So many lengths are told one by one, the longest. */
const TOLD = 3;

/** Why there is no plan for the boards of a stock, as what follows its name. */
export function whyNoPlan({ none, demands }: BoardPlan, job: Job): string {
  const length = (ticks: Ticks) => formatLength(Math.floor(ticks), job.measure.value);
  switch (none?.kind) {
    case 'no-lengths':
      return 'states no lengths, so no boards can be planned';
    case 'too-long': {
      const over = countsOver(demands, none.longest);
      if (over.length === 0) return 'pieces are longer than any board that is wide enough';
      const told = over.slice(0, TOLD).map(([one, count]) => `${count} of ${length(one)}`);
      const others = over.slice(TOLD);
      const count = others.reduce((sum, [, many]) => sum + many, 0);
      if (others.length > 0)
        told.push(`${count} of ${others.length === 1 ? 'another length' : `${others.length} other lengths`}`);
      const are = over.length === 1 && over[0]?.[1] === 1 ? 'is' : 'are';
      return `${told.join(', ')} ${are} longer than any board gives, ${length(none.longest)}`;
    }
    case 'too-wide':
      return `pieces are wider than any board gives, ${length(none.widest)}`;
    default:
      return 'no plan was found in the time there was';
  }
}

/** Lengths that are too long, the longest first, and how many pieces have each. */
function countsOver(demands: BoardPlan['demands'], longest: Ticks): readonly (readonly [Ticks, number])[] {
  const counts = new Map<Ticks, number>();
  for (const { wanted } of demands)
    for (const { length, pieces } of wanted)
      if (length > longest) counts.set(length, (counts.get(length) ?? 0) + pieces.length);
  return [...counts].sort(([a], [b]) => b - a);
}
