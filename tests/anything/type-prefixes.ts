import { expect } from 'vitest';
import { createTypist, LONGEST } from './put-through.ts';

/** Types a file from its first character to its last; fails with the first prefixes that go wrong. */
export async function typePrefixes(path: string, text: string): Promise<void> {
  const typist = createTypist(path);
  await typist.type(text);
  typist.forget();
  const wrong: string[] = [];
  let told = 0;
  for (let length = 0; length < text.length && wrong.length < 3; length++) {
    try {
      const { findings, views } = await typist.type(text.slice(0, length));
      if (findings.length > 0) told++;
      else if (length > 0 && views.length === 0 && /^run /m.test(text.slice(0, length)))
        throw new Error('neither a finding nor a picture');
    } catch (error) {
      wrong.push(`first ${length}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  expect(wrong.join('\n\n')).toBe('');
  const { milliseconds } = typist.slowest;
  console.info(`slowest prefix of ${path}: ${milliseconds} ms`);
  expect(milliseconds).toBeLessThan(LONGEST);
  // Most of what is half typed is wrong somehow.
  expect(told).toBeGreaterThan(text.length / 10);
}
