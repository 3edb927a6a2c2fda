import type { RunSpec } from '../model/index.ts';
import { spellLength, type Ticks } from '../units/index.ts';
import type { Fix } from './finding.ts';

/** States how much is left between slats that meet over a post: in place of what is stated, or anew. */
export function writeJointGap({ slatJoints, origin, measure }: RunSpec, gap: Ticks): Fix {
  const length = spellLength(gap, measure);
  const text = `joint gap ${length}`;
  const stated = slatJoints?.gap?.origin;
  return {
    title: `Write \`${text}\``,
    changes: [
      stated
        ? { uri: stated.uri, path: stated.path, place: 'replace', text: length }
        : { uri: origin.uri, path: origin.path, place: 'append', text },
    ],
  };
}
