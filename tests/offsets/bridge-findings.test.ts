import { expect, it } from 'vitest';
import { type Working, workingsOf } from '../../language/figures/index.ts';
import { textAfter } from '../jobs/index.ts';
import { offsetText, openOffset } from './made-offset.ts';

const sizeOf = (inputs: Working['inputs'], symbol: string) => {
  const value = inputs.find((one) => one.symbol === symbol)?.value;
  return typeof value === 'object' ? value.value : undefined;
};

const told = (open: Awaited<ReturnType<typeof openOffset>>, code: string) =>
  open.findings.filter((finding) => finding.code === code);

it.each([
  ['after quay, steps back 3", closed by return', 'side by side'],
  ['after quay, steps back 3", closed by filler wide', 'side by side'],
  ['after quay, 2" on, steps back 6", closed by return', 'a return 3/4" thick'],
  ['after quay, 0" on, steps back 6", closed by filler wide', 'a filler 3/4" thick'],
  // 20-1/2 between the posts.
  ['after quay, steps back 24", closed by filler wide', 'is 20-1/2" between the posts'],
  ['after quay, steps back 6", closed by panel', 'Say how far on mole begins'],
  // Two cleats of 3/4 and the skew of a slat's ends take more.
  ['after quay, 1-1/2" on, steps back 1", closed by panel', 'begin farther on'],
  ['after quay, 10" on, steps back 12", closed by panel', 'more than the 45'],
])('tells that it cannot be: %s', async (place, says) => {
  const open = await openOffset({ place });
  const [finding, ...more] = told(open, 'bridge-impossible');
  expect(more).toEqual([]);
  expect(finding?.severity).toBe('error');
  expect(finding?.message.toLowerCase()).toContain(says.toLowerCase());
  expect(open.bridge).toEqual([]);
  // It is built without what closes the offset.
  expect(open.run('mole').sound).toBe(true);
  for (const fix of finding?.fixes ?? []) {
    const mended = await open.open(textAfter(open.document, fix.changes));
    expect(mended.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
  }
});

// By hand, for cleats 3/4" square, end gaps of 1/8" and slats 3/4" thick; s along, c across, t = c / s. A cleat ripped to the
// angle keeps 3/4 (1 - t), which is to be more than the gap along the panel, 1/8 times the root of 1 + t t: 36 (1 - t)(1 - t)
// > 1 + t t, so t < (72 - root 284) / 70 = 0.78783; with c 12" s > 15.23": 15-1/4" on the tape. The shortest edge of a slat,
// (s - 1/4) times the root of 1 + t t less 3/4 t, is to be more than two cleats: with c 1" at 1-15/16" 1.6875 x 1.12533 -
// 0.38710 = 1.512", at 1-7/8" 1.625 x 1.13333 - 0.4 = 1.442".
it.each([
  ['10" on, steps back 12"', '15-1/4"'],
  ['1-1/2" on, steps back 1"', '1-15/16"'],
])('says how far on a panel goes in at least: %s', async (place, least) => {
  const open = await openOffset({ place: `after quay, ${place}, closed by panel` });
  const [finding] = told(open, 'bridge-impossible');
  expect(open.run('mole').problems.map(({ args }) => args.needs)).toEqual([least]);
  expect(finding?.fixes?.map(({ title }) => title)).toEqual([
    `Write after quay, ${least} on, ${place.split(', ')[1]}, closed by panel`,
  ]);
});

// Cleats no wider than the gap at the ends hold nothing at any angle.
it('names no space where none would do', async () => {
  const place = 'after quay, 10" on, steps back 6", closed by panel';
  const text = offsetText({ place, slats: 'slats on front face' }, { slats: 'slats on front face' });
  const open = await (await openOffset({})).open(text.replaceAll('end gap 1/8"', 'end gap 3/4"'));
  const [finding, ...more] = open.findings.filter(({ code }) => code === 'bridge-impossible');
  expect(more).toEqual([]);
  expect(finding?.message).toContain('Use wider cleats or a smaller end gap, or write `closed by return`.');
  expect(finding?.fixes ?? []).toEqual([]);
});

it.each([
  ['rails two-by; flip upright', 'closed by return', 'upright slats need rails'],
  ['rails two-by; flip upright', `closed by panel`, 'upright slats need rails'],
])('tells what upright slats take instead', async (more, closed, says) => {
  const on = closed.endsWith('panel') ? "4' on, " : '';
  const open = await openOffset({ place: `after quay, ${on}steps back 12", ${closed}`, more });
  expect(told(open, 'bridge-impossible').map(({ message }) => message.includes(says))).toEqual([true]);
  const filler = await openOffset({ place: `after quay, steps back 6", closed by filler big`, more });
  expect(told(filler, 'bridge-impossible')).toEqual([]);
  expect(filler.bridge).toHaveLength(1);
});

it.each(['slats through split posts', 'slats between posts'])(
  'closes nothing at posts of two halves: %s',
  async (slats) => {
    const split = 'slats through split posts';
    const open = await openOffset(
      { place: 'after quay, steps back 6", closed by filler big', slats },
      { slats: split },
    );
    expect(told(open, 'bridge-impossible').map(({ message }) => message.includes('two halves'))).toEqual([
      true,
    ]);
  },
);

it('closes an offset between runs whose slats stand in grooves', async () => {
  const slats = 'slats in grooves, 3/8" deep';
  const open = await openOffset({ place: 'after quay, steps back 18", closed by return', slats }, { slats });
  expect(told(open, 'bridge-impossible')).toEqual([]);
  // Between the sides of the posts: cleats hold none of these slats.
  expect(open.bridge.map(({ role, supports }) => [role, supports.length])).toEqual(
    open.bridge.map(() => ['slat', 2]),
  );
  expect(open.bridge.length).toBeGreaterThan(5);
});

it('tells of runs that have no slats at one height', async () => {
  const low = { height: "2'" };
  const high = { place: 'after quay, steps back 18", closed by return', more: "ground up 3'" };
  expect(
    told(await openOffset(high, low), 'bridge-impossible').map(({ message }) =>
      /at one height/.test(message),
    ),
  ).toEqual([true]);
});

it('tells of an offset left open, and every fix closes it', async () => {
  for (const place of ['after quay, steps back 6"', 'after quay, steps forward 18"']) {
    const open = await openOffset({ place });
    const [finding] = told(open, 'offset-open');
    expect(finding?.severity).toBe('information');
    const closing = new Set<string>();
    for (const fix of finding?.fixes ?? []) {
      const text = textAfter(open.document, fix.changes);
      closing.add(/closed by (\w+)/.exec(text)?.[1] ?? '');
      const mended = await open.open(text);
      expect(mended.findings.map(({ code }) => code)).not.toContain('offset-open');
      expect(mended.findings.filter(({ severity }) => severity === 'error')).toEqual([]);
      expect(mended.run('mole').pieces.length).toBeGreaterThan(open.run('mole').pieces.length);
    }
    // 14-1/2 between the posts are too much for any board of the file.
    expect([...closing].sort()).toEqual(
      place.includes('18') ? ['panel', 'return'] : ['filler', 'panel', 'return'],
    );
  }
});

// 3-1/2 posts: 6 apart across leave 2-1/2, and with 2 along the shortest way is the root of 2 * 2 + 2-1/2 * 2-1/2, 3.2.
it.each([
  ['after quay, steps back 6"', '2-1/2"'],
  ['after quay, 2" on, steps back 6"', '3-3/16"'],
  ['after quay, steps back 3-1/2"', undefined],
  ['after quay, 2" on', undefined],
  ['after quay, steps back 6", closed by return', undefined],
])('measures what is open: %s', async (place, opening) => {
  const found = told(await openOffset({ place }), 'offset-open');
  expect(found.map(({ message }) => / is open by (.*?): /.exec(message)?.[1])).toEqual(
    opening ? [opening] : [],
  );
});

it('counts slats on a face as closing some of it', async () => {
  const slats = 'slats on front face';
  const found = told(
    await openOffset({ place: 'after quay, steps back 6"', slats }, { slats }),
    'offset-open',
  );
  // The slats before the second run's post take 3/4 of the 2-1/2.
  expect(found.map(({ message }) => message.includes('open by 1-3/4"'))).toEqual([true]);
});

it('lets a job say from where on an opening is told', async () => {
  const open = await openOffset({ place: 'after quay, steps back 6"' }, {}, 'threshold offset-open 3"');
  expect(told(open, 'offset-open')).toEqual([]);
});

it('still says of planes that they are neither flush nor stepped, but not beside a panel', async () => {
  const half = await openOffset({ place: 'after quay, 3/4" on, steps back 1/2", closed by return' });
  expect(told(half, 'bridge-impossible')).toEqual([]);
  const [finding] = told(half, 'plane-offset');
  const [fix] = finding?.fixes ?? [];
  expect(textAfter(half.document, fix?.changes ?? [])).toContain(
    'after quay, 3/4" on, steps back 1", closed by return\n',
  );
  const panel = await openOffset({ place: `after quay, 4' on, steps back 1/2", closed by panel` });
  expect(panel.codes.filter((code) => /plane|bridge|offset/.test(code))).toEqual([]);
});

it('compares slat lines over a closed offset', async () => {
  const place = `after quay, 4' on, steps back 6", closed by panel`;
  expect((await openOffset({ place })).codes).not.toContain('corner-lines-miss');
  expect((await openOffset({ place, height: '5\' 2"' })).codes).toContain('corner-lines-miss');
  expect((await openOffset({ place: 'after quay, steps back 6"', height: '5\' 2"' })).codes).not.toContain(
    'corner-lines-miss',
  );
});

it('bears half of a panel at each of its posts', async () => {
  const carried = async (closed: string) => {
    const { layout, job } = await openOffset({ place: `after quay, 6' on, steps back 6"${closed}` });
    return workingsOf(layout, job)
      .filter(({ code }) => code === 'post-bending')
      .map(({ where, inputs }) => [where.label, sizeOf(inputs, 'B')]);
  };
  // Two bays of 54-3/4: the middle post bears both halves and its own 3-1/2. An end post bears 27-3/8, 36 and 3-1/2.
  expect(await carried('')).toEqual([
    ['quay, post 2', 58.25],
    ['mole, post 2', 58.25],
  ]);
  expect(await carried(', closed by panel')).toEqual([
    ['quay, post 3', 66.875],
    ['mole, post 1', 66.875],
  ]);
});

it('measures the span of a panel along its slats', async () => {
  const { layout, job } = await openOffset({ place: `after quay, 7' on, steps back 63", closed by panel` });
  const spans = workingsOf(layout, job)
    .filter(({ code, where }) => code === 'slat-deflection' && where.label.startsWith('mole'))
    .map(({ inputs }) => sizeOf(inputs, 'L'));
  // 84 and 63 are 105 along the panel; tan a is 3/4. At each end the wide face of a cleat takes 3/4, and the skew of
  // the post's side half a slat's thickness or more: between 105 - 2 * 3/4 and 4 * 3/4 less.
  expect(spans).toHaveLength(1);
  expect(spans[0]).toBeLessThanOrEqual(103.5);
  expect(spans[0]).toBeGreaterThan(102);
});
