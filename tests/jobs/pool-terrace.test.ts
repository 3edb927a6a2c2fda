import { expect, it } from 'vitest';
import { exampleTexts, openJobs } from './index.ts';

const PATH = '/examples/pool-terrace.slat';

async function told(...changes: (readonly [string, string])[]): Promise<string[]> {
  const text = changes.reduce((all, [a, b]) => all.replaceAll(a, b), exampleTexts[PATH] ?? '');
  const { findings } = await openJobs({ ...exampleTexts, [PATH]: text }).open(PATH);
  return findings.map(({ code }) => code).sort();
}

/**
 * What a builder and a plan checker raise: posts on a deck's edge ask for an engineer, and by wind for more than a
 * guard does; 9' 6" over the meadow needs a permit; the formula asks deeper posts than one third; the gate's latch is
 * for its buyer; and the lower window sees through the gaps. The guard is high enough, and the barrier no ladder.
 */
const EXPECTED = [
  'deck-post-connection',
  'deck-post-moment',
  'embed-under-formula',
  'permit-needed',
  'place-seen',
  'pool-latch',
];

it('tells of a raised deck, a pool and two windows no more and no less', async () => {
  expect(await told()).toEqual(EXPECTED);
});

it('follows the gap, the way slats run, and the spacing of posts', async () => {
  // Narrower gaps hide the bench.
  expect(
    await told(['space = 1/2"', 'space = 1/4"'], ['gaps 3/8"', 'gaps 1/8"'], ['to 3/4"', 'to 3/8"']),
  ).not.toContain('place-seen');
  // Level slats along the pool are a ladder.
  expect(await told(['  rails fir-2x4\n  flip upright\n', ''])).toContain('pool-climb-apart');
  // Six bays on the deck halve what each post bears.
  expect(await told(['posts fir-4x4, 3 bays', 'posts fir-4x4, 6 bays'])).not.toContain('deck-post-moment');
});
