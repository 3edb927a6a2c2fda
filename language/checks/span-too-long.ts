import { clearSpan } from '../figures/index.ts';
import type { Piece, RunLayout } from '../layout/index.ts';
import type { FlatStock } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import { commonPractice, type RunCheck } from './define.ts';
import type { Finding } from './finding.ts';
import { type Infill, infillsOf } from './infills.ts';

/**
 * How many times its thickness a wooden slat, flat between two supports, may span: bending out of
 * plane under 15 psf to a limit of L/180, E = 1.1 million psi (cedar), gives L = 72 t, whatever its
 * width, from 5 w L^4 / 384 E I. A rule of thumb; no code value.
 */
export const SPAN_OVER_THICKNESS = 72;

/** A slat whose supports stand farther apart than its stock allows, or than the rule of thumb. */
export const spanTooLong: RunCheck = {
  kind: {
    code: 'span-too-long',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      `clear span at most ${SPAN_OVER_THICKNESS} times the thickness for wood (15 psf, L/180, E 1.1 million psi), ` +
        'where the stock states no "span at most" of its own',
    ),
    message: (a) =>
      `${a.slat} spans ${a.span} between supports; ${a.limit} is the most ${a.rule}. ` +
      'Set the supports closer, use thicker slats, or add a mid support.',
  },
  check: (run, job) => {
    const byKey = new Map([...run.borrowed, ...run.pieces].map((piece) => [piece.key, piece]));
    return infillsOf(run).flatMap((infill) =>
      // Slats of one thickness share a limit and are told of together.
      byLimit(tooLong(infill, byKey)).map((alike): Finding => {
        const worst = alike.reduce((held, one) => (one.span > held.span ? one : held));
        return {
          code: 'span-too-long',
          at: placeOf(run, infill),
          args: {
            slat: alike.map(({ stock }) => stock.name).join(', '),
            span: formatLength(worst.span, job.measure.value),
            limit: formatLength(worst.limit, job.measure.value),
            rule: worst.rule,
          },
          pieces: alike.map(({ slat }) => slat.key),
          related: alike.flatMap(({ stock }) =>
            stock.spanLimit ? [{ at: stock.spanLimit.origin, note: 'the limit stands here' }] : [],
          ),
        };
      }),
    );
  },
};

interface TooLong {
  readonly stock: FlatStock;
  readonly slat: Piece;
  readonly span: Ticks;
  readonly limit: Ticks;
  readonly rule: string;
}

function byLimit(all: readonly TooLong[]): TooLong[][] {
  const alike = new Map<string, TooLong[]>();
  for (const one of all) {
    const key = `${one.limit} ${one.rule}`;
    const held = alike.get(key);
    if (held) held.push(one);
    else alike.set(key, [one]);
  }
  return [...alike.values()];
}

/** The widest-spanning slat of each stock that spans too far. */
function tooLong(infill: Infill, byKey: ReadonlyMap<string, Piece>): TooLong[] {
  return [...new Set(infill.spec.pattern.repeat.map((item) => item.value))].flatMap((stock) => {
    const allowed = limitOf(stock);
    const worst = widestSpan(infill, stock, byKey);
    return worst && allowed && worst.span > allowed.limit ? [{ stock, ...worst, ...allowed }] : [];
  });
}

/** Undefined where no limit is known: for anything but wood that states none. */
function limitOf(stock: FlatStock): { limit: Ticks; rule: string } | undefined {
  if (stock.spanLimit) return { limit: stock.spanLimit.value, rule: 'its stock allows' };
  if ((stock.material?.kind.value ?? 'wood') !== 'wood') return undefined;
  return {
    limit: SPAN_OVER_THICKNESS * stock.thickness.value,
    rule: `by the rule of ${SPAN_OVER_THICKNESS} times its thickness`,
  };
}

function widestSpan(infill: Infill, stock: FlatStock, byKey: ReadonlyMap<string, Piece>) {
  let worst: { slat: Piece; span: Ticks } | undefined;
  // Slats held by the same pieces span alike: a bay is asked once.
  const asked = new Set<string>();
  for (const slat of infill.slats) {
    if (slat.cut.stock !== stock.name) continue;
    const held = slat.supports.join('\n');
    if (asked.has(held)) continue;
    asked.add(held);
    const span = clearSpan(slat, byKey);
    if (!worst || span > worst.span) worst = { slat, span };
  }
  return worst;
}

/** Posts decide how far level slats span; height decides it for upright ones. */
function placeOf(run: RunLayout, infill: Infill) {
  if (infill.leaf) return infill.leaf.spec.origin;
  return infill.spec.flip.upright ? run.spec.height.origin : run.spec.spacing.origin;
}
