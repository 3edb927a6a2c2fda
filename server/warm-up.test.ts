import { expect, it } from 'vitest';
import { openTexts } from './testing/index.ts';
import { SAMPLE } from './warm-up.ts';

it('has a sample that goes through every stage', async () => {
  const { shared, document } = await openTexts({ 'sample.slat': SAMPLE });
  const kept = shared.work.Keeper.of(document.uri.toString());
  expect(document.diagnostics?.filter(({ severity }) => severity === 1)).toEqual([]);
  const roles = new Set(kept?.runs.flatMap((run) => run.pieces.map(({ role }) => role)));
  expect([...roles].sort()).toEqual(['brace', 'cleat', 'post', 'rail', 'slat', 'stile']);
});
