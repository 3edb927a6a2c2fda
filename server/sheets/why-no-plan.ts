import type { Job } from '../../language/model/index.ts';
import type { BoardPlan } from '../../language/takeoff/index.ts';
import { formatLength, type Ticks } from '../../language/units/index.ts';

/** Why there is no plan for the boards of a stock, as what follows its name. */
export function whyNoPlan({ none, demands }: BoardPlan, job: Job): string {
  const length = (ticks: Ticks) => formatLength(Math.floor(ticks), job.measure.value);
  switch (none?.kind) {
    case 'no-lengths':
      return 'states no lengths, so no boards can be planned';
    case 'too-long': {
      const lengths = new Set(demands.flatMap(({ wanted }) => wanted.map((one) => one.length)));
      const over = [...lengths].filter((one) => one > none.longest).sort((a, b) => b - a);
      return over.length > 0
        ? `pieces of ${over.map(length).join(', ')} are longer than any board gives, ${length(none.longest)}`
        : 'pieces are longer than any board that is wide enough';
    }
    case 'too-wide':
      return `pieces are wider than any board gives, ${length(none.widest)}`;
    default:
      return 'no plan was found in the time there was';
  }
}
