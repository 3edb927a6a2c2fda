import type { Mounting } from './job.ts';

export type ScreenFace = 'front' | 'back';

/** Faces of what holds them that slats lie on, front first; none where they stand between. */
export function facesOf(mounting: Mounting): readonly ScreenFace[] {
  switch (mounting.kind) {
    case 'face':
      return [mounting.face];
    case 'both':
    case 'alternate':
      return ['front', 'back'];
    default:
      return [];
  }
}

/** Whether slats stand between what holds their ends: on cleats, in grooves or in channels. */
export function standsBetween({ kind }: Mounting): boolean {
  return kind === 'between' || kind === 'grooves' || kind === 'channels';
}

/** The face of a run that looks toward a side: its front, for the side it is seen from; its back, for any other. */
export function faceToward(seenFrom: string, side: string): ScreenFace {
  if (side === seenFrom || side === 'front') return 'front';
  return 'back';
}
