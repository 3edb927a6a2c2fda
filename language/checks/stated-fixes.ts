import type { Problem } from '../model/index.ts';
import type { Fix } from './finding.ts';
import { replaceAt } from './written-change.ts';

/** Problems whose args name what to write instead, at the very place they are told. */
const REWRITTEN = new Set([
  'unit-missing',
  'length-unknown-unit',
  'length-spelling',
  'slat-too-thick',
  'groove-too-deep',
  'groove-in-tube',
  'split-upright',
]);

/** Problems told at a part of a statement that is written anew as a whole: the path of the statement. */
const REWRITES_ALL: ReadonlyMap<string, (path: string) => string> = new Map([
  ['bridge-impossible', (path: string) => path.replace(/\.bridge$/, '')],
]);

/** Ways out of a problem of the text or of what it asks for: what to write in its place. */
export function fixesOf({ code, origin, args }: Problem): readonly Fix[] {
  if (code === 'measured-elsewhere') return renumbered({ origin, args });
  // What is not stated stands nowhere to be rewritten.
  if (origin.why === 'default') return [];
  const path = REWRITES_ALL.get(code)?.(origin.path) ?? origin.path;
  return spellings(code, args).map((text, at) => ({
    title: `Write ${text}`,
    changes: [replaceAt({ ...origin, path }, text)],
    preferred: at === 0 && (args.hint ?? args.suggestion) === text,
  }));
}

function spellings(code: string, args: Problem['args']): readonly string[] {
  if (REWRITTEN.has(code)) {
    const hints = String(args.hints ?? '');
    return (hints === '' ? String(args.hint ?? '') : hints).split(' | ').filter((hint) => hint !== '');
  }
  if (code === 'racked-level-slats') return ['slope level top', 'slope in steps'];
  if (code === 'bridge-impossible') return [String(args.write ?? '')].filter((text) => text !== '');
  if (code === 'unknown-word') return [String(args.suggestion ?? '')].filter((word) => word !== '');
  return [];
}

/** The number that what was measured has now. */
function renumbered({ origin, args }: Pick<Problem, 'origin' | 'args'>): readonly Fix[] {
  const numbers = String(args.others ?? '')
    .split(', ')
    .filter((number) => number !== '');
  return numbers.map((text) => ({
    title: `It is ${args.what} ${text} now`,
    changes: [replaceAt({ ...origin, path: `${origin.path}.number` }, text)],
    preferred: numbers.length === 1,
  }));
}
