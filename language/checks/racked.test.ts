import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

const SLOPE = `height 50"; bottom 2-1/2"; ground at 0' up 0", at 118-1/2" down 6"; slope racked`;
const UPRIGHT = `${SLOPE}; flip upright; rails bar`;
/** In the middle of a run 52" longer: its second bay. */
const GATE = `gate wicket in bank { opening 46" from 61"; frame bar; hinges on left }`;

it('tells that level slats are not racked, and offers the ways they follow ground', async () => {
  const racked = await checked(screen([`height 50"; bottom 2-1/2"`, SLOPE]), 'racked-level-slats');
  expect(racked.messages).toHaveLength(1);
  const fixes = racked.findings[0]?.fixes ?? [];
  expect(fixes.map(({ title }) => title)).toEqual(['Write slope level top', 'Write slope in steps']);
  for (const fix of fixes) {
    const after = await fixed(racked, fix);
    expect(after.findings.map(({ code }) => code)).not.toContain('racked-level-slats');
    expect(after.open.layout.runs[0]?.sound).toBe(true);
  }
  expect(racked.open.layout.runs[0]?.edges.size).toBe(0);
});

it('racks upright slats without a word, and holds a height limit against the ground right below', async () => {
  const text = screen([`height 50"; bottom 2-1/2"`, UPRIGHT]);
  expect((await checked(text, 'racked-level-slats')).findings).toEqual([]);
  const limited = (limit: string) => text.replace('measure inches', `limit height ${limit}; measure inches`);
  // Marks of the tape lift it by less than 1/16" at either post; from the lowest ground of a bay it would be 53".
  expect((await checked(limited('50-1/4"'), 'height-over-limit')).findings).toEqual([]);
  expect((await checked(limited('49-1/2"'), 'height-over-limit')).findings).toHaveLength(1);
});

// By hand: ground falls 6 in 118-1/2. Posts of the gate stand at 57-1/2 and 107, their middles 49-1/2 apart: 49-1/2 x 6 / 118-1/2 =
// 2.506, to marks of the tape 2-1/2 less than a sixteenth.
it('tells how far a level gate is off the slats beside it, past a threshold that a job may set', async () => {
  const text = `${screen([`height 50"; bottom 2-1/2"`, UPRIGHT], ['length 118-1/2"', 'length 170"'], ['2 bays', `at most 5' clear`])}${GATE}`;
  const told = await checked(text, 'gate-in-slope');
  expect(told.messages[0]).toContain('is 2-1/2" off them at post 3');
  const eased = text.replace('measure inches', 'threshold gate-in-slope 3"; measure inches');
  expect((await checked(eased, 'gate-in-slope')).findings).toEqual([]);
});
