import type { FlatStock } from '../../../model/index.ts';
import type { Ticks } from '../../../units/index.ts';

/** As much of a board as a fit reads. */
export function boardOf({ stock, width }: { stock: string; width: Ticks }): FlatStock {
  const origin = { uri: 'file:///screen.slat', path: `board ${stock}`, why: 'stated' } as const;
  return {
    kind: 'board',
    name: stock,
    origin,
    lengths: [],
    width: { value: width, origin },
    thickness: { value: width, origin },
  };
}
