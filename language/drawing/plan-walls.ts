import { type RunLayout, wallBetween } from '../layout/index.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import type { Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { type At, moved, type PlanAxes } from './plan-axes.ts';
import { boundsAround } from './plan-run.ts';
import type { Label } from './view.ts';

/** All in letters: how far a wall is drawn to both sides of the run, how deep it is hatched, and from stroke to stroke. */
const LONG = 1.6;
const DEEP = 0.9;
const APART = 0.5;

/** The walls a run begins and ends at, from above: square to the run, where they are farthest from it over its height. */
export function planWalls(run: RunLayout, axes: PlanAxes, letter: number): Part | undefined {
  const points: At[] = [];
  const labels: Label[] = [];
  let [lines, hatch] = ['', ''];
  const half = run.spec.post.value.through.value / 2;
  for (const face of run.walls) {
    const stations = wallBetween(face, run.bottom, Math.max(run.top, run.bottom + 1)).map(([x]) => x);
    const x = face.inward * Math.min(...stations.map((station) => face.inward * station));
    const out: At = [-face.inward * axes.along[0], -face.inward * axes.along[1]];
    const from = moved(axes.at(x, -half), axes.back, -LONG * letter);
    const to = moved(axes.at(x, half), axes.back, LONG * letter);
    lines += linePath(...from, ...to);
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    const strokes = Math.max(2, Math.min(200, Math.floor(long / (APART * letter))));
    for (let i = 0; i < strokes; i++) {
      const at = moved(from, axes.back, (long * i) / strokes);
      const by = Math.min(DEEP * letter, long - (long * i) / strokes);
      hatch += linePath(...at, ...moved(moved(at, out, by), axes.back, by));
    }
    points.push(from, to, moved(from, out, DEEP * letter), moved(to, out, DEEP * letter));
    const [nx, ny] = moved(axes.at(x, 0), out, (DEEP + 0.5) * letter);
    const level = Math.abs(out[0]) > 0.5;
    labels.push({
      key: `${run.key}/plan/wall-${face.side}`,
      text: 'wall',
      x: hundredth(nx),
      y: hundredth(ny),
      anchor: level ? (out[0] > 0 ? 'start' : 'end') : 'middle',
      turn: 0,
      shift: level || out[1] < 0 ? [0, level ? -0.36 : 0] : [0, -0.76],
      kind: 'note',
      priority: 13,
      room: 0,
      roomFor: 'length',
    });
    points.push(moved([nx, ny], out, (level ? 2.2 : 1) * letter));
  }
  if (points.length === 0) return undefined;
  return {
    groups: [
      lineGroup(`${run.key}/plan/walls`, 'ground', lines, -BEHIND_ALL / 2),
      lineGroup(`${run.key}/plan/walls-hatch`, 'hatch', hatch, BEHIND_ALL),
    ],
    labels,
    bounds: boundsAround(points),
  };
}
