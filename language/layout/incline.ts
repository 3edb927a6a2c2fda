import type { GroundPoint } from '../model/index.ts';
import { levelAt } from '../model/index.ts';

/** A straight line along a run: its height from the datum at a station, and its rise for one tick along. */
export interface Incline {
  readonly at: number;
  readonly z: number;
  readonly rise: number;
}

/** The straight line through two heights; level where both stations are one. */
export function inclineThrough([from, to]: Two, [start, end]: Two): Incline {
  return { at: from, z: start, rise: to > from ? (end - start) / (to - from) : 0 };
}

type Two = readonly [first: number, second: number];

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
 * A straight line nowhere below the ground between two stations: from the ground at one to the ground at the other,
 * or, where humps stand over that, raised till it lies on the highest.
 */
export function lineOverGround(line: readonly GroundPoint[], from: number, to: number): Incline {
  const [start, end] = [levelAt(line, from), levelAt(line, to)];
  const straight = inclineThrough([from, to], [start, end]);
  return raised(straight, Math.max(0, groundAbove(line, straight, from, to)));
}
