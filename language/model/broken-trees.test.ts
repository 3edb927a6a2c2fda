import { expect, it } from 'vitest';
import { buildJob } from './index.ts';
import { JOB_URI, jobOf, parse, RUN, runOf, STOCK } from './testing/job-of.ts';

const WHOLE = `use "lib.slat"
job "Site" { measure inches to 1/16"; see-through at most 20 %; gap at most 5/8" }
${STOCK}
run bank { seen from yard; ${RUN.replaceAll('\n', '; ')} bottom 2" to 4"; fit gaps 3/8" to 5/8", else rip last not under 2" }
gate orchard in bank { opening 42" from 7'; hinges on right; flip upright, top edge to hinges; fill beat(slat = strip) }
`;

const LIBRARY = { 'lib.slat': 'material oak' };

it('reads every beginning of a file, whatever it breaks off in', async () => {
  for (let end = 0; end <= WHOLE.length; end += 7) expectSound(await jobOf(WHOLE.slice(0, end), LIBRARY));
  expect(runOf(await jobOf(WHOLE, LIBRARY)).gates).toHaveLength(1);
});

it('reads a file with any word left out or written twice', async () => {
  const words = WHOLE.split(/(?<=\s)/);
  for (let n = 0; n < words.length; n++) {
    const word = n % 2 === 0 ? [] : [words[n] ?? '', words[n] ?? ''];
    expectSound(await jobOf(words.toSpliced(n, 1, ...word).join('')));
  }
});

it('reads a tree that lacks any one property', async () => {
  const { root, context } = await parse(WHOLE, LIBRARY);
  const whole = buildJob(root, context);
  let tried = 0;
  const strip = (node: Record<string, unknown>) => {
    for (const [property, value] of Object.entries(node)) {
      if (property.startsWith('$')) continue;
      node[property] = undefined;
      expectSound(buildJob(root, context));
      tried++;
      node[property] = value;
      for (const child of Array.isArray(value) ? value : [value])
        if (typeof child === 'object' && child !== null && '$type' in child) strip(child);
    }
  };
  strip(root as unknown as Record<string, unknown>);
  expect(tried).toBeGreaterThan(100);
  expect(buildJob(root, context)).toEqual(whole);
});

/** No number of a job is NaN or infinite, no length a fraction, and every problem stands in the file. */
function expectSound(value: unknown): void {
  if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
  else if (typeof value === 'object' && value !== null) {
    for (const each of Object.values(value)) expectSound(each);
    if ('problems' in value && Array.isArray(value.problems))
      for (const { origin } of value.problems) expect(origin.uri).toBe(JOB_URI);
    if ('origin' in value && 'path' in (value.origin as object))
      expect(typeof (value.origin as { path: unknown }).path).toBe('string');
  }
}
