import Module from 'manifold-3d';
import { expect, it } from 'vitest';
import { checked, screen } from '../../language/checks/testing/checked.ts';
import { clearSpan } from '../../language/figures/index.ts';
import { findOverlaps, findUnsupported, type Piece } from '../../language/layout/index.ts';
import { toInches } from '../../language/units/index.ts';
import { openJob } from '../jobs/index.ts';

const cad = await Module();
cad.setup();

/** Cubic inches of a piece, of the hull of its corners: worked out by a solid modeler. */
const volume = ({ solid }: Piece): number =>
  cad.Manifold.hull(
    solid.vertices.map(([x, y, z]) => [toInches(x), toInches(y), toInches(z)] as [number, number, number]),
  ).volume();

/** The sound screen with what it wears besides. */
const dressed = (worn: string, tops = '') => screen(['  fill rows\n', `  fill rows\n  ${worn}\n  ${tops}\n`]);
const CAPS =
  'cap lid { flat; thickness 1"; overhang 1/2" }\ncap roof { hipped; thickness 2"; edge 1/2"; overhang 1/2" }\n';

it('puts a flat cap over the middle of each post', async () => {
  const run = (await openJob(CAPS + dressed('caps lid'))).run();
  const caps = run.pieces.filter(({ role }) => role === 'cap');
  expect(caps).toHaveLength(3);
  for (const cap of caps) {
    // 3-1/2 and twice 1/2 are 4-1/2; by 4-1/2 by 1 are 20.25 cubic inches.
    expect([cap.cut.longPoint, cap.cut.width, cap.cut.thickness].map(toInches)).toEqual([4.5, 4.5, 1]);
    expect(volume(cap)).toBeCloseTo(20.25, 6);
  }
  expect(findUnsupported(run)).toEqual([]);
  expect(findOverlaps(run)).toEqual([]);
});

it('slopes a hipped cap to all sides', async () => {
  const run = (await openJob(CAPS + dressed('caps roof'))).run();
  const cap = run.pieces.find(({ role }) => role === 'cap') as Piece;
  // A slab of 4-1/2 by 4-1/2 by 1/2 is 10.125, a pyramid of 1-1/2 on it 4-1/2 * 4-1/2 * 1-1/2 / 3, as much.
  expect(volume(cap)).toBeCloseTo(20.25, 6);
  // Up 1-1/2 in half of 4-1/2: the arc tangent of 2/3.
  expect(cap.cut.hip?.slope).toBeCloseTo(33.69, 3);
  expect(findUnsupported(run)).toEqual([]);
  expect(findOverlaps(run)).toEqual([]);
});

it('counts a cap for the limit of height and not for the height', async () => {
  const text = (height: string) =>
    CAPS +
    dressed('caps lid').replace('measure inches to 1/16"', `measure inches to 1/16"; limit height ${height}`);
  const low = await checked(text('51"'), 'height-over-limit');
  expect(low.messages).toEqual([]);
  const over = await checked(text('50"'), 'height-over-limit');
  expect(over.messages).toHaveLength(1);
  expect(over.open.run().top).toBe(low.open.run().top);
});

it('miters four boards round a post', async () => {
  const run = (await openJob(dressed('collars slat at top', 'tops 4" above slats'))).run();
  const boards = run.pieces.filter(({ role }) => role === 'collar');
  expect(boards).toHaveLength(12);
  for (const { cut } of boards) {
    // Round 3-1/2 with boards 3/4 thick: 3-1/2 inside, 5 outside.
    expect([cut.longPoint, cut.shortPoint].map(toInches)).toEqual([5, 3.5]);
    expect(cut.ends.map(({ bevel }) => Math.abs(bevel))).toEqual([45, 45].map((x) => expect.closeTo(x, 9)));
  }
  // (5 + 3-1/2) / 2 * 3/4 * 3-1/2.
  for (const board of boards) expect(volume(board)).toBeCloseTo(11.15625, 6);
  expect(findUnsupported(run)).toEqual([]);
  expect(findOverlaps(run)).toEqual([]);
});

it('tells of a collar that slats are in the way of, once for all posts', async () => {
  const { messages } = await checked(dressed('collars slat at bottom'), 'collar-no-room');
  expect(messages).toHaveLength(1);
  expect(messages[0]).toContain('needs 3-1/2"; there is 2-1/2" below the slats');
});

it.each([
  // 54 less 3-1/2, halved.
  ['stiffener slat', 1, 25.25],
  // 54 less two of 3-1/2, in three: 15-2/3, to the mark 15-11/16.
  ['stiffeners slat, at most 18" apart', 2, 15.6875],
])('lets slats span less between stiffeners: %s', async (stated, count, span) => {
  const run = (await openJob(dressed(stated))).run();
  const strips = run.pieces.filter(({ role, bay }) => role === 'stiffener' && bay === 1);
  expect(strips).toHaveLength(count);
  // Behind slats that lie on the front, between the posts, as high as the twelve slats: 47-1/2.
  for (const { cut, side } of strips) expect([toInches(cut.longPoint), side]).toEqual([47.5, 'back']);
  const byKey = new Map(run.pieces.map((piece) => [piece.key, piece]));
  const slat = run.pieces.find(({ key }) => key === 'bank/b1/c05') as Piece;
  expect(toInches(clearSpan(slat, byKey))).toBe(span);
  expect(findUnsupported(run)).toEqual([]);
  expect(findOverlaps(run)).toEqual([]);
});

it('asks for no stiffener where the bay is no wider than the span asked for', async () => {
  const run = (await openJob(dressed("stiffeners slat, at most 5' apart"))).run();
  expect(run.pieces.some(({ role }) => role === 'stiffener')).toBe(false);
});

it('sees a stiffener on one face from both sides', async () => {
  const alike = (worn: string) =>
    checked(
      dressed(worn)
        .replace('{ measure', '{ alike from both sides; measure')
        .replace('slats on front face', 'slats on both faces'),
      'faces-differ',
    );
  expect((await alike('stiffener slat on back face')).findings).toHaveLength(1);
  expect((await alike('stiffener slat on both faces')).findings).toEqual([]);
});

it('tells of slats that hardly bear on the post they meet over', async () => {
  const text = screen(['along 3-1/2"', 'along 1-1/2"'], ['  fill rows', '  end gap 1/4"; fill rows']);
  const found = await checked(text, 'joint-unsupported');
  // Half of 1-1/2 less half of 1/4 is 5/8.
  expect(found.messages[0]).toContain('bears on it by 5/8"');
  expect((await checked(screen(), 'joint-unsupported')).findings).toEqual([]);
});

it('offers the gap at joints that gives them their bearing', async () => {
  const text = screen(['along 3-1/2"', 'along 1-5/8"'], ['  fill rows', '  end gap 1/4"; fill rows']);
  const { findings } = await checked(text, 'joint-unsupported');
  // 11/16 on each side; with 1/8 between them 3/4.
  expect(findings[0]?.fixes?.map(({ title }) => title)).toEqual(['Write `joint gap 1/8"`']);
});

it('covers the joints of slats at the posts with battens', async () => {
  const run = (await openJob(dressed('battens slat; stiffener slat on both faces'))).run();
  const battens = run.pieces.filter(({ role }) => role === 'batten');
  // One at each of three posts, as high as the slats, before slats of 3/4 on posts whose front is at 1-3/4.
  expect(battens.map(({ cut }) => toInches(cut.longPoint))).toEqual([47.5, 47.5, 47.5]);
  for (const { solid } of battens) {
    const depths = solid.vertices.map((vertex) => toInches(vertex[1]));
    expect([Math.min(...depths), Math.max(...depths)]).toEqual([-3.25, -2.5]);
  }
  // That over the middle post holds twelve slats on either side of the joint.
  expect(battens[1]?.supports).toHaveLength(24);
  expect(findUnsupported(run)).toEqual([]);
  expect(findOverlaps(run)).toEqual([]);
});

it('takes battens only for level slats on a face', async () => {
  const text = dressed('battens slat').replace('slats on front face', 'slats between posts');
  const found = (await openJob(text)).findings.map(({ code }) => code);
  expect(found).toContain('wrong-statement');
});

it('lays out no more stiffeners than a run may have pieces', async () => {
  const text = `board sliver { width 1/10000"; thickness 1/2" }\n${dressed('stiffeners sliver, at most 1/10000" apart')}`;
  const { findings, open } = await checked(text, 'too-many-pieces');
  expect(findings.length).toBeGreaterThan(0);
  expect(open.run().pieces.some(({ role }) => role === 'stiffener')).toBe(false);
});
