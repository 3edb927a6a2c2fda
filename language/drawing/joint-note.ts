import { jointGapOf, type RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';

/** How boards of a course meet, in words; empty where every slat is one board. */
export function jointNote({ spec, pieces }: RunLayout, measure: Measure): string {
  const held = new Set<string>();
  for (const { role, gate, course, side, supports } of pieces) {
    if (role !== 'slat' || gate !== undefined || side === 'middle' || spec.infill.flip.upright) continue;
    for (const holder of supports) {
      const place = `${side} ${course} ${holder}`;
      if (held.has(place)) {
        const gap = jointGapOf(spec);
        return gap === 0
          ? 'boards meet over posts'
          : `boards meet over posts, ${dimensionText(gap, measure)} apart`;
      }
      held.add(place);
    }
  }
  return '';
}
