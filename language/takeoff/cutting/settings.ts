import type { Packing, Pattern, Problem, Ripping, Segment } from './problem.ts';

/** The same for boards cut alike. */
export const wayOf = ({ stock, items, counts }: Pattern): string =>
  `${stock} ${items.join()} ${counts.join()}`;

/** Ways to cut a board, each once with all its boards. */
export function waysOf(packing: Packing): Packing {
  const ways = new Map<string, { pattern: Pattern; times: number }>();
  for (const { pattern, times } of packing) {
    const held = ways.get(wayOf(pattern));
    if (held) held.times += times;
    else ways.set(wayOf(pattern), { pattern, times });
  }
  return [...ways.values()];
}

/**
 * How often the stop of the saw is set, where boards cut alike are cut together: once for each length of each way to cut
 * a board. Of boards that are ripped, for each different piece of each way.
 */
export const settingsOf = (packing: Packing): number =>
  waysOf(packing).reduce((sum, { pattern }) => sum + pattern.items.length, 0);

/**
 * Settings of one way to cut a board that is ripped: lengths of its parts, the fence for each width ripped from a part,
 * and lengths that strips are crosscut to besides.
 */
function rippedSettings(
  segments: readonly Segment[],
  across: number | undefined,
  { along: lengths, widths }: Ripping,
): number {
  const [stops, fences] = [new Set<number>(), new Set<number>()];
  for (const { along, strips } of segments) {
    const whole = strips.length === 1 && widths[strips[0]?.width ?? 0] === across;
    if (!whole) stops.add(along);
    for (const { width, items } of strips) {
      if (!whole) fences.add(width);
      for (const item of items) stops.add(lengths[item] as number);
    }
  }
  return stops.size + fences.size;
}

/** Of boards that are ripped, those cut alike together. */
export function settingsOfRipped(
  boards: readonly { readonly stock: number; readonly segments: readonly Segment[] }[],
  { ripping }: { readonly ripping: Ripping },
): number {
  const ways = new Map<string, number>();
  for (const { stock, segments } of boards) {
    const key = JSON.stringify([stock, segments]);
    if (!ways.has(key))
      ways.set(key, rippedSettings(segments, ripping.across[ripping.acrossOf[stock] as number], ripping));
  }
  return [...ways.values()].reduce((sum, each) => sum + each, 0);
}

/** However boards are cut, the stop is set once for each length, and the fence once for each width that no board has. */
export function leastSettings({ sizes, ripping }: Problem): number {
  if (!ripping) return sizes.length;
  const narrow = ripping.widths.filter((width) => !ripping.across.includes(width));
  return new Set(ripping.along).size + narrow.length;
}
