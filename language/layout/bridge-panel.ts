import type { FlatStock, Origin, RunSpec, Sourced } from '../model/index.ts';
import { floorToStep, type Ticks } from '../units/index.ts';
import type { Offset } from './bridge-joint.ts';
import { roomBetween } from './holds.ts';
import { cutWithin, namesOf, type Range } from './infill.ts';
import { bridgeLabel, cleatLabel } from './labels.ts';
import { type Line, lineSpan, thickestOf, thickestSlat } from './lines.ts';
import { type End, makePiece } from './make-piece.ts';
import { bridgeKey } from './names.ts';
import type { Piece, Vec3 } from './piece.ts';

/** The middle line of a panel, from the middle of the side of one post to that of the other. */
export interface PanelLine {
  /** Where it begins, in the frame of the run that follows. */
  readonly from: readonly [x: number, y: number];
  readonly along: number;
  /** Toward the back. */
  readonly across: number;
}

export function panelLine({ before, own }: Offset, space: Ticks): PanelLine {
  const middle = ([low, high]: Range) => (low + high) / 2;
  return { from: [-space, middle(before)], along: space, across: middle(own) - middle(before) };
}

/** A blade tilts so far, no farther (common practice: 45 degrees), and cleats are ripped with it. */
const STEEPEST = 1;

/**
 * Why slats and cleats cannot go along a line from post to post. Plane trigonometry: at the angle a of the panel
 * a slat t thick takes t / cos a of a post's side, and a cleat's narrow face is c tan a narrower than its wide one.
 */
export function panelTrouble(
  { infill }: RunSpec,
  { before, own }: Offset,
  { along, across }: PanelLine,
): 'narrow' | 'sharp' | 'depth' | undefined {
  const tan = Math.abs(across) / along;
  const secant = Math.hypot(1, tan);
  const thickest = thickestSlat(infill);
  const [wide, thick] = [infill.cleat?.value.width.value ?? 0, infill.cleat?.value.thickness.value ?? 0];
  if (along < roomBetween(infill)) return 'narrow';
  if (tan > STEEPEST || wide - thick * tan <= infill.endGap.value * secant) return 'sharp';
  if (thickest * secant >= Math.min(before[1] - before[0], own[1] - own[0])) return 'depth';
  const shortest = (along - 2 * infill.endGap.value) * secant - thickest * tan;
  return shortest > 2 * wide ? undefined : 'narrow';
}

/** What a panel is made of besides its line. */
export interface PanelParts {
  readonly spec: RunSpec;
  readonly cleat: Sourced<FlatStock>;
  readonly lines: readonly Line[];
  /** Keys of the posts it begins and ends at. */
  readonly posts: readonly [string, string];
  readonly from: readonly Origin[];
}

/** Slats along the line with ends cut to the sides of both posts, and cleats before and behind them ripped to fit. */
export function panelOf(line: PanelLine, parts: PanelParts): Piece[] {
  const cleats = cleatsOf(line, parts);
  const { spec, lines, from } = parts;
  const { u, n, tan, secant, length } = axesOf(line);
  const [key, label] = [bridgeKey(spec.name, 'panel'), bridgeLabel('panel')];
  const thickest = thickestOf(lines);
  const front = -thickest / 2;
  const gap = spec.infill.endGap.value * secant;
  const slats = lines.map((one) => {
    const thickness = one.stock.thickness.value;
    const tips = length - 2 * gap + thickness * Math.abs(tan);
    const spare = tips - (floorToStep(tips + 1e-6, spec.measure.step) || tips);
    const ends: readonly [End, End] = [
      { at: gap + front * tan + spare / 2, bevel: tan },
      { at: length - gap + front * tan - spare / 2, bevel: tan },
    ];
    const held = cleats.filter(({ side }) => side === 'front' || thickness === thickest);
    return makePiece(
      {
        ...namesOf({ key, label }, one),
        role: one.kind,
        run: spec.name,
        course: one.course,
        side: 'middle',
        supports: held.map((cleat) => cleat.key),
        from: [...one.from, ...from],
      },
      {
        stock: one.stock.name,
        ripped: one.ripped,
        origin: [line.from[0] + front * n[0], line.from[1] + front * n[1], one.high],
        grain: u,
        across: [0, 0, -1],
        through: n,
        width: one.high - one.low,
        thickness,
        ends,
      },
    );
  });
  return [...cleats, ...slats];
}

function axesOf({ along, across }: PanelLine) {
  const length = Math.hypot(along, across);
  const u: Vec3 = [along / length, across / length, 0];
  const n: Vec3 = [-u[1], u[0], 0];
  return { u, n, length, tan: across / along, secant: length / along };
}

/** Each lies on the side of its post with an edge ripped to the panel's angle, and on the slats with a face. */
function cleatsOf(line: PanelLine, { spec, cleat, lines, posts, from }: PanelParts): Piece[] {
  const { u, n, tan, length } = axesOf(line);
  const { name, width, thickness, origin } = cleat.value;
  const half = thickestOf(lines) / 2;
  const heights = cutWithin(lineSpan(lines), spec.measure.step, 'middle');
  return ([0, 1] as const).flatMap((end) =>
    (['front', 'back'] as const).map((side) => {
      const near = side === 'front' ? -half - thickness.value : half;
      // Where the post's side is along the panel, on the near face of the cleat and on its far one.
      const [a, b] = [near * tan, (near + thickness.value) * tan];
      const inward = end === 0 ? 1 : -1;
      const base = end === 0 ? Math.min(a, b) : length + Math.max(a, b);
      const at = end === 0 ? 'left' : 'right';
      return makePiece(
        {
          key: `${bridgeKey(spec.name, 'panel')}/cleat-${at}-${side}`,
          label: cleatLabel(bridgeLabel('panel'), at, side),
          role: 'cleat',
          run: spec.name,
          side,
          supports: [posts[end]],
          from: [cleat.origin, origin, ...from],
        },
        {
          stock: name,
          ripped: false,
          origin: [
            line.from[0] + base * u[0] + near * n[0],
            line.from[1] + base * u[1] + near * n[1],
            heights[0],
          ],
          grain: [0, 0, 1],
          across: [inward * u[0], inward * u[1], 0],
          through: n,
          width: width.value,
          thickness: thickness.value,
          edge: inward * tan,
          ends: [{ at: 0 }, { at: heights[1] - heights[0] }],
        },
      );
    }),
  );
}
