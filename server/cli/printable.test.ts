import { expect, it } from 'vitest';
import { printable } from './printable.ts';

it('shows control characters instead of sending them to the terminal', () => {
  expect(printable('run \u001b[31mred\u0007')).toBe('run \\u001b[31mred\\u0007');
  expect(printable('7\u2019 6\u00bd\u201d larch')).toBe('7\u2019 6\u00bd\u201d larch');
});
