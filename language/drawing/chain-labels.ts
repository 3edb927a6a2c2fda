import { toMm } from '../units/index.ts';
import type { Chain } from './chains.ts';
import { hundredth } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import type { Label } from './view.ts';

/** What goes first where room is short; narrow intervals of a kind go before wide ones. */
const PRIORITY: Readonly<Record<Chain['kind'], number>> = {
  overall: 10,
  posts: 20,
  heights: 20,
  gate: 30,
  frame: 40,
  slats: 60,
};

/** Above its line; and where there is no room, another row out, with a leader. */
const ON_LINE = 0.38;
const LED = 1.7;
const ASIDE = 0.4;

/** The texts of a chain whose line runs at `line` (sheet y of a level line, x of an upright one). */
export function chainLabels(prefix: string, chain: Chain, line: number): Label[] {
  const at = chain.at.map(toMm);
  return chain.texts.map((text, i) => {
    const from = at[i] as number;
    const to = at[i + 1] as number;
    const middle = (from + to) / 2;
    const [x, y] = chain.side === 'top' ? [middle, line] : [line, -middle];
    const common = {
      key: `${prefix}/${chain.key}/${i + 1}`,
      text,
      x: hundredth(x),
      y: hundredth(y),
      kind: 'dimension' as const,
      priority: PRIORITY[chain.kind] + widthRank(to - from),
      room: hundredth(roomAt(at, i, chain)),
    };
    if (chain.side === 'right') {
      // Written level beside the line, row by row: the row must be high enough.
      return { ...common, anchor: 'start', turn: 0, shift: [0.7, -MIDDLE], roomFor: 'height' };
    }
    const turn = chain.side === 'top' ? 0 : 90;
    const inline = { ...common, anchor: 'middle', turn, shift: [0, ON_LINE], roomFor: 'length' } as const;
    if (chain.kind === 'slats') return inline;
    return { ...inline, led: chain.lean ? leaning(chain.lean) : ledFrom(at, i) };
  });
}

/**
 * How much the text of an interval may take: its own length, and that of much narrower neighbors, whose
 * texts are led out of the way.
 */
function roomAt(at: readonly number[], i: number, chain: Chain): number {
  const length = (j: number) => (at[j + 1] ?? Number.NaN) - (at[j] ?? Number.NaN);
  const own = length(i);
  if (chain.kind === 'slats') return own;
  const spare = (j: number) => (length(j) < 0.2 * own ? length(j) : 0);
  return own + spare(i - 1) + spare(i + 1);
}

/**
 * A text led out of its interval leans inward at the ends of the chain, clear of what is outside; but not
 * toward a narrower interval, whose text wants that room.
 */
function ledFrom(at: readonly number[], i: number): NonNullable<Label['led']> {
  const last = at.length - 2;
  const length = (j: number) => (at[j + 1] ?? Number.NaN) - (at[j] ?? Number.NaN);
  if (last > 0 && (i === 0 || i === last)) {
    const inward = length(i === 0 ? 1 : last - 1) >= length(i);
    return leaning((i === 0) === inward ? 1 : -1);
  }
  return { anchor: 'middle', shift: [0, LED] };
}

const leaning = (way: 1 | -1): NonNullable<Label['led']> => ({
  anchor: way === 1 ? 'start' : 'end',
  shift: [way * ASIDE, LED],
});

/** Intervals alike in width rank alike: 0 for the widest things, up to 9. */
function widthRank(mm: number): number {
  return Math.max(0, Math.min(9, Math.round(9 - 1.5 * Math.log2(Math.max(1, mm / 10)))));
}
