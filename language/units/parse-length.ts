import type { Explain } from './explain.ts';
import { type LengthProblem, type ParsedLength, type RefusedLength, refuse } from './parsed-length.ts';
import { plainSpelling, readLength } from './read-length.ts';
import { explainComma } from './refused-comma.ts';
import { explainFractionOfFoot, explainMissingInchMark } from './refused-feet.ts';
import { explainHyphenPair, explainSpacedMinus } from './refused-hyphen.ts';
import { explainMetricFraction, explainOtherUnit, explainUnitWord } from './refused-unit.ts';

/** Longer texts are refused unread: no length needs so many digits, and none may cost time. */
const MOST_CHARACTERS = 160;

/**
 * Reads a stated length. Never throws. Decimals and fractions are read exactly and rounded once to a whole
 * tick; anything but the accepted spellings is refused with what is wrong and, where it can be told, the fix.
 */
export function parseLength(text: string): ParsedLength {
  if (text.length > MOST_CHARACTERS)
    return refuse(/^\d+$/.test(text.slice(0, 40)) ? 'too-large' : 'not-a-length');
  const plain = plainSpelling(text);
  return readLength(plain) ?? explain(plain, 0);
}

function explain(plain: string, depth: number): RefusedLength {
  if (!/^\.?\d/.test(plain)) return refuse('not-a-length');
  const through = (problem: LengthProblem, nearer: string): RefusedLength => {
    // Each step removes one fault, so a spelling that needs many is no length at all.
    if (nearer === plain || depth >= 5) return refuse('not-a-length');
    const read = readLength(nearer) ?? explain(nearer, depth + 1);
    if (read.ok) return refuse(problem, [nearer]);
    if (read.problem === 'too-large' || read.problem === 'zero-denominator') return read;
    const fixes = read.hints ?? (read.hint === undefined ? [] : [read.hint]);
    return refuse(problem, fixes);
  };
  for (const each of EXPLANATIONS) {
    const refused = each(plain, through);
    if (refused) return refused;
  }
  return refuse('not-a-length');
}

const explainBareNumber: Explain = (t, through) => {
  if (/^(?:\d+[ -])?\d+\/\d+$/.test(t)) return through('bare-number', `${t}"`);
  if (!/^\d+(?:\.\d+)?$/.test(t)) return undefined;
  // Nothing says which unit was meant, so no candidate stands before the others.
  return {
    ok: false,
    problem: 'bare-number',
    hints: [`${t}"`, `${t}'`, `${t} mm`].filter((each) => readLength(each)?.ok),
  };
};

const explainLeadingPoint: Explain = (t, through) =>
  t.startsWith('.') ? through('not-a-length', `0${t}`) : undefined;

const VULGAR: Record<string, string> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅓': '1/3',
  '⅔': '2/3',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Fractions in one character, and dashes that an editor made of a hyphen. */
const explainTypographic: Explain = (t, through) => {
  const nearer = t
    .replace(/[\u2010-\u2015\u2212]/g, '-')
    .replace(
      /(\d?) ?([¼½¾⅓⅔⅛⅜⅝⅞])/g,
      (_, digit: string, sign: string) => (digit ? `${digit}-` : '') + VULGAR[sign],
    );
  return nearer === t ? undefined : through(/ -|- /.test(nearer) ? 'spaced-minus' : 'not-a-length', nearer);
};

/** A space before a mark or a point after the last digit: `6 "`, `7."`. */
const explainStray: Explain = (t, through) => {
  const nearer = t.replace(/ (?=['"])/g, '').replace(/\.(?!\d)/g, '');
  return nearer === t ? undefined : through('not-a-length', nearer);
};

const explainUnknownUnit: Explain = (t) =>
  /^\d[\d./' -]*[\p{L}_]/u.test(t) ? { ok: false, problem: 'unknown-unit' } : undefined;

// From faults inside numbers to faults of units to what is left.
const EXPLANATIONS: readonly Explain[] = [
  explainLeadingPoint,
  explainBareNumber,
  explainComma,
  explainTypographic,
  explainSpacedMinus,
  explainMetricFraction,
  explainUnitWord,
  explainOtherUnit,
  explainMissingInchMark,
  explainFractionOfFoot,
  explainHyphenPair,
  explainStray,
  explainUnknownUnit,
];
