import type { Piece } from '../layout/index.ts';
import { facesOf, type InfillSpec } from '../model/index.ts';

/** Whether a slat or trim lies behind others of its infill: on the far face, where both faces have slats. */
export function isBehind(
  { mounting }: InfillSpec,
  { side, role }: Piece,
  from: 'front' | 'back' = 'front',
): boolean {
  return (
    side === (from === 'front' ? 'back' : 'front') &&
    (role === 'slat' || role === 'trim') &&
    facesOf(mounting.value).length === 2
  );
}
