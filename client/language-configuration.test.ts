import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

const configuration = JSON.parse(
  readFileSync(new URL('./language-configuration.json', import.meta.url), 'utf8'),
);

/** The word at the place marked with |, as the editor finds it: a match of the pattern on the line that spans it. */
function wordAt(marked: string): string | undefined {
  const at = marked.indexOf('|');
  const line = marked.replace('|', '');
  const pattern = new RegExp(configuration.wordPattern, 'gu');
  const match = [...line.matchAll(pattern)].find(
    ({ index, 0: text }) => index <= at && at <= index + text.length,
  );
  return match?.[0];
}

it.each([
  [`height 12|' 3-1/2" above`, `12' 3-1/2"`],
  [`height 12' 3-|1/2" above`, `12' 3-1/2"`],
  [`height 7'|6 1/2"`, `7'6 1/2"`],
  [`gap 1|/2"`, `1/2"`],
  [`lengths 8', 1|0', 12'`, "10'"],
  ['height 17|50 mm    bottom', '1750 mm'],
  ['length 7|.2 m over', '7.2 m'],
  ['4 b|ays', 'bays'],
  ['see-|through at', 'see-through'],
  ['fill even(slat = ced|ar-4)', 'cedar-4'],
  ['repeat l|ärche-90', 'lärche-90'],
])('takes %s for one word', (marked, word) => {
  expect(wordAt(marked)).toBe(word);
});

it('closes no quote by itself: it is a foot or an inch more often than not', () => {
  const opens = configuration.autoClosingPairs.map(({ open }: { open: string }) => open);
  expect(opens).not.toContain("'");
  expect(opens).not.toContain('"');
});

it('holds patterns that compile', () => {
  const { indentationRules, onEnterRules, folding } = configuration;
  const patterns = [
    ...Object.values(indentationRules),
    ...Object.values(folding.markers),
    ...onEnterRules.flatMap((rule: Record<string, unknown>) => [rule.beforeText, rule.afterText]),
  ];
  for (const pattern of patterns) expect(() => new RegExp(String(pattern))).not.toThrow();
});
