import type { RunLayout } from '../../layout/index.ts';
import { isMeasured, type Job } from '../../model/index.ts';
import type { Published } from '../../standards/index.ts';
import { toInches } from '../../units/index.ts';
import { type BuiltPanel, measuredAt } from '../as-built.ts';
import { type BuiltWays, builtWays } from '../as-built-ways.ts';
import { infillOf } from '../infill-of.ts';
import type { Working } from '../working.ts';
import { amount, inchesOf, input, step } from './amounts.ts';

const SPREAD: Published = {
  source: 'common practice',
  section: 'a difference of 1/8" (3 mm) a gap is hardly seen, of 1/16" (1.5 mm) beside a gap as planned',
  confirmed: 'secondary',
};

/** Gaps as built beside those planned, panel by panel, where something was measured. */
export function asBuiltGaps(run: RunLayout, job: Job): readonly Working[] {
  return builtWays(run, job).flatMap((found) =>
    found.panels.flatMap((panel) => workingOf(run, found, panel)),
  );
}

function workingOf(run: RunLayout, { built }: BuiltWays, panel: BuiltPanel): readonly Working[] {
  const { choice, fit, gap } = panel.built;
  if (!choice || choice.count < 2) return [];
  const { spec } = run;
  const of = panel.gate === undefined ? spec.name : `${spec.name}, gate ${panel.gate}`;
  const where = panel.bay === undefined ? of : `${of}, bay ${panel.bay}`;
  const space = choice.bottom === undefined || fit.upright ? fit.space : (choice.height ?? 0) - choice.bottom;
  const gaps = choice.count - 1;
  // What is neither gap nor edge is slats, and what closes them.
  const solid = space - gaps * gap - choice.lead - choice.tail;
  const off = gap - panel.planned.gap;
  const boards = new Map(
    infillOf(run, panel.gate).pattern.repeat.flatMap(({ value }) =>
      isMeasured(value) ? [[value.name, value] as const] : [],
    ),
  );
  const measured = [...boards.values()].map(({ name, width, measured: sizes, parent }) => {
    const count = sizes?.widths.length ?? parent?.measured?.widths.length ?? 0;
    return input(`${name}, mean width`, 'w', inchesOf(width.value), `measured on ${count} boards`);
  });
  return [
    {
      code: 'as-built-gap',
      title: 'Gaps as built',
      where: { origin: measuredAt(run, panel), label: where, run: run.key },
      formula: 'g = (H - Σw - edges) / (n - 1)',
      inputs: [
        input(fit.upright ? 'width to fill' : 'height to fill', 'H', inchesOf(space), 'as it stands'),
        input('slats', 'n', amount(choice.count, ''), 'as laid out'),
        ...measured,
        input('slats and what closes them, together', 'Σw', inchesOf(solid), 'the pieces'),
        input('edges, together', '', inchesOf(choice.lead + choice.tail), 'as laid out'),
        input('gap as planned', '', inchesOf(panel.planned.gap), 'the plan'),
      ],
      steps: [
        step('gap as built, g', inchesOf(gap)),
        step('more (or less) than planned, each', inchesOf(off)),
      ],
      figure: inchesOf(Math.abs(off)),
      ...(built
        ? { limit: { name: 'hardly seen', is: 'at most' as const, ...amount(toInches(built.limit), 'in') } }
        : {}),
      basis: [SPREAD],
      notes: [],
    },
  ];
}
