import { globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';

// A cut and its solid come from one constructor, so that they cannot disagree.
it('builds solids in makePiece alone', () => {
  const builders = globSync('language/layout/**/*.ts')
    .filter((file) => !file.endsWith('.test.ts'))
    .filter((file) => /\bvertices:\s*\[/.test(readFileSync(file, 'utf8')));
  expect(builders).toEqual(['language/layout/make-piece.ts']);
});
