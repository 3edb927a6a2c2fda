import type { Job } from '../../language/model/index.ts';
import { searchTakeoff, type Takeoff } from '../../language/takeoff/index.ts';
import type { TakeoffFiles } from '../protocol.ts';
import { asCsv, orderRows, settingSheets, ticketsOf, whyNoPlan } from '../sheets/index.ts';
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
      const order = orderRows(takeoff, job);
      return {
        order,
        csv: { name: 'order.csv', text: asCsv(order) },
        sheets: [...ticketsOf(takeoff, job), ...settingSheets(layout, job)],
        notes: notesOf(takeoff, job),
      };
    },
  };
}

function notesOf({ plans }: Takeoff, job: Job): readonly string[] {
  return plans.flatMap((plan) => {
    const { name } = plan.bought;
    if (plan.none) return [`${name}: ${whyNoPlan(plan, job)}`];
    return plan.proven ? [] : [`${name}: ${proofOfPlan(plan)}`];
  });
}
