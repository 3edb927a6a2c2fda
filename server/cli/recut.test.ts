import { expect, it } from 'vitest';
import { folderWith, runHere } from './testing/run-here.ts';

// Two bays of 58" clear: 2 times 58 and three posts of 3-1/2 are 126-1/2; slats are 1/4 shorter.
const JOB = `job { measure inches to 1/16" }
board slat { width 5-1/2"; thickness 3/4" }
post stake { along 3-1/2"; through 3-1/2" }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank { length 126-1/2"; posts stake, 2 bays; height 8"; bottom 2-1/2"; slats between posts; fill rows; end gap 1/8" }
`;

it('tells where cut slats go, what is sawn off and what is to cut', async () => {
  const text = `${JOB}measured bank { bay 1 clear 58-1/2"; bay 2 clear 57-7/8"; cut bay 1 }\n`;
  const folder = folderWith({ 'bank.slat': text });
  const { code, out } = await runHere(folder, 'recut', 'bank.slat');
  expect(code).toBe(0);
  expect(out).toBe(
    [
      'bank: 1 slats are cut; 1 find a place, 0 are left over, 1 are to cut.',
      '  B1-01 (57-3/4") goes to B2-01: saw off 1/8", to 57-5/8"',
      '  B1-01: cut to 58-1/4"',
      '',
      '',
    ].join('\n'),
  );
  const { runs } = JSON.parse((await runHere(folder, 'recut', 'bank.slat', '--json')).out);
  expect(runs).toMatchObject([
    {
      run: 'bank',
      reused: [{ piece: 'B1-01', place: 'B2-01', cutTo: 57.75 * 25.4, trim: 0.125 * 25.4 }],
      toCut: [{ place: 'B1-01', length: 58.25 * 25.4 }],
      leftOver: [],
    },
  ]);
});

it('lists pieces with what was planned of them', async () => {
  const text = `${JOB}measured bank { bay 1 clear 58-1/2"; bay 2 clear 58"; cut bay 2 }\n`;
  const { out } = await runHere(folderWith({ 'bank.slat': text }), 'pieces', 'bank.slat', '--json');
  const { pieces } = JSON.parse(out) as { pieces: Record<string, unknown>[] };
  expect(pieces.filter(({ role }) => role === 'slat')).toMatchObject([
    { key: 'bank/b1/c01', state: 'planned', longPoint: 58.25 * 25.4, planned: 57.75 * 25.4 },
    { key: 'bank/b2/c01', state: 'cut', longPoint: 57.75 * 25.4, planned: null },
  ]);
});

// Two slats of 5-1/2 and a gap of 1/2 from 2-1/2 to 14; of 5-3/8, the gap is 3/4.
it('tells what came out otherwise, ways to take it up, and the story pole', async () => {
  const text = `${JOB.replace('height 8"', 'height 14"').replace('end anywhere', 'end anywhere; fit gaps 1/4" to 1"')}measured board slat { width 5-3/8" }\n`;
  const { out } = await runHere(folderWith({ 'bank.slat': text }), 'recut', 'bank.slat');
  expect(out.split('\n').slice(0, 5)).toEqual([
    'bank, as built:',
    '  gaps 3/4" (planned 1/2"), 2 slats as planned',
    '  ways to take it up, best first:',
    '    1. move the ends: bottom 2-3/4", height 14", 2 slats (gaps as planned, an end up to 1/4" off; hardly seen)',
    expect.stringContaining('as it is: spread the rest over the gaps'),
  ]);
  expect(out).toContain('    1: 14" to 8-5/8" (14" to 8-1/2")\n    2: 7-7/8" to 2-1/2" (8" to 2-1/2")\n');
  const { runs } = JSON.parse(
    (await runHere(folderWith({ 'bank.slat': text }), 'recut', 'bank.slat', '--json')).out,
  );
  expect(runs).toMatchObject([
    { run: 'bank', reused: [], asBuilt: [{ panels: [{ gap: 19.05, plannedGap: 12.7, slats: 2 }] }] },
  ]);
});

it('says how to say that slats are cut', async () => {
  const { code, out } = await runHere(folderWith({ 'bank.slat': JOB }), 'recut', 'bank.slat');
  expect([code, out]).toEqual([0, expect.stringContaining('no slat is said to be cut')]);
});
