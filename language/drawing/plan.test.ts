import { expect, it } from 'vitest';
import { board, jobOf, patternOf, postOf, type RunParts, runOf, sourced } from '../../tests/specs/index.ts';
import { layOutJob } from '../layout/index.ts';
import type { Placement, RunSpec } from '../model/index.ts';
import { feet, IMPERIAL, inches, toMm } from '../units/index.ts';
import { diffViews } from './delta.ts';
import { boundsOf, placeLabels } from './place-labels.ts';
import { planOf } from './plan.ts';
import type { View } from './view.ts';
import { viewsOf } from './views.ts';

const post = postOf('fir-4x4', inches(3.5), inches(3.5));
const pattern = patternOf('even', [board('cedar', inches(5.5), inches(0.75))], { gap: inches(0.5) });

function run(name: string, placement: Placement | undefined, parts: Partial<RunParts> = {}): RunSpec {
  const spec = runOf({
    name,
    length: feet(10),
    post,
    spacing: { kind: 'bays', count: 2 },
    height: inches(60),
    bottom: inches(6),
    mounting: { kind: 'face', face: 'front' },
    pattern,
    endGap: inches(1 / 8),
    ...parts,
  });
  return placement ? { ...spec, placement } : spec;
}

const at = (east: number, north: number, bearing: number): Placement => {
  const origin = sourced(0).origin;
  return { kind: 'at', east: sourced(east), north: sourced(north), bearing: sourced(bearing), origin };
};

const after = (first: string, turn: number): Placement => {
  const origin = sourced(0).origin;
  return { kind: 'after', run: first, turn: sourced(turn), corner: sourced('post'), origin };
};

const gate = {
  name: 'wicket',
  opening: inches(40),
  station: feet(4),
  post,
  frame: board('fir', inches(3.5), inches(1.5), 'rail'),
  pattern,
  flip: { upright: true },
} as const;

function planned(specs: readonly RunSpec[]): View {
  const plan = planOf(layOutJob(jobOf(specs)).runs, IMPERIAL);
  if (!plan) throw new Error('no plan');
  return plan;
}

const boxOf = (view: View, piece: string) => {
  const hit = view.groups.flatMap(({ hits }) => hits).find((one) => one.piece === piece);
  if (!hit) throw new Error(`${piece} is not drawn`);
  return hit.box;
};

const l = (turn: number, parts: Partial<RunParts> = {}) => [
  run('north', at(feet(6), feet(4), 90)),
  run('east', after('north', turn), parts),
];

it('draws posts where they stand, worked out by hand', () => {
  const plan = planned(l(90));
  // Going east from 6 ft east, 4 ft north: the corner post ends at 16 ft, its middle is 4 ft north of the datum.
  const corner = boxOf(plan, 'north/p3');
  expect(corner[0]).toBeCloseTo(toMm(feet(16) - inches(3.5)), 1);
  expect(corner[1]).toBeCloseTo(-toMm(feet(4) + inches(1.75)), 1);
  expect(corner[2]).toBeCloseTo(88.9, 1);
  // The second run goes north from the front of that post: its last post ends 10 ft on.
  const last = boxOf(plan, 'east/p3');
  expect(last[0]).toBeCloseTo(corner[0], 1);
  expect(last[1]).toBeCloseTo(-toMm(feet(14) - inches(1.75)), 1);
  // Its slats lie on the outside, which is east of the posts.
  expect(boxOf(plan, 'east/b1/c01')[0]).toBeCloseTo(toMm(feet(16)), 1);
});

it('draws a run that goes off at 45 degrees as it lies', () => {
  const plan = planned(l(45));
  const hit = plan.groups.flatMap(({ hits }) => hits).find(({ piece }) => piece === 'east/p3');
  // A square post seen cornerwise is 3.5 x sqrt 2 = 4.95 in wide and high, and is drawn by its corners.
  expect(hit?.box[2]).toBeCloseTo(toMm(inches(3.5)) * Math.SQRT2, 1);
  expect(hit?.box[3]).toBeCloseTo(toMm(inches(3.5)) * Math.SQRT2, 1);
  expect(hit?.outline?.length).toBe(8);
  expect(plan.labels.map(({ text }) => text)).toContain('135°');
});

it.each([90, -90, 45, -60, 0])('shows every text, none on another, where runs turn by %s', (turn) => {
  const parts = { mounting: { kind: 'face', face: turn < 0 ? 'back' : 'front' } } as const;
  const specs = [run('north', at(feet(6), feet(4), 90), parts), run('east', after('north', turn), parts)];
  const plan = planned(specs);
  const placed = placeLabels(plan.labels, plan.letter);
  const lost = plan.labels.filter((label) => !placed.some((one) => one.label === label));
  expect(lost.map(({ key }) => key)).toEqual([]);
  const bounds = placed.map((one) => boundsOf(one, plan.letter));
  for (const [i, a] of bounds.entries())
    for (const b of bounds.slice(i + 1))
      expect(a[0] < b[2] && b[0] < a[2] && a[1] < b[3] && b[1] < a[3]).toBe(false);
  const texts = plan.labels.map(({ text }) => text);
  expect(texts.filter((text) => text === "10' over posts")).toHaveLength(2);
  expect(texts.filter((text) => text.endsWith('°'))).toEqual(turn === 0 ? [] : [`${180 - Math.abs(turn)}°`]);
  expect(texts).toContain('datum point');
  expect(texts).toContain('N');
  const [x, y, width, height] = plan.box;
  for (const b of bounds) {
    expect(b[0]).toBeGreaterThanOrEqual(x);
    expect(b[1]).toBeGreaterThanOrEqual(y);
    expect(b[2]).toBeLessThanOrEqual(x + width);
    expect(b[3]).toBeLessThanOrEqual(y + height);
  }
});

it('swings a leaf from its hinges to the side it opens to', () => {
  const swing = (opensTo: string, seenFrom: string) => {
    const spec = run('east', after('north', 90), { gates: [gate] });
    const gates = spec.gates.map((one) => ({ ...one, opensTo: sourced(opensTo) }));
    const second = { ...spec, gates, seenFrom: sourced(seenFrom) };
    const plan = planned([run('north', at(0, 0, 90)), second]);
    const path = plan.groups.find(({ key }) => key === 'east/plan/swing-wicket')?.path;
    const [, radius, x] = /A([\d.]+) .* ([\d.]+) -?[\d.]+L/.exec(path ?? '') ?? [];
    return { radius: Number(radius), x: Number(x) };
  };
  // The run goes north; its front is at the right hand, which is east: greater x on the sheet.
  const away = swing('yard', 'lane');
  const toward = swing('lane', 'lane');
  // Leaf: opening less the gaps at hinge and latch, 1/4 and 1/2 in when not stated.
  expect(toward.radius).toBeCloseTo(toMm(inches(39.25)), 1);
  expect(toward.x - away.x).toBeCloseTo(2 * toMm(inches(39.25)), 1);
});

it('comes first where two runs have a place, and is one of each run where they stand alone', () => {
  const alone = layOutJob(jobOf([run('a', undefined), run('b', undefined)])).runs;
  expect(viewsOf(alone, IMPERIAL, ['front']).map(({ key }) => key)).toEqual(['a', 'b']);
  expect(viewsOf(alone, IMPERIAL, ['plan']).map(({ key }) => key)).toEqual(['a/%plan', 'b/%plan']);
  const placed = layOutJob(jobOf([run('a', undefined), run('b', after('a', 90))])).runs;
  const views = viewsOf(placed, IMPERIAL, ['plan', 'front']);
  expect(views.map(({ key, kind }) => `${key} ${kind}`)).toEqual(['%plan plan', 'a front', 'b front']);
  // No place and no bearing is stated: nothing is said of the datum or of north.
  expect(views[0]?.labels.map(({ key }) => key)).not.toContain('%plan/north');
  expect(views[0]?.labels.map(({ key }) => key)).not.toContain('%plan/datum');
});

it('changes only the groups of the run that changed', () => {
  const before = planned(l(90));
  const same = planned(l(90));
  expect(diffViews([before], [same], 1, 2).put).toEqual([]);
  const after = planned(l(90, { spacing: { kind: 'bays', count: 3 } }));
  const delta = diffViews([before], [after], 1, 2);
  const keys = delta.put.flatMap(({ groups, labels }) => [...groups, ...labels].map(({ key }) => key));
  expect(keys.length).toBeGreaterThan(0);
  // The title stands under everything and may move.
  for (const key of keys) expect(key).toMatch(/^(east|%plan)\//);
  expect(keys.filter((key) => key.startsWith('east/')).length).toBeGreaterThan(3);
});
