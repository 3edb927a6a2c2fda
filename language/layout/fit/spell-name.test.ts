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
