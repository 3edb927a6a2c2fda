import type { GroundPoint } from '../model/index.ts';
import { levelAt } from '../model/index.ts';

/** A straight line along a run: its height from the datum at a station, and its rise for one tick along. */
export interface Incline {
  readonly at: number;
  readonly z: number;
  readonly rise: number;
}

/** Height of an incline at a station. */
export function heightAt({ at, z, rise }: Incline, x: number): number {
  return z + rise * (x - at);
}

/** The incline moved up by so much. */
export function raised(line: Incline, by: number): Incline {
  return { ...line, z: line.z + by };
}

/** Lowest and highest of an incline between two stations. */
export function reachOfIncline(
  line: Incline,
  from: number,
  to: number,
): readonly [low: number, high: number] {
  const [a, b] = [heightAt(line, from), heightAt(line, to)];
  return [Math.min(a, b), Math.max(a, b)];
}

/** How far the ground stands above an incline at most between two stations; negative where it is below all along. */
export function groundAbove(
  line: readonly GroundPoint[],
  incline: Incline,
  from: number,
  to: number,
): number {
  return Math.max(...breaksOf(line, from, to).map(([x, z]) => z - heightAt(incline, x)));
}

/** How far the ground lies below an incline at most between two stations. */
export function groundBelow(
  line: readonly GroundPoint[],
  incline: Incline,
  from: number,
  to: number,
): number {
  return Math.max(...breaksOf(line, from, to).map(([x, z]) => heightAt(incline, x) - z));
}

/** The ground at two stations and wherever it breaks between them. */
function breaksOf(
  line: readonly GroundPoint[],
  from: number,
  to: number,
): readonly (readonly [x: number, z: number])[] {
  const inner = line.filter(({ x }) => x > from && x < to).map(({ x, z }) => [x, z] as const);
  return [[from, levelAt(line, from)], ...inner, [to, levelAt(line, to)]];
}

/**
 * The straight line that lies on the ground between two stations and nowhere below it, and leaves the least room
 * under it: the edge of the ground's upper hull over the middle.
 */
export function lineOverGround(line: readonly GroundPoint[], from: number, to: number): Incline {
  const points = breaksOf(line, from, to);
  const middle = (from + to) / 2;
  let best: Incline | undefined;
  for (const [index, [ax, az]] of points.entries())
    for (const [bx, bz] of points.slice(index + 1)) {
      if (bx <= ax || ax > middle || bx < middle) continue;
      const edge = { at: ax, z: az, rise: (bz - az) / (bx - ax) };
      if (!best || heightAt(edge, middle) > heightAt(best, middle)) best = edge;
    }
  return best ?? { at: from, z: points[0]?.[1] ?? 0, rise: 0 };
}
