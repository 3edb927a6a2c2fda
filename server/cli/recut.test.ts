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

it('says how to say that slats are cut', async () => {
  const { code, out } = await runHere(folderWith({ 'bank.slat': JOB }), 'recut', 'bank.slat');
  expect([code, out]).toEqual([0, expect.stringContaining('No slat is said to be cut')]);
});
