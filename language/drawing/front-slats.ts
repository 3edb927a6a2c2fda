import type { Piece } from '../layout/index.ts';
import { facesOf, type InfillSpec } from '../model/index.ts';

/** Whether a slat or trim lies behind others of its infill: on the back, where both faces have slats. */
export function isBehind({ mounting }: InfillSpec, { side, role }: Piece): boolean {
  return side === 'back' && (role === 'slat' || role === 'trim') && facesOf(mounting.value).length === 2;
}
