/** What a choice comes to as plain numbers, of each of which less is better. All of one search are alike long. */
export type Scores = readonly number[];

/** Whether one is nowhere worse than another, and somewhere better. */
export function beats(one: Scores, other: Scores): boolean {
  return (
    one.every((score, at) => score <= (other[at] ?? Infinity)) &&
    one.some((score, at) => score < (other[at] ?? Infinity))
  );
}

/** Those that no other beats, in their order; of those that come to the same, the first. */
export function unbeaten<T>(all: readonly T[], scoresOf: (one: T) => Scores): readonly T[] {
  const kept: { one: T; scores: Scores }[] = [];
  for (const one of all) {
    const scores = scoresOf(one);
    if (kept.some((held) => beats(held.scores, scores) || same(held.scores, scores))) continue;
    for (let at = kept.length - 1; at >= 0; at--)
      if (beats(scores, kept[at]?.scores ?? scores)) kept.splice(at, 1);
    kept.push({ one, scores });
  }
  return kept.map(({ one }) => one);
}

/**
 * At most so many of them, spread: the best by each score first, then again and again the one that is farthest from
 * all that are taken, each score measured from its best to its worst.
 */
export function spreadOver<T>(all: readonly T[], most: number, scoresOf: (one: T) => Scores): readonly T[] {
  if (all.length <= most) return all;
  const scores = all.map(scoresOf);
  const size = scores[0]?.length ?? 0;
  const ranges = Array.from({ length: size }, (_, at) => {
    const column = scores.map((one) => one[at] ?? 0);
    return { low: Math.min(...column), span: Math.max(...column) - Math.min(...column) };
  });
  const measured = scores.map((one) =>
    one.map((score, at) => {
      const { low, span } = ranges[at] ?? { low: 0, span: 0 };
      return span > 0 ? (score - low) / span : 0;
    }),
  );
  const taken = new Set<number>();
  for (let at = 0; at < size && taken.size < most; at++) taken.add(indexOfLeast(measured, at));
  while (taken.size < most) {
    let [farthest, distance] = [-1, -1];
    for (const [index, one] of measured.entries()) {
      if (taken.has(index)) continue;
      const near = Math.min(...[...taken].map((held) => apart(one, measured[held] ?? one)));
      if (near > distance) [farthest, distance] = [index, near];
    }
    if (farthest < 0) break;
    taken.add(farthest);
  }
  return all.filter((_, index) => taken.has(index));
}

const same = (one: Scores, other: Scores): boolean => one.every((score, at) => score === other[at]);

const apart = (one: Scores, other: Scores): number =>
  one.reduce((sum, score, at) => sum + Math.abs(score - (other[at] ?? 0)), 0);

/** The first of the least by one score, of several the one that is least in all. */
function indexOfLeast(measured: readonly Scores[], at: number): number {
  const total = (one: Scores) => one.reduce((sum, score) => sum + score, 0);
  let best = 0;
  for (const [index, one] of measured.entries()) {
    const held = measured[best] ?? one;
    const [score, least] = [one[at] ?? 0, held[at] ?? 0];
    if (score < least || (score === least && total(one) < total(held))) best = index;
  }
  return best;
}
