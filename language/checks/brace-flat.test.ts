import { expect, it } from 'vitest';
import { checked, screen } from './testing/checked.ts';

// Leaf 47-1/2" high (height 50", bottom 2-1/2") with a frame of 3-1/2": inside 40-1/2" high. A leaf w wide is w - 7"
// inside: by hand tan 45 = 1 where w = 47-1/2"; the opening is 3/4" more (gaps of 1/4" and 1/2").
function found(opening: string, more: string, job = '') {
  const gate = `gate door in bank { opening ${opening} from 5'; hinges on left; hinge gap 1/4"; latch gap 1/2"; frame bar; ${more}; flip upright; fit gaps 1/4" to 1" }\n`;
  const text = screen(
    ['118-1/2"', "16'"],
    ['2 bays', '3 bays'],
    ['inches to 1/16"', `inches to 1/16"; ${job}`],
  );
  return checked(`${text}${gate}`, 'brace-flat');
}

it('tells of a brace under 45 degrees, and of none at 45', async () => {
  expect((await found('48-1/4"', 'brace bar')).findings).toEqual([]);
  const told = await found('49"', 'brace bar');
  // atan(40.5 / 41.25) = 44.5 degrees.
  expect(told.findings.map(({ args }) => args)).toEqual([
    { gate: 'door', angle: '44.5°', least: '45°', middle: 0 },
  ]);
  expect((await found('49"', 'brace none')).findings).toEqual([]);
});

it('tells of the flattest of several, and keeps to the job’s own limit', async () => {
  // Inside 40 - 7.75 = 32.25" wide; three rails leave (47.5 - 10.5) / 2 = 18.5": atan = 29.8 degrees.
  const told = await found('40"', 'rails 3');
  expect(told.findings.map(({ args }) => args)).toEqual([
    { gate: 'door', angle: expect.stringMatching(/^29\.[789]°$|^29\.8°$/), least: '45°', middle: 1 },
  ]);
  expect(told.messages[0]).toContain('fewer rails');
  expect((await found('40"', 'rails 3', 'threshold brace-flat 25°')).findings).toEqual([]);
});
