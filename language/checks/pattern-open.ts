import { infillOf } from '../figures/index.ts';
import type { FitChoice, FitResult } from '../layout/index.ts';
import { formatLength, type Measure } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';
import type { Fix } from './finding.ts';
import { moreWays } from './more-ways.ts';

/** A pattern that does not fill its space, with every way out as an edit. */
export const patternOpen: RunCheck = {
  kind: {
    code: 'pattern-open',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('ways to make a pattern land, tried in the order builders try them'),
    message: (a) =>
      `The pattern ${a.pattern} does not close${a.gate === '' ? '' : ` in gate ${a.gate}`}: ${a.leftover} of ${a.space} is left over after ${a.count} slats. ${a.ways}`,
  },
  check: (run, job) =>
    run.fits
      .filter(({ mirrored }) => !mirrored)
      .filter((fit) => !fit.chosen)
      .map((fit) => {
        const infill = infillOf(run, fit.gate);
        return {
          code: 'pattern-open',
          at: infill.fill,
          args: {
            pattern: infill.pattern.name,
            gate: fit.gate ?? '',
            leftover: formatLength(fit.leftover, job.measure.value),
            space: formatLength(fit.space, job.measure.value),
            count: fit.nominalCount,
            ways: waysOut(fit, job.measure.value),
          },
          fixes: fit.choices.map((choice, at) => fixOf(choice, job.measure.value, at === 0)),
        };
      }),
};

function waysOut(fit: FitResult, measure: Measure): string {
  const [best] = fit.choices;
  if (!best) return 'No remedy closes it: change the height, the bottom, or a width.';
  const rest = fit.choices.length - 1;
  return `Best: ${describeChoice(best, measure)}${rest > 0 ? `; ${moreWays(rest)}` : ''}.`;
}

function fixOf(choice: FitChoice, measure: Measure, preferred: boolean): Fix {
  const text = describeChoice(choice, measure);
  return { title: text.charAt(0).toUpperCase() + text.slice(1), changes: choice.changes, preferred };
}

/** One way to close a pattern with its numbers, as a phrase: "spread the rest over the gaps: 9/16" instead of 1/2"". */
export function describeChoice(choice: FitChoice, measure: Measure): string {
  const gap = formatLength(Math.round(choice.gap), measure);
  const width = choice.width === undefined ? '' : formatLength(choice.width, measure);
  const slats = `${choice.count} slats`;
  switch (choice.kind) {
    case 'as-drawn':
      return `as written: ${slats}`;
    case 'move-ends':
      if (choice.bottom !== undefined && choice.height !== undefined)
        return `move the ends: bottom ${formatLength(choice.bottom, measure)}, height ${formatLength(choice.height, measure)}, ${slats}`;
      return `share the rest between both edges: ${formatLength(choice.lead, measure)} each, ${slats}`;
    case 'gaps':
      return `spread the rest over the gaps: ${gap} each, ${slats}`;
    case 'short-repeat':
      return `stop short in the repeat: ${slats}, gaps ${gap}`;
    case 'rip-last':
      return `rip the last slat to ${width}: ${slats}`;
    case 'change-width':
      return `make ${choice.slat} ${width} wide: ${slats}, gaps ${gap}`;
    case 'trim':
      return `close with a board at the ${choice.edge ?? 'bottom'}, ripped to ${width}: ${slats}`;
  }
}
