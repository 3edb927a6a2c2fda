type Point = readonly [x: number, y: number];

/**
 * Outline of convex polygons (corners x, y, x, y ...) that lie side by side, each with an edge in common with the next: corners x, y, x,
 * y ..., in the direction of theirs. Undefined when they make no one ring, as where they overlap.
 */
export function joinedOutline(polygons: readonly (readonly number[])[]): readonly number[] | undefined {
  // An edge that two of them share is gone through once in each direction, and is no edge of the whole.
  const edges = new Map<string, readonly [Point, Point]>();
  for (const polygon of polygons) {
    const corners = pointsOf(polygon);
    for (const [i, from] of corners.entries()) {
      const to = corners[(i + 1) % corners.length] ?? from;
      if (!edges.delete(named(to, from))) edges.set(named(from, to), [from, to]);
    }
  }
  const next = new Map([...edges.values()].map(([from, to]) => [from.join(), to]));
  const [first] = edges.values();
  if (!first || next.size !== edges.size) return undefined;
  const ring: Point[] = [];
  let [at] = first;
  do {
    ring.push(at);
    const to = next.get(at.join());
    if (!to) return undefined;
    at = to;
  } while (at.join() !== first[0].join() && ring.length <= next.size);
  if (ring.length !== next.size) return undefined;
  return ring
    .filter((point, i) => !isStraight(ring.at(i - 1) ?? point, point, ring[i + 1] ?? first[0]))
    .flat();
}

function pointsOf(polygon: readonly number[]): readonly Point[] {
  return Array.from(
    { length: polygon.length / 2 },
    (_, i): Point => [polygon[2 * i] as number, polygon[2 * i + 1] as number],
  );
}

const named = (from: Point, to: Point): string => `${from.join()} ${to.join()}`;

/** Whether a corner is less than a hundredth of a millimeter off the line between its neighbors. */
function isStraight([ax, ay]: Point, [px, py]: Point, [bx, by]: Point): boolean {
  const long = Math.hypot(bx - ax, by - ay);
  return long > 0 && Math.abs((bx - ax) * (py - ay) - (by - ay) * (px - ax)) < 0.005 * long;
}
