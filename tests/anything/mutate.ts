/** Numbers from 0 to 1, and choices among things. The same for the same seed. */
export interface Chance {
  below(count: number): number;
  pick<T>(of: readonly T[]): T;
}

/** A linear congruential generator; constants of Numerical Recipes, "Random Numbers". From memory. */
export function chance(seed: number): Chance {
  let state = (seed * 2_654_435_761) >>> 0;
  const below = (count: number) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 4_294_967_296) * count);
  };
  for (let i = 0; i < 4; i++) below(2);
  return { below, pick: (of) => of[below(of.length)] as (typeof of)[number] };
}

type Mutation = (text: string, by: Chance, others: readonly string[]) => string;

const NUMBERS = [
  '0',
  '0"',
  '0 mm',
  '1/0"',
  '0/0"',
  '1/128"',
  '0.0000001"',
  '0.1 mm',
  '1"',
  "999999999'",
  '999999999 m',
  '99999999999999999999999999999999 mm',
  '1000 m',
  '999 m',
  "3281'",
  '1.5',
  '7',
  '199',
  '1999',
  '20000',
  '1e309"',
  '-4"',
  '7\' 14"',
  '10 - 1/2"',
  '5\u00BD\u2033',
  '1 NaN',
];

const SCRAPS = [
  '{',
  '}',
  '(',
  ')',
  ',',
  ';',
  '"',
  "'",
  '//',
  '/*',
  '*/',
  '=',
  '%',
  '-',
  '\r',
  '\n',
  '\t',
  '\0',
  '\u2028',
  '\u00A0',
  '\uFEFF',
  '\uD83D',
  '\u{1F333}',
  '\u202E',
  '<script>',
  '__proto__',
  'constructor',
  'toString',
  ' else ',
  ' to ',
  ' of ',
  ' upright',
  ' half',
  ' at most ',
];

const LINES = [
  'gap 0"',
  'gap 0 mm',
  'edge gap 0"',
  "edge gap 900'",
  'end gap 40"',
  'fit gaps 0" to 999"',
  'fit change cedar-6 to 1/64"',
  'fit trim at top',
  'fit rip last not under 0"',
  'flip upright, upright, over, end for end, top edge to latch',
  'posts fir-4x4, 1999 bays',
  'posts fir-4x4, at most 1/64" on center',
  'posts fir-4x4, at 0", 0", 0"',
  'height 0"',
  "height 3000'",
  'bottom 3000\' to 1"',
  'repeat 200 of cedar-6',
  'repeat 999999999 of cedar-6, 0 of cedar-4',
  'pattern a(x = x) { repeat x; gap x }',
  'rip loop from loop to 1"',
  'use "bicycle-court.slat"',
  'use "../../../../etc/passwd"',
  'use "library"',
  "run a { length 900'; posts fir-4x4, at most 4\" clear; height 100'; fill even }",
  'gate g in court { opening 900\' from 0" }',
  'job { measure mm to 0 mm; gap at most 0"; see-through at most 0 % }',
  'measure m to 1 m',
  'measure inches to 1/128"',
];

const mutations: readonly Mutation[] = [
  (text, by) => cut(text, by.below(text.length), 1),
  (text, by) => cut(text, by.below(text.length), 1 + by.below(40)),
  (text, by) => put(text, by.below(text.length), by.pick(SCRAPS)),
  (text, by) => put(text, by.below(text.length), String.fromCharCode(32 + by.below(95))),
  (text, by) => {
    const at = by.below(text.length);
    return put(text, at, text.slice(at, at + 1 + by.below(30)));
  },
  (text, by) => {
    const at = by.below(Math.max(1, text.length - 1));
    return text.slice(0, at) + (text[at + 1] ?? '') + (text[at] ?? '') + text.slice(at + 2);
  },
  (text, by) => inLines(text, (lines) => lines.splice(by.below(lines.length), 1)),
  (text, by) =>
    inLines(text, (lines) => {
      const [from, to] = [by.below(lines.length), by.below(lines.length)];
      lines.splice(to, 0, lines[from] ?? '');
    }),
  (text, by) =>
    inLines(text, (lines) => {
      const [from, to] = [by.below(lines.length), by.below(lines.length)];
      [lines[from], lines[to]] = [lines[to] ?? '', lines[from] ?? ''];
    }),
  (text, by) => inLines(text, (lines) => lines.splice(by.below(lines.length), 0, by.pick(LINES))),
  (text, by, others) =>
    inLines(text, (lines) => {
      const foreign = by.pick(others).split('\n');
      const at = by.below(foreign.length);
      lines.splice(by.below(lines.length), 0, ...foreign.slice(at, at + 1 + by.below(12)));
    }),
  withNumber,
  withNumber,
  withNumber,
  (text, by) => {
    const words = [...text.matchAll(/[A-Za-z][\w-]*/g)];
    const [one, other] = [by.pick(words), by.pick(words)];
    return one && other ? swap(text, one.index, one[0].length, other[0]) : text;
  },
  (text, by) =>
    put(text, by.below(text.length), by.pick(['{', '(', '"', '/*', ', ', '; ']).repeat(1 + by.below(3000))),
];

/** A text with one to four things wrong with it, by its seed. */
export function mutate(text: string, seed: number, others: readonly string[]): string {
  const by = chance(seed);
  let changed = text;
  for (let left = 1 + by.below(4); left > 0; left--) changed = by.pick(mutations)(changed, by, others);
  return changed;
}

function withNumber(text: string, by: Chance): string {
  const numbers = [...text.matchAll(/\d[\d./-]*(?:\s?(?:mm|m|%|'|"))?/g)];
  if (numbers.length === 0) return text;
  const old = by.pick(numbers);
  return swap(text, old.index, old[0].length, by.pick(NUMBERS));
}

const cut = (text: string, at: number, length: number) => text.slice(0, at) + text.slice(at + length);
const put = (text: string, at: number, added: string) => text.slice(0, at) + added + text.slice(at);
const swap = (text: string, at: number, length: number, by: string) => put(cut(text, at, length), at, by);

function inLines(text: string, change: (lines: string[]) => void): string {
  const lines = text.split('\n');
  change(lines);
  return lines.join('\n');
}
