import type { Leaf, RunLayout } from '../layout/index.ts';

/** Leaves that are told of: of two that mirror each other, the active one speaks for both. */
export function toldLeaves(run: RunLayout): readonly Leaf[] {
  return run.leaves.filter(({ spec }) => !spec.half?.mirrors);
}
