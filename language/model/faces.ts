import type { Mounting } from './job.ts';

export type ScreenFace = 'front' | 'back';

/** Faces of what holds them that slats lie on, front first; none where they stand between. */
export function facesOf(mounting: Mounting): readonly ScreenFace[] {
  if (mounting.kind === 'between') return [];
  return mounting.kind === 'face' ? [mounting.face] : ['front', 'back'];
}

/** The face of a run that looks toward a side: its front, for the side it is seen from; its back, for any other. */
export function faceToward(seenFrom: string, side: string): ScreenFace {
  if (side === seenFrom || side === 'front') return 'front';
  return 'back';
}
