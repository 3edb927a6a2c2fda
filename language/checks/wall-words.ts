import type { WallGap } from '../figures/index.ts';
import { formatLength, type Measure } from '../units/index.ts';

type Side = WallGap['face']['side'];

/** Which of the end posts stands beside a wall. */
export function endPost(side: Side): 'first' | 'last' {
  return side === 'start' ? 'first' : 'last';
}

/** How far up a wall a height from the datum is. */
export function upTheWall({ ground }: WallGap['face'], z: number, measure: Measure): string {
  return formatLength(Math.max(0, Math.round(z - ground)), measure);
}
