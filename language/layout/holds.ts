import type { InfillSpec, Problem } from '../model/index.ts';
import { formatLength, type Measure, type Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';
import { geometryProblem } from './problems.ts';

/** What stands at both ends of slats between: its name, and where it is through the screen. */
export interface Holder {
  readonly name: string;
  readonly y: Range;
}

/** Reasons why cleats cannot hold slats `thickest` thick whose front is at `front`. */
export function cleatProblems(
  infill: InfillSpec,
  holders: readonly Holder[],
  thickest: Ticks,
  front: Ticks,
  measure: Measure,
): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const { cleat, endGap, mounting, pattern } = infill;
  if (!cleat) return [geometryProblem('cleats-missing', mounting.origin, { name: pattern.name })];
  const width = cleat.value.width.value;
  const problems: Problem[] = [];
  if (endGap.value >= width) {
    const args = { gap: shown(endGap.value), holder: cleat.value.name, width: shown(width) };
    problems.push(geometryProblem('end-gap-too-wide', endGap.origin, args));
  }
  const missed = holders.find(({ y }) => front <= y[0] || front + thickest >= y[1]);
  if (missed) {
    const args = { holder: missed.name, thickness: shown(missed.y[1] - missed.y[0]), slat: shown(thickest) };
    problems.push(geometryProblem('cleats-miss', cleat.origin, args));
  }
  return problems;
}

/** What slats between two faces need of the room between them, with what holds them. */
export function roomBetween({ mounting, cleat, endGap }: InfillSpec): Ticks {
  const { value } = mounting;
  if (value.kind === 'grooves') return Math.max(1, 2 * (endGap.value - value.depth.value) + 1);
  if (value.kind === 'channels') {
    const { width, wall } = value.channel.value;
    return Math.max(2 * width.value + 1, 2 * (endGap.value + wall.value) + 1);
  }
  return Math.max(2 * (cleat?.value.width.value ?? 0), 2 * endGap.value + 1);
}

/** Something this thick with its middle in the middle of the screen. */
export function centered(thickness: Ticks): Range {
  const front = 0 - Math.floor(thickness / 2);
  return [front, front + thickness];
}
