import { segmentOf } from './fill-by-tables.ts';
import type { CutPart, Pattern, Problem, Ripping, Segment } from './problem.ts';
import { searchRips } from './rip-search.ts';
import { ripTables } from './rip-tables.ts';
import type { TakeLabels } from './take-labels.ts';

/** Of looking for a shorter way to cut the same pieces from a board. */
const STEPS = 3_000;

/** Room along that segments take. */
export const alongOf = (segments: readonly Segment[]): number =>
  segments.reduce((sum, { along }) => sum + along, 0);

/** One way to cut a pattern's pieces, and no others, that leaves as long an offcut as is found. */
export function segmentsFor(
  pattern: Pattern,
  { ripping, sizes }: Problem & { readonly ripping: Ripping },
  thorough: boolean,
): readonly Segment[] | undefined {
  const counts = new Int32Array(sizes.length);
  for (const [k, item] of pattern.items.entries()) counts[item] = pattern.counts[k] as number;
  let best = pattern.segments && trimmed(pattern.segments, counts, ripping);
  if (best && !thorough) return best;
  const values = ripping.along.map(
    (along, item) => along * (ripping.widths[ripping.widthOf[item] as number] as number),
  );
  const least = values.reduce((sum, value, item) => sum + value * (counts[item] as number), 0);
  const tables = ripTables(ripping, counts, values);
  for (;;) {
    const room = best ? alongOf(best) - 1 : (ripping.room[pattern.stock] as number);
    if (room < 1) break;
    let found: Segment[] | undefined;
    const wanted = {
      stock: pattern.stock,
      bounds: counts,
      values,
      tables,
      least,
      orMore: true,
      steps: STEPS,
      room,
    };
    searchRips(ripping, wanted, (_, __, segments) => {
      found = segments();
      return 'stop';
    });
    if (!found) break;
    best = found;
  }
  return best;
}

/** Without the pieces that are more than asked for. */
function trimmed(segments: readonly Segment[], counts: Int32Array, ripping: Ripping): Segment[] {
  const left = counts.slice();
  return segments
    .map(({ strips }) =>
      strips
        .map(({ width, items, counts: many }) => {
          const kept = items.map((item, k) => {
            const taken = Math.min(left[item] as number, many[k] as number);
            left[item] = (left[item] as number) - taken;
            return taken;
          });
          const some = [...kept.keys()].filter((k) => (kept[k] as number) > 0);
          return {
            width,
            items: some.map((k) => items[k] as number),
            counts: some.map((k) => kept[k] as number),
          };
        })
        .filter(({ items }) => items.length > 0),
    )
    .filter((strips) => strips.length > 0)
    .map((strips) => segmentOf(strips, ripping));
}

/**
 * Parts of a board in the unit of the instance, longest first, with the labels of their pieces, which are taken from those
 * left of each size. Pieces as wide as the board are parts of their own.
 */
export function partsOf(
  segments: readonly Segment[],
  stock: number,
  take: TakeLabels,
  { ripping, unit }: Problem & { readonly ripping: Ripping },
): CutPart[] {
  const across = ripping.across[ripping.acrossOf[stock] as number];
  const lengthOf = (along: number) => along * unit - ripping.kerf;
  return segments
    .flatMap(({ along, strips }): CutPart[] => {
      const [first] = strips;
      if (first && strips.length === 1 && ripping.widths[first.width] === across)
        return first.items.flatMap((item, k) =>
          take(item, first.counts[k] as number).map((label) => ({
            length: lengthOf(ripping.along[item] as number),
            strips: [{ width: ripping.shown[first.width] as number, pieces: [label], offcut: 0 }],
          })),
        );
      return [
        {
          length: lengthOf(along),
          strips: strips.map(({ width, items, counts }) => ({
            width: ripping.shown[width] as number,
            pieces: items.flatMap((item, k) => take(item, counts[k] as number)),
            offcut: Math.max(
              0,
              (along - segmentOf([{ width, items, counts }], ripping).along) * unit - ripping.kerf,
            ),
          })),
        },
      ];
    })
    .sort((a, b) => b.length - a.length);
}
