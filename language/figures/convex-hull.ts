/** Of a plane. */
export type Point = readonly [x: number, y: number];

/** Convex hull by monotone chains (A. M. Andrew, 1979). */
export function hullOf(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const chain = (along: readonly Point[]): Point[] => {
    const kept: Point[] = [];
    for (const point of along) {
      while (kept.length > 1 && turn(kept.at(-2) as Point, kept.at(-1) as Point, point) <= 0) kept.pop();
      kept.push(point);
    }
    return kept.slice(0, -1);
  };
  return [...chain(sorted), ...chain(sorted.toReversed())];
}

/** Positive where `to` lies to the left of the way from `a` to `b`. */
export function turn(a: Point, b: Point, to: Point): number {
  return (b[0] - a[0]) * (to[1] - a[1]) - (b[1] - a[1]) * (to[0] - a[0]);
}
