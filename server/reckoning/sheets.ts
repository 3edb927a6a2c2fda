import { searchTakeoff, type Takeoff } from '../../language/takeoff/index.ts';
import type { TakeoffFiles } from '../protocol.ts';
import { asCsv, fileNameOf, orderRows, ticketsOf } from '../sheets/index.ts';
import type { Work } from '../work/work-out.ts';
import type { Sliced } from './sliced.ts';
import { proofOfPlan } from './words.ts';

/** The order and the tickets of a takeoff, proven as far as there is time. */
export function seekSheets({ job, layout }: Work): Sliced<TakeoffFiles> {
  const search = searchTakeoff(layout, job);
  return {
    done: () => search.done(),
    run: (enough) => search.run(enough),
    found: () => {
      const takeoff = search.takeoff();
      return {
        order: asCsv(orderRows(takeoff, job)),
        sheets: [...ticketsOf(takeoff, job)].map(([name, svg]) => ({ name: fileNameOf(name), svg })),
        notes: notesOf(takeoff),
      };
    },
  };
}

function notesOf({ plans }: Takeoff): readonly string[] {
  return plans.flatMap((plan) => {
    const { name } = plan.bought;
    if (plan.none) return [`${name} has no plan`];
    return plan.proven ? [] : [`${name}: ${proofOfPlan(plan)}`];
  });
}
