import { expect, it } from 'vitest';
import { workingsOfRun } from '../figures/index.ts';
import { checked } from './testing/checked.ts';

/** Faces of 48" by 72" on the inner posts, their middle 38" above the deck. */
const deck = (wind: number, hold = 'outside rim') => `
job "Deck" { wind pressure ${wind} psf }
board slat { width 5-1/2"; thickness 1"; lengths 16' }
post stake { along 3-1/2"; through 3-1/2"; lengths 16' }
pattern rows { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
deck terrace { surface up 2'; joists 1-1/2" by 9-1/4"; ground down 1' }
run edge {
  on terrace, posts ${hold}
  length 147-1/2"
  posts stake, 3 bays
  height 74"; bottom 2"
  slats on front face
  fill rows
}
`;

it('sets wind beside the load of a guard, with the spacing that would do (hand)', async () => {
  // Statics: P = 8 psf x 4 ft x 6 ft = 192 lb; M = 192 x 38 / 12 = 608 ft-lb over 200 x 36 / 12 = 600.
  // Upper of two bolts 4 in apart, 5 in below: 192 x (38 + 5 + 2) / 4 = 2 160 lb, 1.2 times 1 800 lb.
  // 48 / 1.2 = 40 in of face, less the post of 3-1/2: 36-1/2 clear, shown down to a whole inch.
  const { findings, messages } = await checked(deck(8), 'deck-post-moment');
  expect(findings[0]?.args).toMatchObject({
    moment: '608 ft-lb',
    guard: '600 ft-lb',
    pull: '2,160 lb',
    holdDown: '1,800 lb',
    clear: "3'",
  });
  expect(messages[0]).toContain('for an engineer');
});

it('says nothing below both, and nothing of posts with footings of their own', async () => {
  // 6 psf: 144 lb, 456 ft-lb and 1 620 lb.
  expect((await checked(deck(6), 'deck-post-moment')).findings).toEqual([]);
  expect((await checked(deck(8, 'to footing'), 'deck-post-moment')).findings).toEqual([]);
});

it('stands among the workings', async () => {
  const { open } = await checked(deck(8));
  const [run] = open.layout.runs;
  if (!run) throw new Error('no run');
  const [working] = workingsOfRun(run, open.job).filter(({ code }) => code === 'deck-edge');
  expect(working?.figure.value).toBeCloseTo(2_160, 6);
});
