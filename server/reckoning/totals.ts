import { searchTakeoff, type Takeoff, type TakeoffSearch } from '../../language/takeoff/index.ts';
import { formatMoney } from '../../language/units/index.ts';
import type { Material } from '../protocol.ts';
import type { Work } from '../work/work-out.ts';
import { materialLines } from './material-lines.ts';
import { type RunTotals, runTotals } from './run-totals.ts';
import type { Sliced } from './sliced.ts';
import { countsOf, orderCost, proofOf } from './words.ts';

/** What a job and each of its runs come to, in words, and what is bought for it. */
export interface Totals {
  readonly job: string;
  readonly runs: readonly RunTotals[];
  readonly lines: readonly Material[];
  /** Keys of the pieces under lines, by the line's id. */
  readonly pieces: Readonly<Record<string, readonly string[]>>;
}

export type { RunTotals } from './run-totals.ts';

/** Counts and plans first, then proof, as long as there is time. */
export function seekTotals({ job, layout }: Work): Sliced<Totals> {
  let search: TakeoffSearch | undefined;
  const runs: RunTotals[] = [];
  const left = [...layout.runs];
  const takeoff = (): TakeoffSearch => {
    search ??= searchTakeoff(layout, job);
    return search;
  };
  const done = () => search !== undefined && left.length === 0 && search.done();
  return {
    done,
    run: (enough) => {
      takeoff();
      for (let run = left[0]; run && !enough(); run = left[0]) {
        runs.push(runTotals(run, layout, job));
        left.shift();
      }
      if (!enough()) takeoff().run(enough);
    },
    found: (over) => {
      const found = takeoff().takeoff();
      const { lines, pieces } = materialLines(found, job);
      return { job: jobText(found, over), runs: [...runs], lines, pieces };
    },
  };
}

/** Of the whole job. `over`: nothing more is going to be found out. */
function jobText(found: Takeoff, over: boolean): string {
  const { plans, price } = found;
  const counts = countsOf(plans);
  const order = price && orderCost(price);
  const words = [
    ...(counts === '' ? [] : [`${counts} to buy`]),
    ...(order === undefined ? [] : [`order ${order}`]),
    ...(price && price.gross > 0 && price.labor > 0
      ? [`price ${formatMoney({ minor: price.gross, currency: price.currency })}`]
      : []),
    ...(counts === '' ? [] : [proofOf(found, over)]),
  ];
  return words.length > 0 ? words.join(', ') : 'nothing to buy yet';
}
