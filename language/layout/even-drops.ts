import { spreadEvenly } from '../units/index.ts';

/**
 * Whole pitches that each bay is lower than the first line, given how many the ground allows each. Where the ground
 * only falls, or only rises, the steps are spread over the transitions between bays as evenly as it allows: along a
 * string drawn tight over what is allowed, and evenly along each straight stretch of it; steps with bays on one line
 * between them stand so that those lines are as equal in bays as may be. Else each bay goes as low as it may.
 */
export function evenDrops(allowed: readonly number[]): readonly number[] {
  const falls = allowed.every((drop, bay) => bay === 0 || drop >= (allowed[bay - 1] ?? 0));
  if (falls) return alike(alongString(allowed), allowed);
  const rises = allowed.every((drop, bay) => bay === 0 || drop <= (allowed[bay - 1] ?? 0));
  if (!rises) return allowed;
  const back = allowed.toReversed();
  return alike(alongString(back), back).toReversed();
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

/** The same steps, each moved by single bays while that makes the lines before and after it more alike in length. */
function alike(drops: readonly number[], allowed: readonly number[]): readonly number[] {
  const moved = [...drops];
  // Bays at which a line begins. A move makes the sum of the squares of lengths smaller, so this ends.
  const starts = moved.flatMap((drop, bay) => (bay === 0 || drop !== moved[bay - 1] ? [bay] : []));
  for (let changed = true; changed; ) {
    changed = false;
    for (let at = 1; at < starts.length; at++) {
      const [before = 0, here = 0, after = moved.length] = starts.slice(at - 1, at + 2);
      const longer = here - before - (after - here);
      if (Math.abs(longer) < 2) continue;
      const low = moved[here] ?? 0;
      if (longer > 0 && low > (allowed[here - 1] ?? 0)) continue;
      // The last bay of the line above goes down to this one, or the first of this one up to it.
      moved[longer > 0 ? here - 1 : here] = longer > 0 ? low : (moved[here - 1] ?? 0);
      starts[at] = longer > 0 ? here - 1 : here + 1;
      changed = true;
    }
  }
  return moved;
}
