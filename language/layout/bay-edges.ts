import { ROUNDING, type Ticks } from '../units/index.ts';
import { groundAbove, groundBelow, heightAt, type Incline } from './incline.ts';
import type { Bay, RunLayout } from './layout.ts';

type Run = Pick<RunLayout, 'edges' | 'reach' | 'groundLine'>;

/** The lowest edge of what fills a bay, level or sloping; undefined where nothing fills it. */
export function bottomEdge(run: Run, bay: number): Incline | undefined {
  return edgeOf(run, bay, 'bottom');
}

/** The highest edge of what fills a bay. */
export function topEdge(run: Run, bay: number): Incline | undefined {
  return edgeOf(run, bay, 'top');
}

/** From the lowest to the highest edge of what fills a bay, at a station beside it; undefined where nothing does. */
export function reachAt(
  run: Pick<Run, 'edges' | 'reach'>,
  bay: number,
  x: number,
): readonly [bottom: Ticks, top: Ticks] | undefined {
  const [low, high] = [edgeOf(run, bay, 'bottom'), edgeOf(run, bay, 'top')];
  return low && high && [Math.round(heightAt(low, x)), Math.round(heightAt(high, x))];
}

function edgeOf(
  { edges, reach }: Pick<Run, 'edges' | 'reach'>,
  bay: number,
  end: 'bottom' | 'top',
): Incline | undefined {
  const sloping = edges.get(bay)?.[end];
  const level = reach.get(bay)?.[end === 'bottom' ? 0 : 1];
  return sloping ?? (level === undefined ? undefined : { at: 0, z: level, rise: 0 });
}

/**
 * How far an edge stands above the ground along a bay, between its posts, in whole ticks: at least (negative where
 * the ground covers it) and at most.
 */
export function aboveGround(
  { groundLine }: Run,
  { from, to }: Pick<Bay, 'from' | 'to'>,
  edge: Incline,
): { readonly least: number; readonly most: number } {
  return {
    least: Math.floor(0 - groundAbove(groundLine, edge, from, to) + ROUNDING),
    most: Math.ceil(groundBelow(groundLine, edge, from, to) - ROUNDING),
  };
}
