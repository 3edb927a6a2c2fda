import { expect, it } from 'vitest';
import { checked, SOUND } from './testing/checked.ts';

it('finds nothing in a screen in which nothing is wrong', async () => {
  const { messages, open } = await checked(SOUND);
  expect(messages).toEqual([]);
  expect(open.findings).toEqual([]);
  expect(open.run().pieces.length).toBeGreaterThan(24);
});
