import type { Explain } from './explain.ts';
import { refuse } from './parsed-length.ts';
import { readLength } from './read-length.ts';
import { spellTicks } from './spell-ticks.ts';

/**
 * A hyphen with a space beside it. `7' - 6"` is 7' 6" to one reader and 6' 6" to the next, and a wrong guess is
 * a wrong cut, so neither is taken; both are offered.
 */
export const explainSpacedMinus: Explain = (t) => {
  if (!/ -|- /.test(t)) return undefined;
  const joined = t.replace(/ ?- ?/g, '-').replace(/'-/g, "' ");
  const fixes = readLength(joined)?.ok ? [joined] : hyphenPair(t);
  return refuse('spaced-minus', [...fixes, ...difference(t)]);
};

/** A hyphen between two numbers without a mark at the first: `6-8"`, `600-800 mm`. */
export const explainHyphenPair: Explain = (t) => {
  const fixes = hyphenPair(t);
  return fixes.length > 0 ? refuse('not-a-length', fixes) : undefined;
};

function hyphenPair(t: string): string[] {
  const found = /^(\d+(?:\.\d+)?) ?- ?(\d[\d./ -]*?)( ?[a-z]+|['"])$/.exec(t);
  if (!found) return [];
  const [, first = '', second = '', unit = ''] = found;
  const fixes: string[] = [];
  const compound = `${first}' ${second}"`;
  if (unit === '"' && readLength(compound)?.ok) fixes.push(compound);
  const low = readLength(first + unit);
  const high = readLength(second + unit);
  if (low?.ok && high?.ok && low.ticks < high.ticks) fixes.push(`${first}${unit} to ${second}${unit}`);
  return fixes;
}

/** What is left when the part after the spaced hyphen is taken away, if anything. */
function difference(t: string): string[] {
  const found = /^(.+?)(?: - ?|- )(.+)$/.exec(t);
  if (!found) return [];
  const [, left = '', right = ''] = found;
  const unit = /(?: ?[a-z]+|['"])$/.exec(right)?.[0] ?? '';
  const from = readLength(left) ?? readLength(left + unit);
  const less = readLength(right);
  if (!from?.ok || !less?.ok || from.ticks <= less.ticks) return [];
  const metric = unit.trim();
  const shown = metric === 'mm' || metric === 'cm' || metric === 'm' ? metric : undefined;
  return [spellTicks(from.ticks - less.ticks, shown ?? (t.includes("'") ? 'feet' : 'inches'))];
}
