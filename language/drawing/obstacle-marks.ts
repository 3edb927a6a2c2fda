import type { RunLayout } from '../layout/index.ts';
import { toMm } from '../units/index.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath, rectPath } from './path-text.ts';
import type { Label } from './view.ts';

/** All in letters: how deep a stretch is marked below the ground, and from stroke to stroke. */
const DEEP = 1.3;
const APART = 0.55;
/** Below the names of bays and gates. */
const NOTE_AT = -4.7;

/** Stretches where no hole may be: hatched below the ground, with the reason. `ground` is its height on the sheet. */
export function obstacleMarks(run: RunLayout, ground: (x: number) => number, letter: number): Part {
  const length = toMm(run.spec.length.value);
  let path = '';
  let low = Number.NEGATIVE_INFINITY;
  const labels = (run.spec.noHoles ?? []).flatMap(({ from, to, reason }, index): Label[] => {
    const [x0, x1] = [Math.max(0, toMm(from)), Math.min(length, toMm(to))];
    if (x0 >= x1) return [];
    const y = Math.max(ground(x0), ground(x1));
    const foot = y + DEEP * letter;
    low = Math.max(low, foot);
    path += rectPath(x0, y, x1, foot);
    const strokes = Math.max(1, Math.min(500, Math.floor((x1 - x0) / (APART * letter))));
    for (let i = 0; i < strokes; i++) {
      const x = x0 + ((x1 - x0) * i) / strokes;
      const until = Math.min(x1, x + DEEP * letter);
      path += linePath(x, foot, until, foot - (until - x));
    }
    return [
      {
        key: `${run.key}/no-hole/${index + 1}`,
        text: reason === undefined ? 'no hole' : `no hole: ${reason}`,
        x: hundredth((x0 + x1) / 2),
        y: hundredth(y),
        anchor: 'middle',
        turn: 0,
        shift: [0, NOTE_AT],
        kind: 'note',
        priority: 32,
        room: 0,
        roomFor: 'length',
      },
    ];
  });
  if (path === '') return { groups: [], labels: [], bounds: [0, ground(0), length, ground(0)] };
  return {
    groups: [lineGroup(`${run.key}/no-holes`, 'hatch', path, BEHIND_ALL - 1)],
    labels,
    bounds: [0, ground(0), length, Math.max(low, low - DEEP * letter - NOTE_AT * letter + 0.4 * letter)],
  };
}
