import { expect } from 'vitest';
import { examples } from '../jobs/index.ts';
import { mutate } from './mutate.ts';
import { createTypist, LONGEST } from './put-through.ts';

/** Mutations in each of the files that share them out; together ten thousand. */
export const EACH = 2500;

/** Types seeded mutations of the examples in turn; fails with the first texts that go wrong. */
export async function typeMutations(first: number): Promise<void> {
  const others = examples.map(({ text }) => text);
  const typists = examples.map(({ path, text }) => ({ text, typist: createTypist(path) }));
  for (const { typist, text } of typists) {
    await typist.type(text);
    typist.forget();
  }
  const wrong: string[] = [];
  let told = 0;
  for (let seed = first; seed < first + EACH; seed++) {
    const { typist, text } = typists[seed % typists.length] as (typeof typists)[number];
    try {
      const { findings } = await typist.type(mutate(text, seed, others));
      if (findings.length > 0) told++;
    } catch (error) {
      wrong.push(`mutation ${seed}: ${error instanceof Error ? error.message : String(error)}`);
      if (wrong.length === 3) break;
    }
  }
  const slowest = typists
    .map(({ typist }) => typist.slowest)
    .sort((a, b) => b.milliseconds - a.milliseconds)[0];
  console.info(`slowest of mutations ${first} to ${first + EACH - 1}: ${slowest?.milliseconds} ms`);
  expect(wrong.join('\n\n')).toBe('');
  expect(slowest?.milliseconds).toBeLessThan(LONGEST);
  // Were the texts not changed, or not read, nothing would be told.
  expect(told).toBeGreaterThan(EACH / 2);
}
