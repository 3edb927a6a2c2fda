import { workingsOf } from '../../language/figures/index.ts';
import type { OpenJob } from '../jobs/index.ts';

/** The clear span, in inches, that slats of each run are reckoned with in wind. */
export const spansOf = (open: OpenJob) => figuresOf(open, 'slat-deflection', 'L');

/** The share of the face of each run that is closed, in percent, of which the wind on it is reckoned. */
export const closedOf = (open: OpenJob) => figuresOf(open, 'wind-pressure', 'ε');

/** What goes into a calculation, by the run it is of. */
function figuresOf(
  { layout, job }: OpenJob,
  calculation: string,
  of: string,
): Readonly<Record<string, unknown>> {
  const found = workingsOf(layout, job).filter(({ code }) => code === calculation);
  return Object.fromEntries(
    found.map(({ where, inputs }) => {
      const value = inputs.find(({ symbol }) => symbol === of)?.value;
      return [where.label.split(',')[0], typeof value === 'object' ? value.value : undefined];
    }),
  );
}
