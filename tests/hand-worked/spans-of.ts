import { workingsOf } from '../../language/figures/index.ts';
import type { OpenJob } from '../jobs/index.ts';

/** The clear span, in inches, that slats of each run are reckoned with in wind. */
export function spansOf({ layout, job }: OpenJob): Readonly<Record<string, unknown>> {
  const bent = workingsOf(layout, job).filter(({ code }) => code === 'slat-deflection');
  return Object.fromEntries(
    bent.map(({ where, inputs }) => {
      const span = inputs.find(({ symbol }) => symbol === 'L')?.value;
      return [where.label.split(',')[0], typeof span === 'object' ? span.value : undefined];
    }),
  );
}
