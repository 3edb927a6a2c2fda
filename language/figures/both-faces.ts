import {
  type Bay,
  baysOf,
  isBackHalf,
  type Leaf,
  type Piece,
  type PostMark,
  type RunLayout,
} from '../layout/index.ts';
import { covering, type Outline, outlineOf } from './outline.ts';
import { showsHeads } from './screw-heads.ts';

/** How a run looks from behind, set beside how it looks from the front. */
export type BothFaces =
  | { readonly answer: 'same' }
  /** The same once one of the two pictures is read from the bottom up. */
  | { readonly answer: 'upside-down' }
  /**
   * `piece` is the first, from the top left of the first place that differs, that has no like on the other side; or,
   * where only screws tell the sides apart, whose screws have none.
   */
  | { readonly answer: 'different'; readonly piece: Piece; readonly by: 'shape' | 'screws' };

type Seen = Outline | undefined;

/** A picture of what is in front at each cell: columns from the left of who looks from the front, rows from the bottom. */
interface Pictures {
  readonly front: readonly (readonly Seen[])[];
  readonly back: readonly (readonly Seen[])[];
}

/**
 * Whether a run is alike from both sides, found by laying two pictures over one another: each bay, leaf and post
 * as seen from the front, and as one who stands behind it sees it. Alike is the same kind of piece of the same
 * stock, as far back from that side, at every spot; what the rounding of a cut to the tape's marks can shift does
 * not count. Each bay is turned about its own middle: that a gate is nearer one end is no difference.
 * Screws are no pieces; where all else is alike, so must be which pieces show their heads (see `showsHeads`).
 */
export function bothFaces(
  run: Pick<RunLayout, 'pieces' | 'posts' | 'bays' | 'leaves' | 'bottom' | 'top' | 'spec'>,
): BothFaces {
  const tolerance = run.spec.measure.step;
  let turned = false;
  let screwed: Piece | undefined;
  const headed: Headed = (piece, side) => showsHeads(run, piece, side);
  const known = new Set<string>();
  for (const section of sectionsOf(run)) {
    const shape = shapeOf(section, headed);
    if (known.has(shape)) continue;
    known.add(shape);
    const pictures = picturesOf(section, tolerance);
    const failing = firstUnlike(pictures, tolerance, 'about');
    if (failing && firstUnlike(pictures, tolerance, 'over'))
      return { answer: 'different', piece: failing.piece, by: 'shape' };
    if (failing) turned = true;
    screwed ??= firstUnlike(pictures, tolerance, failing ? 'over' : 'about', headed)?.piece;
  }
  if (screwed) return { answer: 'different', piece: screwed, by: 'screws' };
  return { answer: turned ? 'upside-down' : 'same' };
}

/** Whether a piece shows screws to one who looks at that side of it. */
type Headed = (piece: Piece, side: 'front' | 'back') => boolean;

/** A stretch of the run that is compared with itself from behind. */
interface Section {
  readonly x: readonly [number, number];
  readonly z: readonly [number, number];
  readonly outlines: readonly Outline[];
}

function* sectionsOf(run: Parameters<typeof bothFaces>[0]): Generator<Section> {
  const byBay = new Map<number | undefined, Outline[]>();
  const posts = new Map<string, Outline[]>();
  const halves: Outline[] = [];
  for (const piece of run.pieces) {
    const outline = outlineOf(piece);
    // The halves of a split post are one.
    if (isBackHalf(piece)) halves.push(outline);
    else if (piece.role === 'post') posts.set(piece.key, [outline]);
    else
      for (const bay of piece.bay === undefined ? [undefined] : baysOf(piece))
        if (!byBay.get(bay)?.push(outline)) byBay.set(bay, [outline]);
  }
  for (const half of halves) posts.get(half.piece.key.replace(/\/back$/, ''))?.push(half);
  const section = (x: readonly [number, number], outlines: readonly Outline[]): Section => {
    const within = outlines.filter(({ box }) => box.low[0] < x[1] && box.high[0] > x[0]);
    const slats = within.filter(({ piece }) => piece.role === 'slat' || piece.role === 'trim');
    if (slats.length === 0) return { x, z: [run.bottom, run.top], outlines: within };
    const z = [
      Math.min(...slats.map((one) => one.box.low[2])),
      Math.max(...slats.map((one) => one.box.high[2])),
    ];
    return { x, z: [z[0] ?? 0, z[1] ?? 0], outlines: within };
  };
  const leavesIn = ({ number }: Bay): readonly Leaf[] => run.leaves.filter(({ bay }) => bay === number);
  for (const bay of run.bays) {
    const leaves = leavesIn(bay);
    const x: readonly [number, number] =
      leaves.length > 0
        ? [Math.min(...leaves.map(({ x0 }) => x0)), Math.max(...leaves.map(({ x1 }) => x1))]
        : [bay.from, bay.to];
    yield section(x, byBay.get(bay.number) ?? []);
  }
  for (const mark of run.posts) {
    const post = posts.get(mark.key);
    if (!post) continue;
    const beside = run.bays.filter((bay) => touches(bay, mark)).flatMap((bay) => byBay.get(bay.number) ?? []);
    yield section([mark.from, mark.to], [...post, ...beside]);
  }
}

/** The same for sections that are alike but for where they stand: most bays of a run are. */
function shapeOf({ x, z, outlines }: Section, headed: Headed): string {
  const parts = outlines.map(({ piece, box, hulls }) => {
    const { low, high } = box;
    const corners = hulls?.flat().map(([across, up]) => [across - x[0], up - z[0]]) ?? [
      low[0] - x[0],
      high[0] - x[0],
      low[2] - z[0],
      high[2] - z[0],
    ];
    const heads = `${headed(piece, 'front') ? 'f' : ''}${headed(piece, 'back') ? 'b' : ''}`;
    return [piece.role, piece.cut.stock, heads, low[1], high[1], ...corners].join();
  });
  return [x[1] - x[0], z[1] - z[0], ...parts].join('|');
}

function touches(bay: Bay, { from, to }: PostMark): boolean {
  return bay.to === from || bay.from === to;
}

/** Cells between all edges and their mirror images, so that a cell's own image is a cell. */
function picturesOf({ x, z, outlines }: Section, tolerance: number): Pictures {
  const columns = cells(
    x,
    outlines.flatMap(({ edges }) => edges[0]),
    tolerance,
  );
  const rows = cells(
    z,
    outlines.flatMap(({ edges }) => edges[1]),
    tolerance,
  );
  const front: Seen[][] = columns.map(() => []);
  const back: Seen[][] = columns.map(() => []);
  for (const [row, at] of rows.entries()) {
    const level = outlines.filter(({ box }) => box.low[2] < at && box.high[2] > at);
    for (const [column, across] of columns.entries()) {
      let first: Outline | undefined;
      let last: Outline | undefined;
      for (const one of level) {
        if (!covering(one, across, at)) continue;
        if (!first || one.box.low[1] < first.box.low[1]) first = one;
        if (!last || one.box.high[1] > last.box.high[1]) last = one;
      }
      (front[column] as Seen[])[row] = first;
      (back[column] as Seen[])[row] = last;
    }
  }
  return { front, back };
}

/** Middles of the cells, in an order that is its own mirror image; slivers within the tolerance are none. */
function cells(
  [low, high]: readonly [number, number],
  edges: readonly number[],
  tolerance: number,
): number[] {
  const inside = edges
    .flatMap((edge) => [edge, low + high - edge])
    .filter((edge) => edge > low && edge < high);
  const sorted = [...new Set([low, ...inside, high])].sort((a, b) => a - b);
  return sorted.slice(1).flatMap((to, index) => {
    const from = sorted[index] ?? to;
    return to - from > tolerance ? [(from + to) / 2] : [];
  });
}

/**
 * The first spot, from the top left, that has no like. `about` an upright axis: seen from behind; `over`: that
 * picture read from the bottom up besides, which leaves upright slats in their order. With `headed`, of screws alone.
 */
function firstUnlike(
  { front, back }: Pictures,
  tolerance: number,
  turn: 'about' | 'over',
  headed?: Headed,
): Seen {
  const columns = front.length;
  const rows = front[0]?.length ?? 0;
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = 0; column < columns; column++) {
      const here = front[column]?.[row];
      const there = back[columns - 1 - column]?.[turn === 'about' ? row : rows - 1 - row];
      if (headed) {
        const [own, other] = [here && headed(here.piece, 'front'), there && headed(there.piece, 'back')];
        if (here && there && own !== other) return own ? here : there;
      } else if (!isLike(here, there, tolerance)) return telling(here, there);
    }
  }
  return undefined;
}

function isLike(here: Seen, there: Seen, tolerance: number): boolean {
  if (!here || !there) return here === there;
  const [a, b] = [here.piece, there.piece];
  if (a.role !== b.role || a.cut.stock !== b.cut.stock) return false;
  return Math.abs(here.box.low[1] + there.box.high[1]) <= tolerance;
}

/** Of the two pieces that differ, the slat, which is what one looks at. */
function telling(here: Seen, there: Seen): Seen {
  return [here, there].find((one) => one?.piece.role === 'slat') ?? here ?? there;
}
