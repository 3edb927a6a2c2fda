import type { Leaf, Piece } from '../../layout/index.ts';
import type { FlatStock, Material } from '../../model/index.ts';
import { toInches } from '../../units/index.ts';

/** The longest and the shortest edge along the grain, averaged, less grooves; ft3. Cables are hardware. */
export function volumeOf(leaf: Leaf, { role, cut }: Piece): number {
  if (role === 'cable') return 0;
  const length = (toInches(cut.longPoint) + toInches(cut.shortPoint)) / 2;
  const section = role === 'channel' ? channelArea(leaf) : toInches(cut.width) * toInches(cut.thickness);
  const grooves = (cut.grooves ?? []).reduce((sum, { from, to = cut.longPoint, width, depth }) => {
    return sum + toInches(to - from) * toInches(width) * toInches(depth);
  }, 0);
  return (section * length - grooves) / 1_728;
}

/** Of the wall of its channels, square inches. */
function channelArea({ spec }: Leaf): number {
  const { value: mounting } = spec.infill.mounting;
  if (mounting.kind !== 'channels') return 0;
  const { width, thickness, wall } = mounting.channel.value;
  const [w, t, wide] = [width, thickness, wall].map(({ value }) => toInches(value)) as [
    number,
    number,
    number,
  ];
  return w * t - (w - wide) * (t - 2 * wide);
}

/** What is not said to be something else. */
export const isWood = (material: Material | undefined): boolean =>
  (material?.kind.value ?? 'wood') === 'wood';

/** What a piece of a leaf is made of. */
export function materialOf(leaf: Leaf, { role, cut }: Piece): Material | undefined {
  const { spec } = leaf;
  const { value: mounting } = spec.infill.mounting;
  if (role === 'channel') return mounting.kind === 'channels' ? mounting.channel.value.material : undefined;
  if (role === 'spacer') return spec.infill.pattern.repeat[0]?.value.material;
  const stocks: readonly (FlatStock | undefined)[] = [
    ...spec.infill.pattern.repeat.map(({ value }) => value),
    spec.frame.value,
    spec.brace?.value,
    spec.infill.cleat?.value,
  ];
  const found = stocks.find((stock) => stock?.name === cut.stock);
  return found?.material ?? (role === 'slat' ? undefined : spec.frame.value.material);
}
