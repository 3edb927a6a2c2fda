import { formatLength } from './format-length.ts';
import type { Measure } from './measure.ts';
import { inches, mm } from './ticks.ts';

/** Small differences are told to a 64th of an inch or a tenth of a millimeter, whatever the tape is marked to. */
export function fineLength(ticks: number, { unit }: Measure): string {
  const imperial = unit === 'inches' || unit === 'feet';
  return formatLength(Math.round(ticks), {
    unit: imperial ? 'inches' : 'mm',
    step: imperial ? inches(1 / 64) : mm(0.1),
  });
}
