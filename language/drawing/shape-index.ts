import type { Silhouette } from './project.ts';

/** Silhouettes in the order in which they follow one another, so that those beside a stretch are found at once. */
export interface ShapeIndex {
  readonly axis: 'x' | 'y';
  readonly ranks: readonly Rank[];
}

/** Silhouettes about as long as one another, by where they begin: short ones are not sought as far as long ones reach. */
interface Rank {
  readonly shapes: readonly Silhouette[];
  readonly longest: number;
}

/** The longest of a rank is less than so many times as long as its shortest. */
const RANK = 4;

export function indexShapes(shapes: readonly Silhouette[]): ShapeIndex {
  const axis = crowding(shapes, 'y') <= crowding(shapes, 'x') ? 'y' : 'x';
  const ranks = new Map<number, Silhouette[]>();
  for (const shape of shapes) {
    const rank = Math.floor(Math.log(Math.max(1e-3, lengthOf(shape, axis))) / Math.log(RANK));
    const held = ranks.get(rank);
    if (held) held.push(shape);
    else ranks.set(rank, [shape]);
  }
  return {
    axis,
    ranks: [...ranks.values()].map((all) => ({
      shapes: all.sort((a, b) => lowOf(a, axis) - lowOf(b, axis)),
      longest: all.reduce((most, shape) => Math.max(most, lengthOf(shape, axis)), 0),
    })),
  };
}

/** Visits all that may lie over or under a silhouette, and a few that do not. */
export function visitBeside(
  { axis, ranks }: ShapeIndex,
  shape: Silhouette,
  visit: (other: Silhouette) => void,
): void {
  const to = highOf(shape, axis);
  for (const { shapes, longest } of ranks) {
    const from = lowOf(shape, axis) - longest;
    for (let at = firstFrom(shapes, axis, from); at < shapes.length; at++) {
      const other = shapes[at] as Silhouette;
      if (lowOf(other, axis) >= to) break;
      visit(other);
    }
  }
}

/** Where the first stands that begins at a place or after it. */
function firstFrom(shapes: readonly Silhouette[], axis: 'x' | 'y', from: number): number {
  let [first, end] = [0, shapes.length];
  while (first < end) {
    const middle = (first + end) >> 1;
    if (lowOf(shapes[middle] as Silhouette, axis) < from) first = middle + 1;
    else end = middle;
  }
  return first;
}

const lowOf = (shape: Silhouette, axis: 'x' | 'y'): number => (axis === 'x' ? shape.x0 : shape.y0);
const highOf = (shape: Silhouette, axis: 'x' | 'y'): number => (axis === 'x' ? shape.x1 : shape.y1);
const lengthOf = (shape: Silhouette, axis: 'x' | 'y'): number => highOf(shape, axis) - lowOf(shape, axis);

/** How many lie beside one another on the average. */
function crowding(shapes: readonly Silhouette[], axis: 'x' | 'y'): number {
  let [low, high, all] = [Infinity, -Infinity, 0];
  for (const shape of shapes) {
    low = Math.min(low, lowOf(shape, axis));
    high = Math.max(high, highOf(shape, axis));
    all += lengthOf(shape, axis);
  }
  return all / Math.max(1e-9, high - low);
}
