import { expect, it } from 'vitest';
import { codeOf } from './finding-code.ts';

it('reads the code from an address or a file name', () => {
  expect(codeOf('/gap-too-wide.md')).toBe('gap-too-wide');
  expect(codeOf('v2-page.md')).toBe('v2-page');
});

it.each(['/../secret.md', '/a/b.md', '', '/', '/%2e%2e', '/Gap.md', '/a-.md'])('refuses %s', (path) => {
  expect(codeOf(path)).toBeUndefined();
});
