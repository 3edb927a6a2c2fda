import { expect, it } from 'vitest';
import { openTexts } from '../testing/index.ts';

const TEXT = `board wide { width 7"; thickness 1" }
// one
// two
// three
run r {
  height 6'
  fill q
}
`;

it('folds blocks and comment lines, and no single statements', async () => {
  const { slat, document } = await openTexts({ 'a.slat': TEXT });
  const found = await slat.lsp.FoldingRangeProvider?.getFoldingRanges(document, {
    textDocument: { uri: document.uri.toString() },
  });
  expect(found?.map(({ startLine, endLine, kind }) => [startLine, endLine, kind])).toEqual([
    [4, 6, undefined],
    [1, 3, 'comment'],
  ]);
});
