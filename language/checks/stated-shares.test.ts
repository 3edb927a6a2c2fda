import { expect, it } from 'vitest';
import { checked } from './testing/checked.ts';

it.each([
  ['quote { overhead 150 % }', 'overhead'],
  ['job "Bank" { spares 150 % }', 'spares'],
  ['job "Bank" { cut for fewest settings, up to 150 % more }', 'share more'],
])('says of a share in %s once that it is percent', async (text, what) => {
  const { messages } = await checked(text, 'impossible-size');
  expect(messages).toEqual([`The ${what} is 150 %. Write a share from 0 to 100 %.`]);
});
