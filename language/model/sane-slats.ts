import { MOST_SLATS } from './bounds.ts';
import { facesOf } from './faces.ts';
import type { InfillSpec, Origin } from './job.ts';
import { type Reader, tell } from './reader.ts';

/**
 * Whether an infill comes to a number of slats one can build; told when it does not. An estimate from
 * the mean pitch: the slats are laid out, and counted, later.
 *
 * @param space in the direction the pattern reads, of one panel
 * @param panels how many there are alike
 */
export function hasSaneSlats(
  reader: Reader,
  { pattern, mounting }: Pick<InfillSpec, 'pattern' | 'mounting'>,
  space: number,
  panels: number,
  at: Origin,
): boolean {
  const { repeat, gap } = pattern;
  const widths = repeat.reduce((sum, { value }) => sum + value.width.value, 0);
  const pitch = widths / repeat.length + gap.value;
  const slats = Math.ceil((Math.max(0, space) / pitch) * panels * (facesOf(mounting.value).length || 1));
  // In pockets each brings a spacer at either end, which count as much.
  const { kind } = mounting.value;
  const most = kind === 'grooves' || kind === 'channels' ? Math.floor(MOST_SLATS / 3) : MOST_SLATS;
  if (slats <= most) return true;
  const bound = { reason: 'too-many' as const, least: 1, most };
  tell(reader, 'absurd-count', at, { what: 'slats', count: String(slats), ...bound });
  return false;
}
