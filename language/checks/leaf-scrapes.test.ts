import { expect, it } from 'vitest';
import { checked, fixed, screen } from './testing/checked.ts';

// Leaf 40" wide in 40-3/4"; slats of 3/4" on the front face, the frame of 1-1/2" behind them: from the middle of posts
// 3-1/2" through, its back face is 1-3/4" - 1-1/2" = 1/4" to the front, its front face 2-1/2".
function found(opens: string, across: string, gate = '', job = '') {
  const more = `gate door in bank { opening 40-3/4" from 5'; hinges on left; ${opens}; hinge gap 1/4"; latch gap 1/2"; frame bar; flip upright; fit gaps 1/4" to 1"${gate} }\n`;
  const text = screen(
    ['118-1/2"', "16'"],
    ['2 bays', '3 bays'],
    ['bottom 2-1/2"', `bottom 2-1/2"; ${across}`],
    ['inches to 1/16"', `inches to 1/16"; ${job}`],
  );
  return checked(text + more, 'leaf-scrapes');
}

it('tells how far the ground comes up in the arc', async () => {
  // Up 2" in 40": 1/20 of 40 - 1/4 = 1.9875", nearest 1/16 is 2"; 2.5 - 1.9875 = 0.5125", nearest 1/2".
  const told = await found('opens to back', 'ground across rises 2" in 40" toward back');
  expect(told.findings.map(({ args }) => args)).toEqual([
    { gate: 'door', rise: '2"', clearance: '1/2"', limit: '1"' },
  ]);
  // To the front 1/20 of 42.5 = 2.125"; 2.5 - 2.125 = 3/8".
  const front = await found('opens to front', 'ground across falls 2" in 40" toward back');
  expect(front.findings.map(({ args }) => args)).toEqual([
    { gate: 'door', rise: '2-1/8"', clearance: '3/8"', limit: '1"' },
  ]);
  // Up 4": 1/10 of 42.5 = 4.25"; 1-3/4" into it.
  const into = await found('opens to front', 'ground across rises 4" in 40" toward front');
  expect(into.messages[0]).toContain('runs 1-3/4" into it');
});

it('says nothing where the ground falls, is level, or leaves enough', async () => {
  expect((await found('opens to front', 'ground across rises 2" in 40" toward back')).findings).toEqual([]);
  expect((await found('opens to back', 'ground across rises 0" in 40" toward back')).findings).toEqual([]);
  // 1-1/2" in 40": 1.4906" of 2-1/2" leaves 1.0094"; the job may ask for more.
  const enough = 'ground across rises 1-1/2" in 40" toward back';
  expect((await found('opens to back', enough)).findings).toEqual([]);
  expect((await found('opens to back', enough, '', 'threshold leaf-scrapes 1-1/16"')).findings).toHaveLength(
    1,
  );
});

it.each(['', '; bottom 2-1/4"'])('raises the bottom%s as far as it must, or turns the gate', async (gate) => {
  // 1.9875" + 1" = 2.9875", the next 1/16 is 3".
  const told = await found('opens to back', 'ground across rises 2" in 40" toward back', gate);
  const [raise, turn] = told.findings[0]?.fixes ?? [];
  expect([raise?.title, turn?.title]).toEqual(['Write bottom 3" in the gate', 'Write opens to front']);
  for (const fix of [raise, turn])
    expect((await fixed(told, fix)).findings.filter(({ code }) => code === 'leaf-scrapes')).toEqual([]);
});

it('turns no gate toward a pool', async () => {
  const told = await found('opens to back', 'pool in front; ground across rises 2" in 40" toward back');
  expect(told.findings[0]?.fixes?.map(({ title }) => title)).toEqual(['Write bottom 3" in the gate']);
});
