import type { RunSpec } from '../model/index.ts';

/** Whether posts stand in holes that are dug: all but those that are bolted to a deck. */
export function isDug({ deck }: RunSpec): boolean {
  return !deck || deck.hold.value === 'footing';
}
