import { groundLine, type Problem, type RunSpec } from '../model/index.ts';
import { formatLength } from '../units/index.ts';
import { bracesOf } from './braces-of.ts';
import type { Joints } from './joints.ts';
import type { Temporary, WallFace } from './layout.ts';
import type { StandingPost } from './post-pieces.ts';
import type { PlacedBay } from './posts.ts';
import { geometryProblem } from './problems.ts';
import { stripsOf } from './setting-strips.ts';

/** Nothing to set posts with. */
export const NO_TEMPORARY: Temporary = { pieces: [], braced: [], blocked: [] };

/**
 * What sets the posts of a run and comes off again: two strips a bay, and two braces with their stakes at each post
 * of its own. A post that another run makes is braced there; the posts at a deck are bolted to it, and get strips alone.
 */
export function temporaryOf(
  spec: RunSpec,
  joints: Joints,
  posts: readonly StandingPost[],
  bays: readonly PlacedBay[],
  walls: readonly WallFace[],
): { readonly temporary: Temporary; readonly problems: readonly Problem[] } {
  const { bracing, measure } = spec;
  if (!bracing) return { temporary: NO_TEMPORARY, problems: [] };
  const line = groundLine(spec);
  const strips = stripsOf(spec, bracing, posts, bays, line);
  const braces = spec.deck
    ? { ...NO_TEMPORARY, tight: undefined }
    : bracesOf({ spec, bracing, joints, walls, line }, posts, strips.pieces);
  const tight = strips.tight ?? braces.tight;
  const shown = (ticks: number) => formatLength(ticks, measure);
  return {
    temporary: { ...braces, pieces: [...strips.pieces, ...braces.pieces] },
    problems: tight
      ? [
          geometryProblem('bracing-no-room', bracing.origin, {
            what: tight.what,
            at: tight.at,
            room: shown(Math.floor(tight.room)),
            needs: shown(Math.ceil(tight.needs)),
          }),
        ]
      : [],
  };
}
