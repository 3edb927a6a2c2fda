import { slatJointsOf } from '../figures/index.ts';
import { jointGapOf, type RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';

/** How boards of a course meet, in words; empty where every slat is one board. */
export function jointNote(run: RunLayout, measure: Measure): string {
  if (slatJointsOf(run).length === 0) return '';
  const gap = jointGapOf(run.spec);
  return gap === 0
    ? 'boards meet over posts'
    : `boards meet over posts, ${dimensionText(gap, measure)} apart`;
}
