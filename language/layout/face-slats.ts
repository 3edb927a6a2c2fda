import { facesOf, isMetric, LEAST_TRIM, type RunSpec, type ScreenFace, soldLengths } from '../model/index.ts';
import { floorToStep, type Ticks } from '../units/index.ts';
import { facePlane } from './bay-panel.ts';
import { between, divideCourse } from './divide-course.ts';
import { type FaceEnd, faceEnds } from './face-ends.ts';
import type { Stand } from './follow-ground.ts';
import { type Panel, panelPieces } from './infill.ts';
import { bayLabel } from './labels.ts';
import type { Line } from './lines.ts';
import type { Piece } from './piece.ts';
import type { PlacedBay } from './posts.ts';

/** A bay of slats on a face with what stands in it, and where a slat that ends with it ends. */
interface FaceBay {
  readonly placed: PlacedBay;
  readonly stand: Stand;
  readonly low: FaceEnd;
  readonly high: FaceEnd;
}

/** Boards of a course: from the first to the last of the bays it reaches. */
interface Board {
  readonly first: number;
  readonly last: number;
  readonly line: Line;
}

/**
 * Level slats on the faces of the posts, by the bay that each begins in. Bays that follow one another at posts where
 * slats may meet make a stretch; each course of it is divided into boards that meet over the middles of posts, by
 * the rule stated (see `JointRule`).
 */
export function faceSlats(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  stands: ReadonlyMap<number, Stand>,
): ReadonlyMap<number, readonly Piece[]> {
  const made = new Map<number, Piece[]>();
  const faces = facesOf(spec.infill.mounting.value);
  for (const stretch of stretchesOf(spec, bays, stands))
    for (const [index, face] of faces.entries()) {
      const behind = index > 0;
      for (const panel of panelsOf(spec, stretch, boardsOf(spec, stretch, behind), face, behind)) {
        const { bay = 0 } = panel;
        const own = made.get(bay);
        const pieces = panelPieces(panel);
        if (own) own.push(...pieces);
        else made.set(bay, pieces);
      }
    }
  for (const pieces of made.values()) pieces.sort(asRead);
  return made;
}

/** The front before the back, courses from the top, trim after them all. */
function asRead(a: Piece, b: Piece): number {
  if (a.side !== b.side) return a.side === 'front' ? -1 : 1;
  return (a.course ?? Infinity) - (b.course ?? Infinity);
}

function stretchesOf(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  stands: ReadonlyMap<number, Stand>,
): readonly (readonly FaceBay[])[] {
  const stretches: FaceBay[][] = [];
  for (const placed of bays) {
    const stand = stands.get(placed.bay.number);
    if (placed.gate || !stand?.filled) continue;
    const bay: FaceBay = { placed, stand, ...faceEnds(spec, placed) };
    const before = stretches.at(-1);
    if (before?.at(-1)?.placed.right === placed.left && placed.left.sharesSlats) before.push(bay);
    else stretches.push([bay]);
  }
  return stretches;
}

/** All boards of a stretch on one face, course by course from the top. */
function boardsOf(spec: RunSpec, stretch: readonly FaceBay[], behind: boolean): readonly Board[] {
  const rule = spec.slatJoints?.rule?.value ?? { kind: 'longest' as const };
  const { step } = spec.measure;
  const length = (from: number, to: number) =>
    floorToStep((stretch[to - 1]?.high.most ?? 0) - (stretch[from]?.low.most ?? 0), step);
  const trim = spec.slatJoints?.trim ?? LEAST_TRIM[isMetric(spec.measure) ? 'metric' : 'imperial'];
  const longestOf = ({ stock }: Line): Ticks | undefined => {
    const sold = soldLengths(stock).map(({ value }) => value);
    return sold.length > 0 ? Math.max(...sold) - trim : undefined;
  };
  const courses = coursesOf(stretch, behind);
  const known = courses.map(({ line }) => longestOf(line));
  const inLine =
    rule.kind === 'every'
      ? between(stretch.length, rule.posts)
      : rule.kind === 'in-line'
        ? divideCourse(
            { places: stretch.length + 1, length, longest: shortestOf(known) },
            rule.kind,
            new Set(),
          )
        : undefined;
  let above: ReadonlySet<number> = new Set();
  const boards: Board[] = [];
  for (const [index, { line, first, last }] of courses.entries()) {
    const places = last - first + 2;
    const inside = inLine
      ? inLine.filter((at) => at > first && at <= last).map((at) => at - first)
      : divideCourse(
          { places, length: (from, to) => length(first + from, first + to), longest: known[index] },
          rule.kind,
          new Set([...above].map((at) => at - first)),
        );
    const joints = inside.map((at) => at + first);
    above = new Set(joints);
    const ends = [first, ...joints, last + 1];
    for (const [at, end] of ends.slice(1).entries())
      boards.push({ first: ends[at] ?? first, last: end - 1, line });
  }
  return boards;
}

/** The least of what is known; undefined where of one nothing is. */
function shortestOf(lengths: readonly (Ticks | undefined)[]): Ticks | undefined {
  return lengths.reduce((least, one) =>
    least === undefined || one === undefined ? undefined : Math.min(least, one),
  );
}

/** Lines that go on from bay to bay at one height, from the top; where the ground steps they begin and end within the stretch. */
function coursesOf(stretch: readonly FaceBay[], behind: boolean): readonly Board[] {
  const open = new Map<string, { first: number; last: number; line: Line }>();
  const all: Board[] = [];
  for (const [index, { stand }] of stretch.entries()) {
    const lines = behind ? stand.filled?.back : stand.filled?.lines;
    for (const line of lines ?? []) {
      // One that follows the ground is ripped for its bay alone.
      const own = line.taper ? index : '';
      const name = `${own} ${line.kind} ${line.course} ${line.low} ${line.high} ${line.stock.name} ${line.ripped}`;
      const held = open.get(name);
      if (held?.last === index - 1) held.last = index;
      else {
        const begun = { first: index, last: index, line };
        open.set(name, begun);
        all.push(begun);
      }
    }
  }
  return all.sort((a, b) => b.line.high - a.line.high || a.first - b.first);
}

/** Boards that begin and end alike are filled in together. */
function panelsOf(
  spec: RunSpec,
  stretch: readonly FaceBay[],
  boards: readonly Board[],
  face: ScreenFace,
  behind: boolean,
): readonly Panel[] {
  const alike = new Map<string, Board[]>();
  for (const board of boards) {
    const name = `${board.first} ${board.last}`;
    const own = alike.get(name);
    if (own) own.push(board);
    else alike.set(name, [board]);
  }
  return [...alike.values()].flatMap((own): Panel[] => {
    const { first, last } = own[0] ?? { first: 0, last: 0 };
    const within = stretch.slice(first, last + 1);
    const [begin, finish] = [within[0], within.at(-1)];
    if (!begin || !finish) return [];
    const { bay, left } = begin.placed;
    const { low } = begin;
    const { high } = finish;
    const z = edgesOf(low, high);
    const corner = { low: left.corner?.end, high: finish.placed.right.corner?.end };
    return [
      {
        run: spec.name,
        bay: bay.number,
        ...(last > first ? { until: finish.placed.bay.number } : {}),
        key: bay.key,
        label: bayLabel(bay.number),
        upright: false,
        lines: own.map(({ line }) => line),
        reach: [low.at, high.at],
        flush: !left.sharesSlats ? 'start' : !finish.placed.right.sharesSlats ? 'end' : 'middle',
        step: spec.measure.step,
        hold: {
          kind: 'face',
          face,
          plane: facePlane(spec, face),
          holders: [left, ...within.map(({ placed }) => placed.right)].map(({ mark }) => ({
            key: mark.key,
            x: [mark.from, mark.to],
            z: [lowest(within), highest(within)],
          })),
        },
        ...(behind ? { behind } : {}),
        ...(corner.low || corner.high ? { ends: corner } : {}),
        ...(z ? { edges: z } : {}),
        from: [
          ...(last > first || spec.slatJoints?.rule ? jointOrigins(spec) : []),
          spec.infill.fill,
          spec.origin,
        ],
      },
    ];
  });
}

const jointOrigins = ({ slatJoints }: RunSpec) => (slatJoints?.rule ? [slatJoints.rule.origin] : []);
const lowest = (bays: readonly FaceBay[]): Ticks => Math.min(...bays.map(({ stand }) => stand.z[0]));
const highest = (bays: readonly FaceBay[]): Ticks => Math.max(...bays.map(({ stand }) => stand.z[1]));

/** Both ends as edges where one of them leans. */
function edgesOf(low: FaceEnd, high: FaceEnd): Panel['edges'] {
  const z = (low.edge ?? high.edge)?.z;
  if (!z) return undefined;
  const plumb = ({ at }: FaceEnd) => ({ z, x: [at, at, at] as const });
  return { low: low.edge ?? plumb(low), high: high.edge ?? plumb(high) };
}
