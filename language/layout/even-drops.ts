import { spreadEvenly } from '../units/index.ts';

/**
 * Whole pitches that each bay is lower than the first line, given how many the ground allows each. Where the ground
 * only falls, or only rises, the steps are spread over the transitions between bays as evenly as it allows: along a
 * string drawn tight over what is allowed, and evenly along each straight stretch of it. Else each bay goes as low as
 * it may.
 */
export function evenDrops(allowed: readonly number[]): readonly number[] {
  const falls = allowed.every((drop, bay) => bay === 0 || drop >= (allowed[bay - 1] ?? 0));
  if (falls) return alongString(allowed);
  const rises = allowed.every((drop, bay) => bay === 0 || drop <= (allowed[bay - 1] ?? 0));
  return rises ? alongString(allowed.toReversed()).toReversed() : allowed;
}

/** Bays where the string touches what is allowed: the lower convex hull of falling drops, first and last included. */
function touches(allowed: readonly number[]): readonly number[] {
  const hull: number[] = [];
  const at = (bay: number | undefined) => allowed[bay ?? 0] ?? 0;
  for (const [bay, drop] of allowed.entries()) {
    while (hull.length >= 2) {
      const [before, last] = [hull.at(-2) ?? 0, hull.at(-1) ?? 0];
      if ((at(last) - at(before)) * (bay - last) < (drop - at(last)) * (last - before)) break;
      hull.pop();
    }
    hull.push(bay);
  }
  return hull;
}

function alongString(allowed: readonly number[]): readonly number[] {
  const drops = [...allowed];
  const hull = touches(allowed);
  for (const [index, to] of hull.entries()) {
    const from = hull[index - 1];
    if (from === undefined) continue;
    const [first, last] = [allowed[from] ?? 0, allowed[to] ?? 0];
    const even = [first];
    for (const step of spreadEvenly(last - first, to - from)) even.push((even.at(-1) ?? 0) + step);
    const fits = even.every((drop, at) => drop <= (allowed[from + at] ?? 0));
    for (let bay = from; bay <= to; bay++) {
      const onString = Math.floor(first + ((last - first) * (bay - from)) / (to - from));
      drops[bay] = fits ? (even[bay - from] ?? 0) : onString;
    }
  }
  return drops;
}
