import type { Piece, RunLayout } from '../layout/index.ts';
import { facesOf } from '../model/index.ts';
import { infillOf } from './infill-of.ts';

/**
 * Whether a piece shows the heads of screws to one who looks at that side of it: slats on a face do on that face, of
 * two cleats that hold a slat the one behind does, for slats are screwed through one of them, from the side that is
 * looked at less (common practice). Grooves, channels and split posts show none, nor do screws that are said to be
 * hidden, plugged or by turns. Bolts go through and show on both sides.
 */
export function showsHeads(
  run: Pick<RunLayout, 'spec' | 'leaves'>,
  piece: Piece,
  side: 'front' | 'back',
): boolean {
  if (piece.role !== 'slat' && piece.role !== 'trim' && piece.role !== 'cleat') return false;
  const { mounting, screws } = infillOf(run, piece.gate);
  if (screws || piece.side !== side) return false;
  return piece.role === 'cleat'
    ? mounting.value.kind === 'between' && side === 'back'
    : facesOf(mounting.value).includes(side);
}
