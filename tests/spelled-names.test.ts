import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { spellName } from '../language/layout/fit/spell-name.ts';

it('quotes just those words of the language that its grammar takes for no names', () => {
  const grammar = readFileSync(new URL('../language/grammar/slat.langium', import.meta.url), 'utf8')
    .replace(/\/\/.*$/gm, '')
    .replace(/^(?:hidden )?terminal .*$/gm, '');
  const wordsOf = (text: string) =>
    new Set([...text.matchAll(/'([a-z][a-z-]*)'/g)].map((match) => match[1] ?? ''));
  const names = wordsOf(/^Name returns string:([^;]*);/m.exec(grammar)?.[1] ?? '');
  const words = wordsOf(grammar);
  expect(names.size).toBeGreaterThan(20);
  expect([...words].filter((word) => spellName(word) === word).sort()).toEqual([...names].sort());
});
