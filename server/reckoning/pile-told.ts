import type { RunSpec } from '../../language/model/index.ts';
import { formatLength } from '../../language/units/index.ts';
import type { PileTold } from '../protocol.ts';
import { type PileWay, pileWays } from '../work/pile-ways.ts';
import type { Subject } from './begin-work.ts';
import type { Sliced } from './sliced.ts';

/** What the boards on hand still give of each run, run by run. */
export function tellPile({ shared, document, work: { job } }: Subject): Sliced<PileTold> {
  const left = job.runs.filter((run): run is RunSpec => !('broken' in run));
  const runs: PileTold['runs'][number][] = [];
  const length = (ticks: number) => formatLength(ticks, job.measure.value);
  const told = ({ name, own, pile: { bays, courses, missing } }: PileWay) => ({
    pattern: own ? `${name}, as it stands` : name,
    gives: `${bays.can} of ${bays.of} bays, or ${courses.can} of ${courses.of} courses`,
    missing: missing
      .map(({ stock, length: each, count }) => `${count} of ${stock} ${length(each)}`)
      .join(', '),
  });
  return {
    done: () => left.length === 0 || job.onHand.length === 0,
    run: (enough) => {
      for (let run = left[0]; run && job.onHand.length > 0 && !enough(); run = left[0]) {
        runs.push({ run: run.name, ways: pileWays(shared, document, job, run).map(told) });
        left.shift();
      }
    },
    found: () => ({ empty: job.onHand.length === 0, runs: [...runs] }),
  };
}
