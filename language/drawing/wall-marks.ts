import { type WallGap, wallGaps } from '../figures/index.ts';
import { type RunLayout, type WallFace, wallAt, wallBetween } from '../layout/index.ts';
import { floorToStep, type Measure, TICKS_PER_MM, toMm } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import { BEHIND_ALL, lineGroup } from './line-group.ts';
import { around, type Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';

/** All in letters: how deep a wall is hatched, from stroke to stroke, and how far it goes on above the posts. */
const DEEP = 1;
const APART = 0.6;
const ABOVE = 0.7;
/** From the hatching to a text. */
const ASIDE = 0.5;

/** The walls a run begins and ends at, seen from the front: their faces, hatched, and the open gaps to them. */
export function wallMarks(run: RunLayout, measure: Measure, letter: number): Part | undefined {
  const parts = wallGaps(run).map((gap) => wallPart(run, gap, measure, letter));
  if (parts.length === 0) return undefined;
  return {
    groups: parts.flatMap(({ groups }) => groups),
    labels: parts.flatMap(({ labels }) => labels),
    bounds: around(...parts.map(({ bounds }) => bounds)),
  };
}

function wallPart(run: RunLayout, gap: WallGap, measure: Measure, letter: number): Part {
  const { face } = gap;
  const key = `${run.key}/wall-${face.side}`;
  const out = -face.inward * letter;
  const high = run.postTop + ABOVE * letter * TICKS_PER_MM;
  const line = wallBetween(face, face.ground, high).map(([x, z]) => [toMm(x), -toMm(z)] as const);
  let path = '';
  for (const [i, [x, y]] of line.entries()) if (i > 0) path += linePath(...(line[i - 1] ?? [x, y]), x, y);
  const [top, foot] = [-toMm(high), -toMm(face.ground)];
  const strokes = Math.max(2, Math.min(500, Math.floor((foot - top) / (APART * letter))));
  let hatch = '';
  for (let i = 1; i <= strokes; i++) {
    const y = top + ((foot - top) * i) / strokes;
    const x = toMm(wallAt(face, -y * TICKS_PER_MM));
    // Up and away from the face at 45 degrees, no higher than the wall is drawn.
    const by = Math.min(DEEP * letter, y - top);
    hatch += linePath(x, y, x + Math.sign(out) * by, y - by);
  }
  const outer = Math.min(...line.map(([x]) => face.inward * x)) * face.inward + DEEP * out;
  const labels = [
    nameOf(key, face, outer - (DEEP * out) / 2, top),
    ...gapLabels(key, gap, outer, measure, letter),
  ];
  const wide = Math.max(0, ...labels.slice(1).map(({ text }) => textWidth(text))) + ASIDE;
  const edge = outer + (labels.length > 1 ? wide * out : 0);
  return {
    groups: [
      lineGroup(key, 'ground', path, -BEHIND_ALL / 2),
      lineGroup(`${key}-hatch`, 'hatch', hatch, BEHIND_ALL),
    ],
    labels,
    bounds: [Math.min(edge, toMm(face.plumb)), top - 1.2 * letter, Math.max(edge, toMm(face.plumb)), foot],
  };
}

const TEXT = { turn: 0, room: 0, roomFor: 'length' } as const;

function nameOf(key: string, { side }: WallFace, x: number, top: number): Label {
  return {
    ...TEXT,
    key: `${key}/name`,
    text: 'wall',
    x: hundredth(x),
    y: hundredth(top),
    anchor: side === 'start' ? 'end' : 'start',
    shift: [side === 'start' ? 0.6 : -0.6, 0.35],
    kind: 'note',
    priority: 31,
  };
}

/** An open gap at the top and the bottom of the slats, and where it is least. */
function gapLabels(
  key: string,
  { face, bottom, top, least, filler }: WallGap,
  x: number,
  measure: Measure,
  letter: number,
): readonly Label[] {
  if (filler) return [];
  const text = ({ gap }: WallGap['least']) =>
    `gap ${dimensionText(floorToStep(Math.max(0, gap) + 1e-3, measure.step), measure)}`;
  const even = [top, least].every((one) => text(one) === text(bottom));
  // The same all along it stands in the chain over the posts.
  if (even) return [];
  const between = [bottom, top].every(({ z }) => Math.abs(z - least.z) > 1.2 * letter * TICKS_PER_MM);
  return [bottom, top, ...(between ? [least] : [])].map(
    (one, i): Label => ({
      ...TEXT,
      key: `${key}/gap-${i + 1}`,
      text: text(one),
      x: hundredth(x),
      y: hundredth(-toMm(one.z)),
      anchor: face.side === 'start' ? 'end' : 'start',
      shift: [face.side === 'start' ? -ASIDE : ASIDE, -MIDDLE],
      kind: 'dimension',
      priority: 30,
    }),
  );
}

/** How far the ground is drawn past both ends of a run, in sheet millimeters: to the wall, where there is one. */
export function pastEnds(run: RunLayout, usual: number): readonly [start: number, end: number] {
  const past = (side: WallFace['side']): number => {
    const face = run.walls.find((one) => one.side === side);
    if (!face) return usual;
    const at = toMm(wallAt(face, face.ground));
    return side === 'start' ? -at : at - toMm(run.spec.length.value);
  };
  return [past('start'), past('end')];
}
