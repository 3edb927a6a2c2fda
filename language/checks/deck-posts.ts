import { deckDivisions, deckMembers, nearestMember, type PostMark, type RunLayout } from '../layout/index.ts';
import type { DeckSpec, TextChange } from '../model/index.ts';
import { formatLength, inches, mm, spellLength } from '../units/index.ts';
import { commonPractice, GEOMETRY, type LimitedRunCheck, type RunCheck, thresholdOf } from './define.ts';
import { describePosts } from './post-moved-for-obstacle.ts';

/** Posts held by a deck that have no joist or blocking within reach of their bolts. */
export const deckPostUnbacked: LimitedRunCheck = {
  kind: {
    code: 'deck-post-unbacked',
    severity: 'warning',
    stage: 'layout',
    basis: commonPractice(
      'the weak place of a post on a deck is the rim, so it is tied back to a joist or blocking beside it',
    ),
    threshold: {
      is: 'length',
      imperial: inches(3),
      metric: mm(75),
      says: 'farthest a joist or blocking may be from the face of a post that is bolted to it',
    },
    message: (a) =>
      `Nothing is within ${a.reach} of ${a.posts} to bolt to${a.nearest === '' ? '' : ` (${a.nearest})`}. Add blocking there, or divide the posts anew.`,
  },
  check: (run, job) => {
    const { deck } = run.spec;
    if (!deck || deck.hold.value === 'footing') return [];
    const measure = job.measure.value;
    const reach = thresholdOf(job, deckPostUnbacked.kind);
    const members = deckMembers(deck);
    const off = (post: PostMark) => nearestMember(members, post)?.off ?? Infinity;
    const loose = run.posts.filter((post) => off(post) > reach);
    if (loose.length === 0) return [];
    const nearest = loose.filter((post) => Number.isFinite(off(post)));
    const blocking = `Add blocking beside ${numbers(loose)}`;
    const fixes = [{ title: blocking, changes: [blockingFor(run, deck, loose)], preferred: true }];
    const inner = loose.some((post) => post !== run.posts[0] && post !== run.posts.at(-1));
    const divisions = inner ? deckDivisions(run.spec, run.joints, reach) : [];
    return [
      {
        code: 'deck-post-unbacked',
        at: deck.statement,
        args: {
          posts: numbers(loose),
          reach: formatLength(reach, measure),
          nearest:
            loose.length === 1
              ? nearest.map((post) => `the nearest is ${formatLength(off(post), measure)} off`).join()
              : nearest
                  .map((post) => `${formatLength(off(post), measure)} off post ${post.number}`)
                  .join(', '),
        },
        pieces: loose.map(({ key }) => key),
        related: [{ at: deck.joist.origin, note: 'the joists are stated here' }],
        fixes: [
          ...fixes,
          ...divisions.map(({ choice, changes }) => ({
            title: `Land posts on joists: ${describePosts(choice, measure)}`,
            changes,
          })),
        ],
      },
    ];
  },
};

/** Posts inside the frame in the very place of a joist. */
export const deckPostInJoist: RunCheck = {
  kind: {
    code: 'deck-post-in-joist',
    severity: 'error',
    stage: 'layout',
    basis: GEOMETRY,
    message: (a) =>
      `Inside the frame ${a.posts} and a joist are in the same place. Move the posts beside joists, or set them outside the rim.`,
  },
  check: ({ posts, spec: { deck } }) => {
    if (deck?.hold.value !== 'inside-frame') return [];
    const joists = deckMembers(deck).filter(({ kind }) => kind === 'joist');
    const hit = posts.filter(({ from, to }) => joists.some(({ x }) => x[0] < to && x[1] > from));
    if (hit.length === 0) return [];
    const pieces = hit.map(({ key }) => key);
    return [{ code: 'deck-post-in-joist', at: deck.statement, args: { posts: numbers(hit) }, pieces }];
  },
};

/** Posts that stand on a deck are for someone who can answer for them. */
export const deckPostConnection: RunCheck = {
  kind: {
    code: 'deck-post-connection',
    severity: 'information',
    stage: 'layout',
    basis: commonPractice(
      'a screen catches more wind than a railing takes leaning, so a guard detail is the least',
    ),
    message: (a) =>
      `The deck ${a.deck} alone holds the posts of ${a.run}. How they are tied to its frame is for an engineer, or for connectors tested for such a load; local rules decide.`,
  },
  check: ({ spec }) =>
    spec.deck && spec.deck.hold.value !== 'footing'
      ? [
          {
            code: 'deck-post-connection',
            at: spec.deck.statement,
            args: { deck: spec.deck.name, run: spec.name },
          },
        ]
      : [],
};

function numbers(posts: readonly PostMark[]): string {
  const all = posts.map(({ number }) => number);
  return `${all.length === 1 ? 'post' : 'posts'} ${all.join(', ')}`;
}

/** Blocking whose face meets the side of each post: the far one, of the last post the near one. */
function blockingFor({ posts, spec }: RunLayout, deck: DeckSpec, loose: readonly PostMark[]): TextChange {
  const half = Math.floor(deck.joist.thickness / 2);
  const added = loose.map((post) =>
    post === posts.at(-1) ? post.from - deck.joist.thickness + half : post.to + half,
  );
  const stations = [...deck.blocking, ...added].sort((a, b) => a - b);
  const text = `blocking at ${stations.map((at) => spellLength(at, spec.measure)).join(', ')}`;
  const { uri, path } = deck.blockingAt ?? deck.origin;
  return { uri, path, place: deck.blockingAt ? 'replace' : 'append', text };
}
