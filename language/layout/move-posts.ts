import type { NoHole, Problem, RunSpec } from '../model/index.ts';
import { formatLength, spellLength, type Ticks } from '../units/index.ts';
import type { FixedPost } from './fixed-posts.ts';
import type { PostChoice, PostMove } from './layout.ts';
import { type Clearing, clearChoices, hits } from './obstacles.ts';
import { geometryProblem } from './problems.ts';

/** A stretch divided: where its posts are, and what else they could be had the first not been clear. */
export interface Division {
  readonly posts: readonly Ticks[];
  readonly moved?: {
    readonly post: Ticks;
    readonly noHole: NoHole;
    readonly choices: readonly PostChoice[];
  };
}

/** The ordinary division of a stretch, or the best that is clear of obstacles when that one is not. */
export function keepClear(clearing: Clearing, ordinary: readonly Ticks[]): Division {
  for (const post of ordinary) {
    const noHole = clearing.noHoles.find((one) => hits(post, clearing.along, one));
    if (!noHole) continue;
    const choices = clearChoices(clearing);
    const [chosen] = choices;
    return chosen ? { posts: chosen.posts, moved: { post, noHole, choices } } : { posts: ordinary };
  }
  return { posts: ordinary };
}

/** What was moved, with the edits that would build the other choices; none where no spacing is stated. */
export function movesOf(
  spec: RunSpec,
  fixed: readonly FixedPost[],
  divisions: readonly Division[],
): readonly PostMove[] {
  const { spacing, measure } = spec;
  return divisions.flatMap(({ moved }, index): PostMove[] => {
    const [chosen, ...others] = moved?.choices ?? [];
    if (!moved || !chosen) return [];
    const { uri, path } = spacing.origin;
    const edited = (choice: PostChoice) => {
      if (spacing.origin.why !== 'stated') return [];
      const alone = divisions.length === 1 && fixed.length === 2;
      if (alone && choice.kind === 'equal') return [`${choice.clears.length} bays`];
      const posts = divisions.flatMap((division, i) => (i === index ? choice.posts : division.posts));
      return posts.length > 0 ? [`at ${posts.map((post) => spellLength(post, measure)).join(', ')}`] : [];
    };
    return [
      {
        post: moved.post,
        noHole: moved.noHole,
        chosen,
        others: others.map((choice) => ({
          choice,
          changes: edited(choice).map((text) => ({ uri, path, place: 'replace' as const, text })),
        })),
      },
    ];
  });
}

/** Posts that stand where no hole may be all the same. `between` are those whose place is not stated. */
export function clashesOf(
  spec: RunSpec,
  posts: readonly FixedPost[],
  between: readonly FixedPost[],
): readonly Problem[] {
  const shown = (ticks: Ticks) => formatLength(ticks, spec.measure);
  return posts.flatMap((post) => {
    const noHole = (spec.noHoles ?? []).find((one) => hits(post.from, post.to - post.from, one));
    const [origin] = post.origins;
    if (!noHole || !origin) return [];
    const args = {
      station: shown(post.from),
      until: shown(post.to),
      from: shown(noHole.from),
      to: shown(noHole.to),
      reason: noHole.reason ?? '',
      why: between.includes(post) ? ('none-fits' as const) : ('stated' as const),
    };
    const related = [{ origin: noHole.origin, note: 'no hole may be here' }];
    return [geometryProblem('post-in-obstacle', origin, args, related)];
  });
}
