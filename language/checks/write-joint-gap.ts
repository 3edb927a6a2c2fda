import type { RunSpec } from '../model/index.ts';
import { spellLength, type Ticks } from '../units/index.ts';
import type { Fix } from './finding.ts';
import { appendTo, replaceAt } from './written-change.ts';

/** States how much is left between slats that meet over a post: in place of what is stated, or anew. */
export function writeJointGap({ slatJoints, origin, measure }: RunSpec, gap: Ticks): Fix {
  const length = spellLength(gap, measure);
  const text = `joint gap ${length}`;
  const stated = slatJoints?.gap?.origin;
  return {
    title: `Write \`${text}\``,
    changes: [stated ? replaceAt(stated, length) : appendTo(origin, text)],
  };
}
