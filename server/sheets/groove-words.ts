import type { Groove, Piece } from '../../language/layout/index.ts';
import type { Ticks } from '../../language/units/index.ts';

/** Where a groove is, how wide and deep, and from where along the piece: of an upright one from its foot. */
export function grooveOf(
  role: Piece['role'],
  { side, from, to, width, depth }: Groove,
  length: (ticks: Ticks) => string,
): string {
  const sides = role === 'rail' ? { start: 'top', end: 'bottom' } : { start: 'left', end: 'right' };
  const until = to === undefined ? 'out at the end' : `to ${length(to)}`;
  return `${sides[side]} ${length(width)} wide, ${length(depth)} deep, from ${length(from)} ${until}`;
}
