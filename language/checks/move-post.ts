import type { WallGap } from '../figures/index.ts';
import type { WallProfile } from '../model/index.ts';
import { type Measure, spellLength, type Ticks } from '../units/index.ts';
import type { Fix } from './finding.ts';
import { endPost } from './wall-words.ts';
import { replaceAt } from './written-change.ts';

/** The wall's statement with another distance off the end post; none where nothing would be left of it. */
export function movePost({ face: { side, spec } }: WallGap, off: Ticks, measure: Measure): readonly Fix[] {
  if (off <= 0 || off === spec.off.value) return [];
  const text = spellLength(off, measure);
  const title = `Set the ${endPost(side)} post ${text} off the wall`;
  if (spec.off.origin.why === 'stated') return [{ title, changes: [replaceAt(spec.off.origin, text)] }];
  const begins = side === 'start' ? 'begins' : 'ends';
  const whole = [`${begins} at wall`, `${text} off`, ...profileOf(spec.profile, measure)].join(', ');
  return [{ title, changes: [replaceAt({ ...spec.off.origin, path: spec.origin.path }, whole)] }];
}

function profileOf(profile: WallProfile | undefined, measure: Measure): readonly string[] {
  if (!profile) return [];
  const directed = (toward: Ticks) =>
    `${toward < 0 ? 'away' : 'toward'} ${spellLength(Math.abs(toward), measure)}`;
  if (profile.kind === 'leans')
    return [`leans ${directed(profile.by)} in ${spellLength(profile.over, measure)}`];
  return profile.points.map(({ height, toward }) => `at ${spellLength(height, measure)} ${directed(toward)}`);
}
