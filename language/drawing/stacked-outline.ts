/**
 * Outline of convex polygons (corners x, y, x, y ...) that stand on one another, so that together they are a single
 * stretch at every height: down its right edge and up its left one, clockwise on a sheet with y down. Exact at every
 * corner and crossing of their edges.
 */
export function stackedOutline(polygons: readonly (readonly number[])[]): readonly number[] {
  const [only, ...others] = polygons;
  if (!only || others.length === 0) return only ?? [];
  const edges = polygons.flatMap(edgesOf);
  const heights = new Set(edges.flatMap(({ y0, y1 }) => [y0, y1]));
  for (const [i, one] of edges.entries())
    for (const other of edges.slice(i + 1)) {
      const y = crossing(one, other);
      if (y !== undefined) heights.add(y);
    }
  const sorted = [...heights].sort((a, b) => a - b);
  // Between two heights no edge begins, ends or crosses another; where a part ends, its edge may jump.
  const sides = sorted.slice(1).flatMap((to, i) => {
    const from = sorted[i] ?? to;
    const active = edges.filter(({ y0, y1 }) => y0 <= from && y1 >= to && y0 < y1);
    if (active.length === 0) return [];
    return [from, to].map((y) => {
      const xs = active.map((edge) => stationAt(edge, y));
      return { y, left: Math.min(...xs), right: Math.max(...xs) };
    });
  });
  return [
    ...sides.flatMap(({ y, right }) => [right, y]),
    ...sides.toReversed().flatMap(({ y, left }) => [left, y]),
  ];
}

/** An edge from its upper to its lower end. */
interface Edge {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

function edgesOf(polygon: readonly number[]): readonly Edge[] {
  return Array.from({ length: polygon.length / 2 }, (_, i): Edge => {
    const at = (k: number) => polygon[k % polygon.length] as number;
    const [ax, ay, bx, by] = [at(2 * i), at(2 * i + 1), at(2 * i + 2), at(2 * i + 3)];
    return ay <= by ? { x0: ax, y0: ay, x1: bx, y1: by } : { x0: bx, y0: by, x1: ax, y1: ay };
  });
}

function stationAt({ x0, y0, x1, y1 }: Edge, y: number): number {
  return x0 + ((x1 - x0) * (y - y0)) / (y1 - y0);
}

function crossing(a: Edge, b: Edge): number | undefined {
  const [low, high] = [Math.max(a.y0, b.y0), Math.min(a.y1, b.y1)];
  if (low >= high) return undefined;
  const apart = (y: number) => stationAt(a, y) - stationAt(b, y);
  const [first, last] = [apart(low), apart(high)];
  return first * last < 0 ? low + ((high - low) * first) / (first - last) : undefined;
}
