import type { EndRule, Remedy } from '../../../model/index.ts';
import { IMPERIAL, inches, METRIC, mm, type Ticks } from '../../../units/index.ts';
import type { FitProblem } from '../index.ts';

/** Numbers from 0 to 1 that are the same in every run (mulberry32, public domain). */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}

const NAMES = ['board-6', 'strip-2', 'narrow slat', 'half'];

/** A screen's worth of slats with everything about them drawn by lot: few slats, real sizes. */
export function randomProblem(seed: number): FitProblem {
  const next = randomNumbers(seed);
  const whole = (low: number, high: number) => low + Math.floor(next() * (high - low + 1));
  const chance = (share: number) => next() < share;
  const metric = chance(0.4);
  const length = (low: number, high: number): Ticks =>
    metric ? mm(whole(low * 5, high * 5) * 5) : inches(whole(low * 8, high * 8) / 8);

  const stocks = NAMES.slice(0, whole(1, 4)).map((stock) => {
    const width = length(1, 6);
    return { stock, width, from: chance(0.5) ? width : width + length(0, 3) };
  });
  const pick = () => stocks[whole(0, stocks.length - 1)] ?? stocks[0];
  const repeat = Array.from({ length: whole(1, 4) }, pick).filter((slat) => slat !== undefined);
  const stock = () => repeat[whole(0, repeat.length - 1)]?.stock ?? '';
  const gap = chance(0.1) ? whole(0, 40_000) : metric ? mm(whole(2, 25)) : inches(whole(1, 16) / 16);
  const edgeHalf = chance(0.2);
  const ends: EndRule[] = [{ kind: 'anywhere' }, { kind: 'whole' }, { kind: 'on', slat: stock() }];

  const upright = chance(0.35);
  const height = length(16, 60) + (chance(0.3) ? whole(0, 9) : 0);
  const bottom = length(0, 5);
  const band = (low: Ticks, high: Ticks) => ({ low, high });
  const level = {
    bottom: band(bottom, bottom + (chance(0.3) ? length(0, 3) : 0)),
    height: band(height - (chance(0.2) ? length(0, 3) : 0), height),
  };
  const remedies = Array.from({ length: chance(0.4) ? 0 : whole(1, 3) }, (): Remedy => {
    const low = Math.max(0, gap - whole(0, 60_000));
    const remedy: Remedy[] = [
      { kind: 'move-ends' },
      { kind: 'gaps', low, high: gap + whole(0, 60_000) },
      { kind: 'short-repeat' },
      chance(0.5) ? { kind: 'rip-last' } : { kind: 'rip-last', least: length(1, 3) },
      { kind: 'change-width', slat: stock(), width: length(1, 6) },
      { kind: 'trim', edge: chance(0.5) ? 'top' : 'bottom' },
    ];
    return remedy[whole(0, 5)] ?? { kind: 'move-ends' };
  });

  return {
    repeat,
    gap,
    edgeGap: edgeHalf ? Math.round(gap / 2) : chance(0.3) ? length(0, 1) : 0,
    edgeHalf,
    end: ends[whole(0, 2)] ?? { kind: 'anywhere' },
    remedies,
    upright,
    space: upright ? height : level.height.high - level.bottom.low,
    ...(upright ? {} : { ends: level }),
    measure: metric ? METRIC : { ...IMPERIAL, unit: 'inches' },
    besideNominal: chance(0.5),
    trimBoards: ['kick board', 'base board', 'cap board']
      .slice(0, whole(0, 3))
      .map((stock) => ({ stock, width: length(2, 9) })),
    target: {
      uri: 'file:///screen.slat',
      block: 'run bank',
      ...(chance(0.5) ? { fit: 'run bank/fit' } : {}),
      ...(chance(0.5) ? { bottom: 'run bank/bottom', height: 'run bank/height' } : {}),
    },
  };
}
