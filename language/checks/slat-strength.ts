import { largestSpan, type SlatFigures, slatFigures, WAVY, windOn } from '../figures/index.ts';
import type { RunLayout } from '../layout/index.ts';
import type { Job } from '../model/index.ts';
import { formatLength, inches, mm, toInches } from '../units/index.ts';
import { commonPractice, type LimitedRunCheck, thresholdOf } from './define.ts';
import type { Finding } from './finding.ts';
import { atMostText, fineText, loadText } from './loads-text.ts';

/** A slat that bends too far, or past what it bears, in the wind the job states. */
export const slatBends: LimitedRunCheck = {
  kind: {
    code: 'slat-bends',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      `in wind a slat bends no farther than its span over ${WAVY}; stresses by NDS, or as the material states`,
    ),
    threshold: {
      is: 'times',
      imperial: WAVY,
      metric: WAVY,
      says: 'how many times its deflection in wind a slat spans at least',
    },
    message: (a) =>
      `In a wind of ${a.wind}, ${a.slat} bends ${a.bends} over ${a.span}${a.stress === '' ? '' : ` and is stressed to ${a.stress} of what it bears`}. ` +
      `Spans of at most ${a.largest} would do, or thicker slats.`,
  },
  check: (run, job) =>
    worstByGate(slatFigures(run, job).filter((one) => one.windStated && isOver(one, job))).map((one) => {
      const { onSlats, working } = windOn(run, job);
      const { span } = largestSpan(one.stock, onSlats, thresholdOf(job, slatBends.kind));
      return {
        code: 'slat-bends',
        at: placeOf(run, one),
        args: {
          slat: one.stock.name,
          bends: fineText(one.deflection.figure.value, job),
          span: formatLength(one.span, job.measure.value),
          stress: (one.used ?? 0) > 1 ? `${Math.round(100 * (one.used ?? 0))} %` : '',
          wind: loadText(onSlats, 'psf', job),
          largest: atMostText(inches(span), job),
        },
        pieces: [one.slat.key],
        related: [{ at: working.where.origin, note: 'the wind is stated here' }],
      };
    }),
};

const isOver = ({ spanOver, used = 0 }: SlatFigures, job: Job): boolean =>
  spanOver < thresholdOf(job, slatBends.kind) || used > 1;

/** A narrow slat that hangs through under its own weight. */
export const slatSags: LimitedRunCheck = {
  kind: {
    code: 'slat-sags',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice('a sag past 3/32" (2.5 mm), soaked and in the long run, is seen'),
    threshold: {
      is: 'length',
      imperial: inches(3 / 32),
      metric: mm(2.5),
      says: 'greatest sag of a slat under its own weight',
    },
    message: (a) =>
      `${a.slat} spans ${a.span} and will sag ${a.sag} under its own weight when wet and with the years; more than ${a.limit} is seen. ` +
      'Take wider slats, closer supports, or spacers at mid-span that tie slats together.',
  },
  check: (run, job) => {
    const limit = thresholdOf(job, slatSags.kind);
    return worstByGate(
      slatFigures(run, job).filter(({ sag }) => sag !== undefined && inches(sag.figure.value) > limit),
    ).map(
      (one): Finding => ({
        code: 'slat-sags',
        at: placeOf(run, one),
        args: {
          slat: one.stock.name,
          span: formatLength(one.span, job.measure.value),
          sag: fineText(one.sag?.figure.value ?? 0, job),
          limit: fineText(toInches(limit), job),
        },
        pieces: [one.slat.key],
      }),
    );
  },
};

/** The worst stock of the run's bays, and of each gate. */
function worstByGate(all: readonly SlatFigures[]): readonly SlatFigures[] {
  const worst = new Map<string | undefined, SlatFigures>();
  for (const one of all) {
    const held = worst.get(one.gate);
    if (!held || one.spanOver < held.spanOver) worst.set(one.gate, one);
  }
  return [...worst.values()];
}

function placeOf(run: RunLayout, { gate }: SlatFigures) {
  const leaf = run.leaves.find((one) => one.gate === gate);
  if (gate !== undefined && leaf) return leaf.spec.origin;
  return run.spec.infill.flip.upright ? run.spec.height.origin : run.spec.spacing.origin;
}
