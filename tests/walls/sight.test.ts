import { expect, it } from 'vitest';
import { lookOf } from '../../language/figures/index.ts';
import { openJob } from '../jobs/index.ts';
import { clapped } from './index.ts';

async function seen(walls: string, viewer: string, place: string) {
  const text = `${clapped(walls)}viewer window { ${viewer} }\nplace seat { ${place} }\n`;
  const { layout, job } = await openJob(text);
  const [from, of] = [job.viewers[0], job.places[0]];
  const look = from && of && lookOf(layout, from, of);
  if (!look || look === 'apart') throw new Error('nothing to look at');
  return look.sight;
}

const HIGH = `at 0" along bank, 8' in front; width 4'; from 10' to 12'`;

// The place is 48 wide with its middle at station 0, higher than a line over the top: all of it is seen but what is
// past the wall, whose face is 1-1/2 before station 0: (24 + 1.5) / 48 = 53.125 %.
it('sees nothing past a wall', async () => {
  const eye = `at 2' along bank, 8' behind; eye 5'`;
  expect((await seen('', eye, HIGH)).seen).toBe(1);
  const { seen: share, ways } = await seen('begins at wall, 1-1/2" off', eye, HIGH);
  expect(share).toBeCloseTo(0.53125, 6);
  expect(ways.over).toBeCloseTo(0.53125, 6);
  expect(ways.past).toBeCloseTo(0, 9);
});

// The same from the other end: the last post ends at 118-1/2, the wall is 2 past that.
it('sees nothing past the wall at the other end', async () => {
  const place = HIGH.replace('0" along', '118-1/2" along');
  const { seen: share } = await seen('ends at wall, 2" off', `at 8' along bank, 8' behind; eye 5'`, place);
  expect(share).toBeCloseTo((24 + 2) / 48, 6);
});

it('lets a wall hide nothing from an eye past it, whose window no one knows', async () => {
  expect((await seen('begins at wall, 1-1/2" off', `at 2' before bank, 8' behind; eye 5'`, HIGH)).seen).toBe(
    1,
  );
});

// An eye at station 0: between there and the wall 1-1/2 off, lines of sight stay in the open gap. The place is 24 wide,
// so 1.5 / 24 = 6.25 % of it is seen there, and nothing of that past a filler.
it('sees through an open gap, and not through a filler', async () => {
  const eye = `at 0" along bank, 8' behind; eye 18"`;
  const place = `at 0" along bank, 8' in front; width 2'; from 1' to 2'`;
  const open = await seen('begins at wall, 1-1/2" off', eye, place);
  const filled = await seen('begins at wall, 1-1/2" off; scribed filler slat', eye, place);
  expect(open.seen - filled.seen).toBeCloseTo(1.5 / 24, 6);
  expect(open.ways.through - filled.ways.through).toBeCloseTo(1.5 / 24, 6);
});
