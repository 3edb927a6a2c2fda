import { formatLength, type Measure, type Ticks } from '../units/index.ts';

/**
 * A length as written along a dimension line. Feet and inches bear their marks; metric numbers stand
 * bare, as is usual on drawings, and a note beside the title names their unit (see `unitNote`).
 */
export function dimensionText(t: Ticks, measure: Measure): string {
  const text = formatLength(t, measure);
  const unit = bareUnit(measure);
  return unit !== '' && text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;
}

/** The unit that dimension texts leave out; empty where they bear their marks. */
export function bareUnit(measure: Measure): string {
  return measure.unit === 'feet' || measure.unit === 'inches' ? '' : measure.unit;
}

/** What must be said beside the title so that bare numbers are understood; empty where they are not bare. */
export function unitNote(measure: Measure): string {
  const unit = bareUnit(measure);
  return unit === '' ? '' : `lengths in ${unit}`;
}
