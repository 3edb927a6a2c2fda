import { inches, type Ticks } from '../../../units/index.ts';
import type { FitProblem } from '../index.ts';

const SIXTEENTHS = { unit: 'inches', step: inches(1 / 16) } as const;

/** Slats as `[stock, width in inches, widest it can be ripped]`; what is not said is plain. */
export function problemOf(
  repeat: readonly (readonly [stock: string, width: number, from?: number])[],
  different: Partial<FitProblem> & { space: Ticks },
): FitProblem {
  return {
    repeat: repeat.map(([stock, width, from = width]) => ({
      stock,
      width: inches(width),
      from: inches(from),
    })),
    gap: inches(0.75),
    edgeGap: 0,
    end: { kind: 'anywhere' },
    remedies: [],
    upright: false,
    measure: SIXTEENTHS,
    besideNominal: false,
    trimBoards: [],
    target: { uri: 'file:///screen.slat', block: 'run bank' },
    ...different,
  };
}

/** Level infill that may be from `bottom` to `height` above ground, in inches. */
export function between(
  bottom: readonly [low: number, high?: number],
  height: readonly [low: number, high?: number],
): Pick<FitProblem, 'space' | 'ends'> {
  const band = ([low, high = low]: readonly [number, number?]) => ({ low: inches(low), high: inches(high) });
  const ends = { bottom: band(bottom), height: band(height) };
  return { ends, space: ends.height.high - ends.bottom.low };
}
