/** Adds printed dimensions up, as a reader with a tape would: for tests. */
import { type Measure, parseLength, type Ticks } from '../../units/index.ts';
import type { Chain } from '../chains.ts';
import { bareUnit } from '../dimension-text.ts';

/** What a printed dimension says, read back as a reader would. */
function read(text: string, measure: Measure): Ticks {
  const unit = bareUnit(measure);
  const parsed = parseLength(unit === '' ? text : `${text} ${unit}`);
  if (!parsed.ok) throw new Error(`not a length: ${text}`);
  return parsed.ticks;
}

/** Chains whose printed values do not add up to those of their parents over the same stretch. */
export function unequalChains(chains: readonly Chain[], measure: Measure): string[] {
  const byKey = new Map(chains.map((one) => [one.key, one]));
  return chains.flatMap((one) => {
    if (one.parent === undefined) return [];
    const parent = byKey.get(one.parent);
    const first = parent?.at.indexOf(one.at[0] as Ticks) ?? -1;
    const last = parent?.at.indexOf(one.at[one.at.length - 1] as Ticks) ?? -1;
    if (!parent || first < 0 || last <= first) return [`${one.key} does not fit in ${one.parent}`];
    const sum = (texts: readonly string[]) => texts.reduce((total, text) => total + read(text, measure), 0);
    const own = sum(one.texts);
    const whole = sum(parent.texts.slice(first, last));
    return own === whole ? [] : [`${one.key}: ${own} of ${whole}`];
  });
}
