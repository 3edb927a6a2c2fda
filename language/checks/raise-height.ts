import type { RunLayout } from '../layout/index.ts';
import { type Job, lowestGround } from '../model/index.ts';
import { ceilToStep, formatLength, spellLength, type Ticks } from '../units/index.ts';
import type { Fix } from './finding.ts';
import { replaceAt } from './written-change.ts';

/**
 * The way out of a run that ends `lacking` too low: its own `height` statement with so much more, up to the next mark
 * of the tape. None where that is no plain edit: the height is a band, is stated for another run, or was built to
 * already; nor where the job's limit would then be passed. Whether the pattern still closes shows when it is drawn.
 */
export function raisedHeight(run: RunLayout, job: Job, lacking: Ticks): readonly Fix[] {
  const { height, origin: statement } = run.spec;
  const { origin, value } = height;
  if (origin.why !== 'stated' || value.low !== value.high || run.planned) return [];
  if (origin.uri !== statement.uri || !origin.path.startsWith(`${statement.path}/`)) return [];
  const measure = job.measure.value;
  const raised = ceilToStep(value.high + lacking, measure.step);
  if (passesLimit(run, job, raised - value.high)) return [];
  return [
    {
      title: `Raise the height to ${formatLength(raised, measure)}`,
      changes: [replaceAt(origin, `height ${spellLength(raised, measure)}`)],
    },
  ];
}

/** Whether a bay would be higher than the job allows, posts and caps counted. */
function passesLimit({ bays, reach, groundLine, spec }: RunLayout, job: Job, more: Ticks): boolean {
  const limit = job.heightLimit?.value;
  if (limit === undefined) return false;
  const over = spec.tops.value + (spec.caps?.value.thickness.value ?? 0) + more;
  return bays.some(({ number, from, to }) => {
    const top = reach.get(number)?.[1];
    return top !== undefined && top + over - lowestGround(groundLine, from, to) > limit;
  });
}
