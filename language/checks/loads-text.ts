import { isMetric, type Job } from '../model/index.ts';
import {
  ceilToStep,
  floorToStep,
  formatAmount,
  formatLength,
  inches,
  inSystem,
  mm,
  type Ticks,
  type UnitName,
} from '../units/index.ts';

/** An amount as the job's reader expects it, to two or three digits: `11 psf`, `0.54 kPa`. */
export function loadText(value: number, unit: UnitName, job: Job): string {
  const shown = inSystem({ value, unit }, isMetric(job.measure.value) ? 'metric' : 'imperial');
  return formatAmount({ value: Number(shown.value.toPrecision(3)), unit: shown.unit });
}

/** Hundredths of an inch or tenths of a millimeter, which is finer than any tape. */
export function fineText(inches: number, job: Job): string {
  return isMetric(job.measure.value) ? `${(inches * 25.4).toFixed(1)} mm` : `${inches.toFixed(2)}"`;
}

/** A length that a calculation asks for at least: up to the next whole inch or 10 mm. */
export function atLeastText(ticks: Ticks, job: Job): string {
  return formatLength(ceilToStep(ticks, coarse(job)), job.measure.value);
}

/** A length that a calculation allows at most: down to a whole inch or 10 mm. */
export function atMostText(ticks: Ticks, job: Job): string {
  return formatLength(floorToStep(ticks, coarse(job)), job.measure.value);
}

const coarse = (job: Job): Ticks => (isMetric(job.measure.value) ? mm(10) : inches(1));
