import type { ChoiceKind } from '../layout.ts';
import type { Draft } from './draft.ts';

/** The order in which good builders try them (common practice). */
export const TRIED: readonly ChoiceKind[] = [
  'as-drawn',
  'move-ends',
  'gaps',
  'short-repeat',
  'rip-last',
  'change-width',
  'trim',
];

/**
 * Sorts the better choice first: by remedy, then by what the eye sees, which is the change of the
 * gaps and then what is ripped off; then the one that moves less, keeps the top whole, has more slats.
 */
export function byRank(a: Draft, b: Draft): number {
  return (
    TRIED.indexOf(a.kind) - TRIED.indexOf(b.kind) ||
    a.gapChange - b.gapChange ||
    a.taken - b.taken ||
    a.moved - b.moved ||
    Number(a.edge === 'top') - Number(b.edge === 'top') ||
    b.count - a.count
  );
}
