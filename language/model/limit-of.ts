import { isMetric } from './defaults.ts';
import type { Job, StatedThreshold, ThresholdMeasure } from './job.ts';

/** What the job itself states with `threshold CODE`, in the measure it is meant in. */
export function statedLimit(
  { thresholds }: Pick<Job, 'thresholds'>,
  name: string,
  measure: ThresholdMeasure,
): StatedThreshold | undefined {
  return thresholds.find(({ code, is }) => code === name && is === measure);
}

/**
 * A limit of a job: its own, or the habit of the trade in its system; in ticks, percent, degrees or times. What a
 * finding is told from on and what a figure is held against are one.
 */
export function limitOf(
  job: Pick<Job, 'thresholds' | 'measure'>,
  name: string,
  measure: ThresholdMeasure,
  habit: { readonly imperial: number; readonly metric: number },
): number {
  return statedLimit(job, name, measure)?.value ?? habit[isMetric(job.measure.value) ? 'metric' : 'imperial'];
}
