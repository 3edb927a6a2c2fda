import type { LangiumDocument } from 'langium';
import type { SlatSharedServices } from '../../language/grammar/index.ts';
import { layOutJob } from '../../language/layout/index.ts';
import type { Job, RunSpec } from '../../language/model/index.ts';
import { type Pile, pileOf, refilled } from '../../language/takeoff/index.ts';
import { betterTask } from './better-task.ts';

/** A pattern for a run, and what the boards on hand give of it. */
export interface PileWay {
  readonly name: string;
  /** As a `fill` states it. */
  readonly fill: string;
  /** The run has it as it stands. */
  readonly own: boolean;
  readonly pile: Pile;
}

/** What the boards on hand give of a run, by every pattern of the file that closes in it; the one they give most of first. */
export function pileWays(
  shared: SlatSharedServices,
  document: LangiumDocument,
  job: Job,
  run: RunSpec,
): readonly PileWay[] {
  const ways = betterTask(shared, document, job, run.name)?.fills.ways ?? [];
  const found = ways.flatMap((way): PileWay[] => {
    const filling = way.filled();
    if (!filling) return [];
    const spec = way.own ? run : refilled(run, filling);
    const { runs } = layOutJob({ ...job, runs: job.runs.map((one) => (one === run ? spec : one)) });
    const laid = runs.find((one) => one.spec.name === run.name);
    if (!laid?.sound || laid.fits.some(({ chosen }) => !chosen)) return [];
    return [{ name: way.name, fill: filling.text, own: way.own, pile: pileOf(laid, job) }];
  });
  return found.sort((a, b) => shareOf(b) - shareOf(a));
}

/** Whole bays first; of as many, the more courses. */
function shareOf({ pile: { bays, courses } }: PileWay): number {
  return bays.can / Math.max(1, bays.of) + courses.can / Math.max(1, courses.of) / 100;
}
