import { expect, it } from 'vitest';
import { inches, mm } from '../units/index.ts';
import { jobOf, problemsOf, RUN, runOf, STOCK } from './testing/job-of.ts';

const NEEDED = 'opening 42" from 7\'; hinges on left';
const text = (statements: string, run = RUN, stock = STOCK) =>
  `${stock}\nrun bank {${run}}\ngate orchard in bank {\n${statements}\n}`;
const gate = async (statements: string, run?: string, stock?: string) => {
  const job = await jobOf(text(statements, run, stock));
  expect(job.problems).toEqual([]);
  const [found] = runOf(job).gates;
  if (!found) throw new Error('no gate');
  return found;
};

it('takes from its run and from the trade what it does not state', async () => {
  const found = await gate(NEEDED);
  const home = { uri: 'file:///site/job.slat', path: 'Gate:orchard', why: 'default' };
  expect(found).toMatchObject({
    name: 'orchard',
    origin: { path: 'Gate:orchard', why: 'stated' },
    opening: { value: inches(42), origin: { path: 'Gate:orchard/Opening.width' } },
    station: { value: inches(84), origin: { path: 'Gate:orchard/Opening.station' } },
    hinges: { value: 'left', origin: { path: 'Gate:orchard/HingeSide', why: 'stated' } },
    post: { value: { name: 'p4' }, origin: { path: 'Run:bank/PostsStatement.stock', why: 'derived' } },
    frame: { value: { name: 'two-by' }, origin: { path: 'Rail:two-by', why: 'derived' } },
    brace: { value: { name: 'two-by' }, origin: { why: 'derived' } },
  });
  expect(found.hingeGap).toEqual({ value: inches(1 / 4), origin: home });
  expect(found.latchGap).toEqual({ value: inches(1 / 2), origin: home });
  expect([found.bottom, found.height, found.opensTo]).toEqual([undefined, undefined, undefined]);
  expect(found.infill).toMatchObject({
    pattern: { name: 'beat' },
    fill: { path: 'Run:bank/FillStatement' },
    mounting: { value: { kind: 'face', face: 'front' }, origin: home },
    cleat: { value: { name: 'stop' }, origin: { why: 'derived' } },
    endGap: { value: inches(1 / 8), origin: { path: 'Run:bank', why: 'derived' } },
  });
});

it('takes metric gaps in a metric job', async () => {
  expect(await gate(NEEDED, RUN, `job { measure mm }\n${STOCK}`)).toMatchObject({
    hingeGap: { value: mm(6) },
    latchGap: { value: mm(12) },
  });
});

it('reads everything a gate may state', async () => {
  const found = await gate(
    `${NEEDED}\nopens to yard\nhinge gap 3/8"; latch gap 3/4"\nposts p6\nframe wide\nbrace strip\nheight 5'\nbottom 3"\n` +
      'slats between frame\ncleats strip\nend gap 1/16"\nfill beat(slat = strip)\nflip upright\nfit rip last',
    RUN,
    `${STOCK}\npost p6 { along 5-1/2"; through 3-1/2" }`,
  );
  expect(found).toMatchObject({
    opensTo: { value: 'yard', origin: { path: 'Gate:orchard/OpensTo' } },
    hingeGap: { value: inches(3 / 8), origin: { path: 'Gate:orchard/HingeGap.value' } },
    latchGap: { value: inches(3 / 4) },
    post: { value: { name: 'p6' }, origin: { path: 'Gate:orchard/GatePosts.stock', why: 'stated' } },
    frame: { value: { name: 'wide' }, origin: { path: 'Gate:orchard/FrameStatement.stock' } },
    brace: { value: { name: 'strip' }, origin: { path: 'Gate:orchard/BraceStatement.stock' } },
    height: { value: { high: inches(60) }, origin: { path: 'Gate:orchard/HeightStatement' } },
    bottom: { value: { low: inches(3) }, origin: { path: 'Gate:orchard/BottomStatement' } },
    infill: {
      fill: { path: 'Gate:orchard/FillStatement' },
      mounting: { value: { kind: 'between' } },
      cleat: { value: { name: 'strip' }, origin: { path: 'Gate:orchard/CleatsStatement.stock' } },
      endGap: { value: inches(1 / 16) },
      flip: { upright: true, topEdge: 'left' },
      fit: { origin: { path: 'Gate:orchard/Fit' }, remedies: [{ value: { kind: 'rip-last' } }] },
    },
  });
  expect((await gate(`${NEEDED}\nbrace none`)).brace).toBeUndefined();
});

it("takes the run's pattern as it is turned there, but turns its own afresh", async () => {
  const upright = `${RUN} flip upright, over\nfit rip last`;
  const same = (await gate(NEEDED, upright)).infill;
  expect(same.flip).toMatchObject({
    upright: true,
    over: true,
    origin: { path: 'Run:bank/FlipStatement', why: 'derived' },
  });
  // What the run does about its own space is no remedy for the gate's.
  expect(same.fit.remedies).toEqual([]);
  const own = (await gate(`${NEEDED}\nfill beat`, upright)).infill;
  expect(own.flip).toMatchObject({ upright: false, over: false, origin: { path: 'Gate:orchard' } });
  const turned = (await gate(`${NEEDED}\nflip end for end`, upright)).infill;
  expect(turned.flip).toMatchObject({ upright: false, over: false, endForEnd: true });
});

it('needs an opening, and tells hinges that are not said but draws on', async () => {
  const none = await jobOf(text('hinges on left'));
  expect(none.problems).toMatchObject([
    {
      code: 'missing-statement',
      origin: { path: 'Gate:orchard.name' },
      args: { what: 'opening', block: 'gate', name: 'orchard', candidates: '' },
    },
  ]);
  expect(none.runs).toMatchObject([{ name: 'bank', broken: true }]);
  const unsaid = await jobOf(text('opening 42" from 7\''));
  expect(unsaid.problems).toMatchObject([{ code: 'missing-statement', args: { what: 'hinges' } }]);
  expect(runOf(unsaid).gates).toMatchObject([{ hinges: { value: 'left', origin: { why: 'default' } } }]);
});

it('asks for frame and cleats where there is no choice to take', async () => {
  const noRail = await jobOf(text(NEEDED, RUN, STOCK.replace(/^rail.*$/m, '')));
  expect(noRail.problems).toMatchObject([
    {
      code: 'missing-statement',
      origin: { path: 'Gate:orchard.name' },
      args: { what: 'frame', candidates: '' },
    },
  ]);
  const onFace = `${RUN} slats on front face`;
  const twoCleats = `${STOCK}\ncleat batten { width 1"; thickness 1" }`;
  const job = await jobOf(text(`${NEEDED}\nslats between frame`, onFace, twoCleats));
  expect(job.problems).toMatchObject([
    { origin: { path: 'Gate:orchard.name' }, args: { what: 'cleats', candidates: 'stop, batten' } },
  ]);
});

it.each([
  ['frame p4', 'Gate:orchard/FrameStatement.stock', { kind: 'post', place: 'frame' }],
  ['brace p4', 'Gate:orchard/BraceStatement.stock', { kind: 'post', place: 'brace' }],
  ['cleats p4', 'Gate:orchard/CleatsStatement.stock', { kind: 'post', place: 'cleats' }],
  ['posts two-by', 'Gate:orchard/GatePosts.stock', { kind: 'rail', needed: 'post', place: 'posts' }],
])('tells %s', async (statement, path, args) => {
  const job = await jobOf(text(`${NEEDED}\n${statement}`));
  expect(job.problems).toMatchObject([{ code: 'wrong-kind', origin: { path }, args }]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it.each([
  ['slats between posts', 'wrong-statement Gate:orchard/SlatsStatement'],
  ['hinge gap 5', 'unit-missing Gate:orchard/HingeGap.value'],
  ['latch gap 1 - 1/2"', 'length-spelling Gate:orchard/LatchGap.value'],
  ["height 5' to 4'", 'impossible-size Gate:orchard/HeightStatement.high'],
  ['hinges on right', 'stated-twice Gate:orchard/HingeSide~2'],
  ['cleats nowhere', undefined],
])('tells what is wrong with %s', async (statement, problem) => {
  expect(await problemsOf(text(`${NEEDED}\n${statement}`))).toEqual(problem ? [problem] : []);
});

it('bounds the slats of a leaf', async () => {
  const thin = `${STOCK}\nboard hair { width 0.1 mm; thickness 1 mm }\npattern fine { repeat hair; gap 0 mm }`;
  const job = await jobOf(text('opening 10 m from 1 m; hinges on left; fill fine; flip upright', RUN, thin));
  expect(job.problems).toMatchObject([
    { code: 'absurd-count', origin: { path: 'Gate:orchard.name' }, args: { what: 'slats', count: '100000' } },
  ]);
});

it('tells a gate whose run is broken or in another file, and not one whose run is nowhere', async () => {
  const broken = await jobOf(text(NEEDED, "length 24'; posts p4; fill beat"));
  expect(broken.problems.at(-1)).toMatchObject({
    code: 'gate-run',
    origin: { path: 'Gate:orchard.run' },
    args: { gate: 'orchard', run: 'bank', reason: 'broken' },
    related: [{ origin: { path: 'Run:bank' }, note: 'run' }],
  });
  const other = await jobOf(`use "other.slat"\ngate orchard in bank { ${NEEDED} }`, {
    'other.slat': `${STOCK}\nrun bank {${RUN}}`,
  });
  expect(other.problems).toMatchObject([
    {
      code: 'gate-run',
      args: { reason: 'other-file' },
      related: [{ origin: { uri: 'file:///site/other.slat', path: 'Run:bank' } }],
    },
  ]);
  expect(await problemsOf(`gate orchard in nowhere { ${NEEDED} }`)).toEqual([]);
});

it('breaks its run when it is broken itself, without telling twice', async () => {
  const job = await jobOf(text("opening 42 from 7'; hinges on left"));
  expect(job.problems.map(({ code, origin }) => `${code} ${origin.path}`)).toEqual([
    'unit-missing Gate:orchard/Opening.width',
  ]);
  expect(job.runs).toMatchObject([{ broken: true }]);
});

it('reads hinges as seen from either side, and a post for each side of the opening', async () => {
  const opening = 'opening 42" from 7\'';
  const slim = `${STOCK}\npost p6 { along 5-1/2"; through 3-1/2" }`;
  const behind = await gate(`${opening}; hinges on left seen from shed; posts p6, p4`, undefined, slim);
  expect(behind).toMatchObject({
    hinges: { value: 'right' },
    post: { value: { name: 'p6' } },
    latchPost: { value: { name: 'p4' }, origin: { path: 'Gate:orchard/GatePosts.latch' } },
  });
  expect((await gate(`${opening}; hinges on left seen from front`)).hinges.value).toBe('left');
});

it('reads rails as a count, as heights, or as courses of the run', async () => {
  expect((await gate(`${NEEDED}; rails 3`)).rails?.value).toEqual({ kind: 'count', count: 3 });
  expect((await gate(`${NEEDED}; rails at 20", 3' 4"`)).rails).toMatchObject({
    value: { kind: 'at', heights: [{ value: inches(20) }, { value: inches(40) }] },
    origin: { path: 'Gate:orchard/GateRails' },
  });
  expect((await gate(`${NEEDED}; rails at course 5, course 9`)).rails?.value).toEqual({
    kind: 'courses',
    courses: [5, 9],
  });
  expect((await gate(NEEDED)).rails).toBeUndefined();
  for (const odd of ['rails 1', 'rails 40', 'rails at course 0', 'rails at 5'])
    expect(await problemsOf(text(`${NEEDED}; ${odd}`))).toHaveLength(1);
});

it('reads two leaves, equal or with the active one as wide as stated', async () => {
  expect((await gate(NEEDED)).pair).toBeUndefined();
  expect((await gate(`${NEEDED}; leaves two`)).pair).toMatchObject({
    meetingGap: { value: inches(1 / 2), origin: { why: 'default' } },
    origin: { path: 'Gate:orchard/LeavesStatement' },
  });
  expect((await gate(`${NEEDED}; leaves two, meeting gap 5/8", active leaf 30" wide`)).pair).toMatchObject({
    meetingGap: { value: inches(5 / 8), origin: { path: 'Gate:orchard/LeavesStatement.meeting' } },
    active: { value: inches(30), origin: { path: 'Gate:orchard/LeavesStatement.active' } },
  });
  expect(await problemsOf(text(`${NEEDED}; leaves two; latch gap 1/2"`))).toEqual([
    'wrong-statement Gate:orchard/LatchGap',
  ]);
});
