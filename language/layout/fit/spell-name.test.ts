import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { spellName } from './spell-name.ts';

it('quotes a name only where it needs it', () => {
  expect(['board-6', 'top', 'trim', 'Lärche'].map(spellName)).toEqual(['board-6', 'top', 'trim', 'Lärche']);
  expect(['1x6', 'wide board', 'half', 'see-through', ''].map(spellName)).toEqual([
    '"1x6"',
    '"wide board"',
    '"half"',
    '"see-through"',
    '""',
  ]);
  expect(spellName('5" board')).toBe(`'5" board'`);
  expect(spellName(`5" builder's`)).toBe(`\u201C5" builder's\u201D`);
});

it('quotes every word of the language that may not be a name', () => {
  const grammar = readFileSync(new URL('../../grammar/slat.langium', import.meta.url), 'utf8').replace(
    /\/\/.*$/gm,
    '',
  );
  const names = /^Name returns string:([^;]*);/m.exec(grammar)?.[1] ?? '';
  const words = (text: string) => [...text.matchAll(/'([a-z][a-z-]*)'/g)].map(([, word = '']) => word);
  const mayBeNames = new Set(words(names));
  const reserved = [...new Set(words(grammar.replace(/^terminal .*$|^hidden .*$/gm, '')))].filter(
    (word) => !mayBeNames.has(word),
  );
  expect(reserved.length).toBeGreaterThan(50);
  expect(reserved.filter((word) => spellName(word) === word)).toEqual([]);
});
