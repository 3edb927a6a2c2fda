import { infillOf } from '../figures/index.ts';
import type { Frame, Leaf, Piece, RunLayout } from '../layout/index.ts';
import { type Measure, TICKS_PER_MM, toMm } from '../units/index.ts';
import { offsetNotes } from './bridge-marks.ts';
import { dimensionText } from './dimension-text.ts';
import { notched } from './grooves.ts';
import { BEFORE_ALL, lineGroup } from './line-group.ts';
import { around, type Part } from './part.ts';
import { hundredth, linePath } from './path-text.ts';
import { pieceGroups } from './piece-groups.ts';
import type { Bounds } from './place-labels.ts';
import { see } from './places.ts';
import { type At, alongside, awayFrom, fromAbove, moved, type PlanAxes, planAxes } from './plan-axes.ts';
import { planDressing } from './plan-dressing.ts';
import { besideDimensions, numbersAside, opensToward, outward, pastLeaves, reachOf } from './plan-sides.ts';
import { planWalls } from './plan-walls.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';

/** All in letters: off the run, from line to text, and from that to the next line. */
const FIRST = 2;
const CLEAR = 0.7;
const NEXT = 2.6;
const TICK = 0.32;

const LEVEL = { kind: 'dimension', room: 0, roomFor: 'length' } as const;

/**
 * One run where it stands on the plan, with its stations and its length over posts, these `aside` ticks farther out
 * so as to stand in line with those of runs it goes straight on from.
 */
export function planRun(run: RunLayout, frame: Frame, measure: Measure, letter: number, aside = 0): Part {
  const axes = planAxes(frame);
  const projection = fromAbove(axes);
  const seen = see(shownFromAbove(run), projection).map((one) =>
    one.piece.role === 'post' || one.piece.role === 'channel' ? notched(one, projection) : one,
  );
  const dressing = planDressing(run, axes);
  const stations = stationLine(run, axes, measure, letter, aside);
  const gates = run.leaves.map((leaf) => swing(run, leaf, axes));
  const points: At[] = [
    ...seen.flatMap(({ shape }): At[] => [
      [shape.x0, shape.y0],
      [shape.x1, shape.y1],
    ]),
    ...dressing.points,
    ...stations.points,
    ...gates.flatMap((gate) => gate.points),
    axes.at(0, 0),
  ];
  const walls = planWalls(run, axes, letter);
  return {
    groups: [
      ...pieceGroups(
        seen,
        () => Infinity,
        () => false,
      ),
      ...dressing.groups,
      ...stations.groups,
      ...gates.flatMap((gate) => gate.groups),
      ...(walls?.groups ?? []),
    ],
    labels: [
      ...stations.labels,
      ...names(run, axes, letter),
      ...offsetNotes(run, frame, measure, letter),
      ...(walls?.labels ?? []),
    ],
    bounds: around(boundsAround(points), ...(walls ? [walls.bounds] : [])),
  };
}

/** Its posts below their caps, fillers, channels on them, the top course of level slats, all upright ones, stiffeners, battens, and the top of each leaf. */
function shownFromAbove(run: RunLayout): readonly Piece[] {
  const upright = (gate: string | undefined) => infillOf(run, gate).flip.upright;
  // Of the slats between two runs the highest, whatever its course.
  const bridge = run.pieces.find(
    ({ role, bay, gate }) => role === 'slat' && bay === undefined && gate === undefined,
  );
  return run.pieces.filter((piece) => {
    if (piece.role === 'post' || piece.role === 'filler') return true;
    if (piece.role === 'channel') return !upright(piece.gate);
    if (piece.role === 'stiffener' || piece.role === 'batten') return true;
    if (piece.bay === undefined && piece.gate === undefined) return piece === bridge;
    if (piece.role === 'rail') return piece.key.endsWith('/rail-top');
    // In grooves of a leaf slats are under its rail, and within its stiles.
    if (piece.gate !== undefined && infillOf(run, piece.gate).mounting.value.kind === 'grooves') return false;
    return piece.role === 'slat' && (piece.course === 1 || upright(piece.gate));
  });
}

type Lines = Pick<Part, 'groups' | 'labels'> & { readonly points: readonly At[] };

function stationLine(run: RunLayout, axes: PlanAxes, measure: Measure, letter: number, aside: number): Lines {
  const out = outward(run);
  const side: At = [axes.back[0] * out, axes.back[1] * out];
  const near = out * reachOf(run, out);
  const edge = near + out * aside;
  const prefix = `${run.key}/plan`;
  const texts = run.posts.map((post) => dimensionText(post.from, measure));
  const first = FIRST * letter;
  const wide = Math.max(1, ...texts.map(textWidth)) * letter;
  const second = first + CLEAR * letter + wide + NEXT * letter;
  const on = (x: number, off: number): At => moved(axes.at(x, edge), side, off);
  const { value: length } = run.spec.length;
  let lines = '';
  let ticks = '';
  const tick = ([x, y]: At) => {
    ticks += linePath(x - TICK * letter, y + TICK * letter, x + TICK * letter, y - TICK * letter);
  };
  const line = (from: At, to: At) => {
    lines += linePath(...from, ...to);
  };
  line(on(0, first), on(length, first));
  line(on(0, second), on(length, second));
  // Going straight on, its 0 is where the first run's last post is written.
  const { start, bridge } = run.joints;
  const goesOn = start?.turn === 0 || bridge?.inLine === true;
  const labels = run.posts.flatMap((post, index): Label[] => {
    const [x, y] = on(post.from, first + CLEAR * letter);
    tick(on(post.from, first));
    line(moved(axes.at(post.from, near), side, 0.5 * letter), on(post.from, first + 0.4 * letter));
    const text = texts[index] ?? '';
    if (goesOn && index === 0) return [];
    const ends = index === 0 || index === run.posts.length - 1;
    return [
      {
        ...LEVEL,
        ...awayFrom(side),
        key: `${prefix}/station-${post.number}`,
        text,
        x: hundredth(x),
        y: hundredth(y),
        priority: ends && !(bridge && index === 0) ? 21 : 22,
      },
    ];
  });
  for (const x of [0, length]) {
    tick(on(x, second));
    // Short, so that it does not go through the station written before it.
    line(on(x, second - 1.2 * letter), on(x, second + 0.4 * letter));
  }
  const [x, y] = on(length / 2, second + 1.1 * letter);
  labels.push({
    ...LEVEL,
    ...alongside(side),
    key: `${prefix}/length`,
    text: `${dimensionText(length, measure)} over posts`,
    x: hundredth(x),
    y: hundredth(y),
    priority: 20,
  });
  const room = 2.2 * letter;
  const slanted = alongside(side).anchor !== 'middle';
  const written = slanted ? textWidth(`${dimensionText(length, measure)} over posts`) * letter : 0;
  return {
    groups: [
      lineGroup(`${prefix}/lines`, 'dimension', lines, BEFORE_ALL),
      lineGroup(`${prefix}/ticks`, 'tick', ticks, BEFORE_ALL),
    ],
    labels,
    points: [on(0, second + room), on(length, second + room), [x + Math.sign(side[0]) * written, y]],
  };
}

/** Off the run, in letters. */
const BESIDE = 1.4;

function middleOfBay({ bays, spec }: RunLayout, number: number): number {
  const bay = bays.find((one) => one.number === number);
  return bay ? (bay.from + bay.to) / 2 : spec.length.value / 2;
}

/** Numbers of posts and names of the run and its gates, on the side without dimensions. */
function names(run: RunLayout, axes: PlanAxes, letter: number): readonly Label[] {
  const { side, edge } = besideDimensions(run, axes);
  const note = (key: string, x: number, off: number, text: string, priority: number): Label => {
    const [sx, sy] = moved(axes.at(x, edge), side, off * letter);
    return {
      ...LEVEL,
      ...alongside(side),
      kind: 'note',
      key: `${run.key}/plan/${key}`,
      text,
      x: hundredth(sx),
      y: hundredth(sy),
      priority,
    };
  };
  const toward = numbersAside(run);
  const own = run.posts.filter(({ key }) => !run.borrowed.some((post) => post.key === key));
  return [
    note('name', middleOfWidest(run), 3.4, run.spec.name, 10),
    // A pair is named once, in the middle of its opening.
    ...run.leaves
      .filter(({ spec }) => spec.half?.active !== false)
      .map((leaf) => {
        const text = `gate ${leaf.spec.half?.of ?? leaf.gate}`;
        const beyond = pastLeaves(run, leaf, textWidth(text) * letter * TICKS_PER_MM);
        const off = BESIDE + toMm(beyond) / letter;
        return note(`gate-${leaf.gate}`, middleOfBay(run, leaf.bay), off, text, 12);
      }),
    ...own.map((post): Label => {
      const x = (post.from + post.to) / 2 + toward(post) * letter * TICKS_PER_MM;
      const label = note(`post-${post.number}`, x, BESIDE, String(post.number), 30);
      return { ...label, kind: 'mark', turn: 0, anchor: 'middle' };
    }),
  ];
}

/** A bay so much of the widest has room enough for a name. */
const AS_WIDE = 0.9;

/** Where its name has most room: in the widest bay of slats, after a turn not in the first, where the angle is written. */
function middleOfWidest({ bays, joints, spec }: RunLayout): number {
  const open = bays.filter(({ gate }) => gate === undefined);
  const widest = Math.max(0, ...open.map(({ clear }) => clear));
  const room = open.filter(({ clear }) => clear >= AS_WIDE * widest);
  const turned = joints.start !== undefined && joints.start.turn !== 0;
  const bay =
    (turned ? room.find(({ number }) => number !== bays[0]?.number) : undefined) ??
    open.find(({ clear }) => clear === widest);
  return bay ? (bay.from + bay.to) / 2 : spec.length.value / 2;
}

/**
 * The leaf stood open and the arc its edge goes through. It opens to the side the run is seen from when that
 * is the name it opens to, to the other side for any other name; where none is stated there is no arc.
 */
function swing(run: RunLayout, leaf: Leaf, axes: PlanAxes): Pick<Lines, 'groups' | 'points'> {
  const side = opensToward(run, leaf);
  if (side === undefined) return { groups: [], points: [] };
  const [from, edge] = leaf.spec.hinges.value === 'left' ? [leaf.x0, leaf.x1] : [leaf.x1, leaf.x0];
  const hinge = axes.at(from, 0);
  const closed = axes.at(edge, 0);
  const open = axes.at(from, side * leaf.width);
  const cross = (closed[0] - hinge[0]) * (open[1] - hinge[1]) - (closed[1] - hinge[1]) * (open[0] - hinge[0]);
  const r = hundredth(toMm(leaf.width));
  const point = ([x, y]: At) => `${hundredth(x)} ${hundredth(y)}`;
  const path = `M${point(closed)}A${r} ${r} 0 0 ${cross > 0 ? 1 : 0} ${point(open)}L${point(hinge)}`;
  const key = `${run.key}/plan/swing-${leaf.gate}`;
  return { groups: [lineGroup(key, 'swing', path, BEFORE_ALL + 1)], points: [open, closed] };
}

export function boundsAround(points: readonly At[]): Bounds {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}
