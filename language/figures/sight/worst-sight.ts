import type { Vec3 } from '../../layout/index.ts';
import type { PlaceArea, Scene } from './scene.ts';
import { type PlaceSight, seenShare, sightOf } from './sight.ts';

/** So many spots of a stretch are tried before the worst is sought between its neighbors. */
const SPOTS = 24;
const NARROWINGS = 12;

/** The most that is seen of a place from a stretch, and where along it, from 0 to 1. */
export interface WorstSight extends PlaceSight {
  readonly along: number;
}

/**
 * Where most of a place is seen from: the eye itself, or the worst spot between the two ends of a stretch. The
 * share is exact at each spot; the spot is found by trying evenly spread ones and narrowing in on the best of them.
 */
export function worstSight(scene: Scene, area: PlaceArea, eyes: readonly Vec3[]): WorstSight | undefined {
  const [from, to] = eyes;
  if (!from) return undefined;
  if (!to) return { ...sightOf(scene, area, from), along: 0 };
  const eyeAt = (t: number): Vec3 => [
    from[0] + t * (to[0] - from[0]),
    from[1] + t * (to[1] - from[1]),
    from[2] + t * (to[2] - from[2]),
  ];
  const seenAt = (t: number) => seenShare(scene, area, eyeAt(t));
  const tries = Array.from({ length: SPOTS + 1 }, (_, i) => i / SPOTS);
  const shares = tries.map(seenAt);
  const best = shares.indexOf(Math.max(...shares));
  let low = tries[Math.max(0, best - 1)] as number;
  let high = tries[Math.min(SPOTS, best + 1)] as number;
  let along = tries[best] as number;
  let most = shares[best] as number;
  for (let i = 0; i < NARROWINGS; i++) {
    const [a, b] = [low + (high - low) / 3, high - (high - low) / 3];
    const [sa, sb] = [seenAt(a), seenAt(b)];
    if (sa > most) [along, most] = [a, sa];
    if (sb > most) [along, most] = [b, sb];
    if (sa < sb) low = a;
    else high = b;
  }
  return { ...sightOf(scene, area, eyeAt(along)), along };
}
