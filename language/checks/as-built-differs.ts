import { type BuiltWay, type BuiltWays, builtWays, measuredAt } from '../figures/index.ts';
import type { ChoiceKind, RunLayout } from '../layout/index.ts';
import { fineLength, inches, type Measure, mm, type Ticks } from '../units/index.ts';
import { describeWay, overText, whatDiffers } from './as-built-text.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding, Fix } from './finding.ts';
import { moreWays } from './more-ways.ts';

/** A pattern that comes out otherwise than planned with what was measured, and every way to take that up. */
export const asBuiltDiffers: LimitedRunCheck = {
  kind: {
    code: 'as-built-differs',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      'a difference is spread over all gaps where it is hardly seen: 1/8" a gap, 1/16" beside a gap as planned',
    ),
    threshold: {
      is: 'length',
      imperial: inches(1 / 32),
      metric: mm(0.8),
      says: 'how far gaps may come out from the planned ones without being told',
    },
    message: (a) =>
      `${a.where} comes out otherwise than planned: ${a.differs}. ${a.verdict}${a.ways === '' ? '' : ` ${a.ways}`}`,
  },
  check: (run, job) => {
    const least = thresholdOf(job, asBuiltDiffers.kind);
    return builtWays(run, job).flatMap((found) =>
      isOtherwise(found, least, run) ? [toldOf(run, found, job.measure.value)] : [],
    );
  },
};

/** Whether anything of it is worth telling. */
function isOtherwise({ panels, built }: BuiltWays, least: Ticks, { spec: { measure } }: RunLayout): boolean {
  return panels.some(({ planned, built: now }) => {
    const [before, after] = [planned.choice, now.choice];
    // What was not to close is told as such.
    if (!before) return false;
    if (!after) return true;
    return (
      Math.abs(now.gap - planned.gap) > least ||
      before.count !== after.count ||
      ripOf(before.kind) !== ripOf(after.kind) ||
      Math.abs((before.width ?? 0) - (after.width ?? 0)) > measure.step ||
      (built?.edgeChange ?? 0) > measure.step
    );
  });
}

/** Gaps and ends are held against the plan by themselves. */
const ripOf = (kind: ChoiceKind): ChoiceKind | undefined =>
  kind === 'rip-last' || kind === 'change-width' || kind === 'trim' ? kind : undefined;

function toldOf(run: RunLayout, found: BuiltWays, measure: Measure): Finding {
  const { gate, panels, ways } = found;
  const others = ways.filter((way) => !way.built && way.changes.length > 0);
  const worst = [...panels].sort(
    (a, b) => Math.abs(b.built.gap - b.planned.gap) - Math.abs(a.built.gap - a.planned.gap),
  )[0];
  const at = measuredAt(run, worst ?? {});
  return {
    code: 'as-built-differs',
    at,
    args: {
      where: gate === undefined ? run.spec.name : `Gate ${gate}`,
      differs: whatDiffers(found, measure),
      verdict: verdictOf(found, measure),
      ways: waysText(others, ways[0], measure),
    },
    fixes: others.map((way, index): Fix => {
      const text = describeWay(way, measure);
      const title = text.charAt(0).toUpperCase() + text.slice(1);
      return { title, changes: way.changes, preferred: index === 0 && !ways[0]?.built };
    }),
  };
}

function verdictOf({ built }: BuiltWays, measure: Measure): string {
  if (!built?.closes) return 'It does not close as it was asked for.';
  return built.within
    ? `That is hardly seen, as up to ${fineLength(built.limit, measure)} a gap is.`
    : `That is seen, as ${overText(built, measure)} is.`;
}

function waysText(others: readonly BuiltWay[], best: BuiltWay | undefined, measure: Measure): string {
  // What is hardly seen may stay as it is.
  if (others.length === 0 && best?.within) return '';
  if (others.length === 0) return 'No other way was found: change the height, the bottom or a width.';
  if (!best || best.built)
    return `${best?.within ? 'It is the best there is' : 'No other way is seen less'}; ${moreWays(others.length)}.`;
  return `Best: ${describeWay(best, measure)}${others.length > 1 ? `; ${moreWays(others.length - 1)}` : ''}.`;
}
