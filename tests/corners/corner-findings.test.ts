import { expect, it } from 'vitest';
import { openJobs, textAfter } from '../jobs/index.ts';

const STOCK = `
board wide { width 5-1/2"; thickness 1" }
board thin { width 5-1/2"; thickness 3/4" }
post p4 { along 3-1/2"; through 3-1/2" }
cleat stop { width 3/4"; thickness 3/4" }
pattern plain(slat = wide) { repeat slat; gap 1/2"; end anywhere; fit gaps 1/4" to 1" }
`;

const run = (name: string, statements: string) => `
run ${name} {
  length 10'
  posts p4, 2 bays
  fill plain
  ${statements}
}
`;

async function codesOf(second: string, turn = ', turns right', first = `height 5'; bottom 2"`) {
  const { open } = openJobs({});
  const text = `${STOCK}${run('quay', first)}${run('mole', `after quay${turn}\n  ${second}`)}`;
  const job = await open('/made/job.slat', text);
  const findings = job.findings.filter(({ code }) => /^(corner|plane)-/.test(code));
  return { job, open, findings, codes: findings.map(({ code }) => code) };
}

// 60 in high, bottom 2 in: 10 slats of 5-1/2 in leave 3 in for 9 gaps, 1/3 in each.
it.each([
  ['the same ends', `height 5'; bottom 2"`, []],
  // Its ground is 4 in lower, and its ends are as much higher above it.
  ['the same ends from the datum', `ground down 4"; height 5' 4"; bottom 6"`, []],
  ['lower ground alone', `ground down 4"; height 5'; bottom 2"`, ['corner-lines-miss']],
  ['another bottom', `height 5'; bottom 2-1/2"`, ['corner-lines-miss']],
  // Nine gaps give way by 1/32 in in all: nobody sees that.
  ['a bottom that is hardly other', `height 5'; bottom 2-1/32"`, []],
])('compares lines round a corner: %s', async (_, second, expected) => {
  expect((await codesOf(second)).codes).toEqual(expected);
});

it.each([`ground down 4"; height 5'; bottom 2"`, `height 5' 3"; bottom 5"`, `height 62"; bottom 2" to 4"`])(
  'mends lines by the edit it offers: %s',
  async (second) => {
    const { job, open, findings } = await codesOf(second);
    const [fix] = findings[0]?.fixes ?? [];
    if (!fix) throw new Error('no fix is offered');
    const after = await open('/made/job.slat', textAfter(job.document, fix.changes));
    expect(after.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
    expect(after.findings.map(({ code }) => code)).not.toContain('corner-lines-miss');
    expect(after.run('mole').courses.get(1)).toEqual(after.run('quay').courses.get(2));
  },
);

it('offers no edit where patterns differ', async () => {
  const { findings } = await codesOf(`height 5' 1"; bottom 2"; fit gaps 1/2" to 1"`);
  expect(findings.map(({ code, fixes }) => [code, fixes.length])).toEqual([['corner-lines-miss', 0]]);
});

it.each([
  // Centered 1 in and 3/4 in: an eighth at each face.
  ['plain(slat = thin)', `slats between posts`, ['plane-offset']],
  ['plain', `slats between posts`, []],
  // On the face 1-3/4 in before the middle, and half an inch before it: 1-3/4 + 1 - 1/2 in is a clear step.
  ['plain', `slats on front face`, []],
])('compares faces straight on: fill %s, %s', async (fill, second, expected) => {
  const { open } = openJobs({});
  const ends = `height 5'; bottom 2"`;
  const mole = run('mole', `after quay; ${ends}; ${second}`).replace('fill plain', `fill ${fill}`);
  const { findings } = await open('/made/job.slat', `${STOCK}${run('quay', ends)}${mole}`);
  expect(findings.map(({ code }) => code).filter((code) => /^(corner|plane)-/.test(code))).toEqual(expected);
});
