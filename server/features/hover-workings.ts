import type { AstNode } from 'langium';
import { largestSpan, workingLines, workingsOf } from '../../language/figures/index.ts';
import { isGate, isPlace, isRun, isViewer, nodePath } from '../../language/grammar/index.ts';
import { isMetric, type Stock } from '../../language/model/index.ts';
import { LEAST_SERVICE_PRESSURE } from '../../language/standards/index.ts';
import { formatAmount, formatLength, inches, inSystem, type Measure } from '../../language/units/index.ts';
import type { Kept } from '../work/index.ts';

/** A calculation as a hover shows it. */
export interface ToldWorking {
  readonly title: string;
  readonly lines: readonly string[];
}

/** As many as a hover has room for; `slatwright figures` prints them all. */
const MOST = 4;

/** Calculations that concern a statement, with their workings. */
export function workingsAt(node: AstNode, kept: Kept | undefined, measure: Measure): readonly ToldWorking[] {
  if (!kept) return [];
  const path = nodePath(node);
  // A run and a gate are told of by themselves; what their statements say is told there.
  const whole = isRun(node) || isGate(node) || isPlace(node) || isViewer(node);
  const all = workingsOf(kept.work.layout, kept.work.job).filter(({ where: { origin } }) =>
    whole || origin.path === path ? origin.path === path : /^[./]/.test(after(origin.path, path)),
  );
  const system = isMetric(measure) ? 'metric' : 'imperial';
  const told = all.slice(0, MOST).map((working) => ({
    title: `${working.where.label}: ${working.title}`,
    lines: workingLines(working, system),
  }));
  if (all.length <= MOST) return told;
  return [...told, { title: `${all.length - MOST} more`, lines: ['slatwright figures prints them all'] }];
}

const after = (path: string, start: string): string =>
  path.startsWith(start) ? path.slice(start.length) : '';

/** How far a stock spans in the wind of the job, or at the least pressure of the standard. */
export function spanLines(stock: Stock, kept: Kept | undefined, measure: Measure): readonly string[] {
  if (stock.kind === 'post' || stock.kind === 'cleat' || stock.kind === 'channel') return [];
  const stated = kept?.work.job.site.wind;
  const pressure = stated?.kind === 'pressure' ? stated.pressure : LEAST_SERVICE_PRESSURE.value;
  const { span, by } = largestSpan(stock, pressure);
  const wind = formatAmount(
    inSystem({ value: pressure, unit: 'psf' }, isMetric(measure) ? 'metric' : 'imperial'),
  );
  const why = by === 'strength' ? 'what it bears' : 'bending no more than its span over 120';
  const which = stated?.kind === 'pressure' ? 'the wind stated' : "the standard's least wind";
  return [`laid flat, spans at most ${formatLength(inches(span), measure)} at ${wind}, ${which}, by ${why}`];
}
