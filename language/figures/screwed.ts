import type { Piece, RunLayout } from '../layout/index.ts';
import { infillOf } from './infill-of.ts';

/**
 * The pieces a slat is screwed to, cleats it is held between among them. Grooves and channels need no screws, nor
 * do posts of two halves, which bolts draw together; stiffeners are screwed there too.
 */
export function screwedTo(
  run: Pick<RunLayout, 'spec' | 'leaves'>,
  slat: Piece,
  byKey: ReadonlyMap<string, Piece>,
): readonly Piece[] {
  const held = slat.supports.flatMap((key) => byKey.get(key) ?? []);
  const { kind } = infillOf(run, slat.gate).mounting.value;
  if (kind !== 'grooves' && kind !== 'channels' && kind !== 'split') return held;
  return held.filter(({ role }) => role === 'stiffener');
}
