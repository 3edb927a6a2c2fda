import { expect, it } from 'vitest';
import { board, patternOf, postOf, type RunParts, runOf, sourced } from '../../tests/specs/index.ts';
import { feet, inches, mm, toInches } from '../units/index.ts';
import { findOverlaps, findUnsupported, layOutRun, type Piece } from './index.ts';

const slat = board('slat', inches(5.5), inches(0.75));
const depth = sourced(inches(5 / 8), 'run/depth');
const grooves = { kind: 'grooves', depth, room: inches(1 / 16) } as const;
const channel = {
  kind: 'channel',
  name: 'u',
  origin: sourced(0, 'u').origin,
  width: sourced(inches(1.25), 'u/width'),
  thickness: sourced(inches(1.25), 'u/thickness'),
  wall: sourced(inches(1 / 8), 'u/wall'),
  lengths: [],
} as const;
const channels = { kind: 'channels', channel: sourced(channel, 'run/channel') } as const;

// 118-1/2" over posts of 3-1/2" in two bays: 54" clear. Nine slats of 5-1/2" and eight gaps of 1/2" are 53-1/2".
function lay(parts: Partial<RunParts>) {
  return layOutRun(
    runOf({
      length: inches(118.5),
      post: postOf('post', inches(3.5), inches(3.5)),
      spacing: { kind: 'bays', count: 2 },
      bottom: inches(2),
      height: inches(55.5),
      pattern: patternOf('rows', [slat], { gap: inches(0.5), end: { kind: 'anywhere' } }),
      endGap: inches(1 / 8),
      ...parts,
    }),
  );
}

const x = ({ solid }: Piece) => solid.vertices.map(([at]) => toInches(at));
const byRole = (pieces: readonly Piece[], role: Piece['role']) => pieces.filter((one) => one.role === role);

// Common practice: a slat in grooves is as long as the bay is clear, and two grooves, less two end gaps:
// 54 + 2 x 5/8 - 2 x 1/8 = 55".
it('cuts slats into grooves that go out at the tops of the posts', () => {
  const run = lay({ mounting: grooves });
  expect(run.problems).toEqual([]);
  const [first] = byRole(run.pieces, 'slat');
  expect(toInches(first?.cut.longPoint ?? 0)).toBe(55);
  // The left bay begins at 3.5: the slat begins 5/8 before that and 1/8 on.
  expect(Math.min(...x(first as Piece))).toBe(3);
  const [end, middle] = byRole(run.pieces, 'post');
  expect(end?.cut.grooves).toEqual([
    {
      side: 'end',
      // From the foot: half of 55-1/2" is 27-3/4" in the ground, and 2" above it the slats begin.
      from: inches(29.75),
      at: inches(1.75 - 13 / 32),
      width: inches(13 / 16),
      depth: inches(5 / 8),
    },
  ]);
  expect(middle?.cut.grooves?.map(({ side }) => side)).toEqual(['start', 'end']);
  expect([findOverlaps(run), findUnsupported(run)]).toEqual([[], []]);
});

it('sets a spacer as high as the gap at each end of every gap', () => {
  const run = lay({ mounting: grooves });
  const spacers = byRole(run.pieces, 'spacer');
  // Eight gaps in each of two bays, two ends each.
  expect(spacers).toHaveLength(32);
  for (const { cut } of spacers)
    expect([cut.width, cut.thickness, cut.longPoint].map(toInches)).toEqual([0.5, 0.75, 0.625]);
  expect(spacers[0]).toMatchObject({ key: 'bank/b1/spacer-left-01', label: 'B1-X1L' });
});

// 54 less two walls of 1/8" and two end gaps of 3/8": 53". Channels are 1-1/4" square outside, 1" inside.
it('cuts slats to the walls of channels', () => {
  const run = lay({ mounting: channels, endGap: inches(3 / 8) });
  expect(toInches(byRole(run.pieces, 'slat')[0]?.cut.longPoint ?? 0)).toBe(53);
  const made = byRole(run.pieces, 'channel');
  expect(made).toHaveLength(4);
  expect(made[0]?.cut.grooves).toBeUndefined();
  expect(made[0]?.solid.hollows).toHaveLength(1);
  expect([findOverlaps(run), findUnsupported(run)]).toEqual([[], []]);
});

it('finds a slat in the cheek of a groove, and none in its hollow', () => {
  const run = lay({ mounting: grooves });
  const moved = run.pieces.map(
    (piece): Piece =>
      piece.key === 'bank/b1/c01'
        ? {
            ...piece,
            solid: { vertices: piece.solid.vertices.map(([a, b, c]) => [a, b + inches(1 / 4), c] as const) },
          }
        : piece,
  );
  expect(findOverlaps({ ...run, pieces: moved }).map(({ args }) => [args.first, args.second])).toEqual([
    ['P1', 'B1-01'],
    ['B1-01', 'P2'],
  ]);
});

it('puts upright slats into grooves of the rails', () => {
  const rail = board('rail', inches(3.5), inches(1.5), 'rail');
  const run = lay({ mounting: grooves, flip: { upright: true }, rail });
  // 53-1/2" less two rails of 3-1/2" is 46-1/2", and again 2 x 5/8 - 2 x 1/8.
  expect(toInches(byRole(run.pieces, 'slat')[0]?.cut.longPoint ?? 0)).toBe(47.5);
  expect(byRole(run.pieces, 'rail').map(({ cut }) => cut.grooves?.[0]?.side)).toEqual([
    'end',
    'start',
    'end',
    'start',
  ]);
  expect([findOverlaps(run), findUnsupported(run)]).toEqual([[], []]);
});

it('tells what no groove can be cut into, and what goes into none', () => {
  const codes = (parts: Partial<RunParts>) => lay(parts).problems.map(({ code }) => code);
  const of = (value: number) => sourced(value, 'run/depth');
  expect(codes({ mounting: { ...grooves, depth: of(inches(1.75)) } })).toEqual(['groove-too-deep']);
  expect(codes({ mounting: { ...grooves, depth: of(inches(1.75) - 1) } })).toEqual([]);
  expect(codes({ mounting: { ...grooves, width: of(inches(11 / 16)) } })).toEqual(['slat-too-thick']);
  expect(codes({ mounting: { ...grooves, width: of(inches(3.5)) } })).toEqual(['groove-too-wide']);
  expect(codes({ mounting: grooves, endGap: inches(5 / 8) })).toEqual(['end-gap-too-wide']);
  const tube = { ...postOf('tube', inches(3), inches(3)), wall: of(mm(3)) };
  expect(codes({ mounting: grooves, post: tube })).toEqual(['groove-in-tube']);
});

// Two halves 1-1/2" deep with slats of 3/4" between them: 3-3/4" in all. Slats meet over the middle post with an end gap.
it('clamps slats between the halves of split posts', () => {
  const half = postOf('half', inches(3.5), inches(1.5));
  const run = lay({ mounting: { kind: 'split' }, post: half });
  const posts = byRole(run.pieces, 'post');
  expect(posts.map(({ label, side }) => [label, side])).toEqual([
    ['P1', 'front'],
    ['P1-B', 'back'],
    ['P2', 'front'],
    ['P2-B', 'back'],
    ['P3', 'front'],
    ['P3-B', 'back'],
  ]);
  const ys = posts.slice(0, 2).flatMap(({ solid }) => solid.vertices.map(([, y]) => toInches(y)));
  expect([Math.min(...ys), Math.max(...ys)]).toEqual([-1.875, 1.875]);
  const [first] = byRole(run.pieces, 'slat');
  // From the end to the middle of the second post, 59-1/4", less half an end gap, down to a mark of 1/16".
  expect(toInches(first?.cut.longPoint ?? 0)).toBe(59.1875);
  expect(first?.supports).toEqual(['bank/p1', 'bank/p1/back', 'bank/p2', 'bank/p2/back']);
  expect([findOverlaps(run), findUnsupported(run)]).toEqual([[], []]);
  expect(lay({ mounting: { kind: 'split' }, post: half, length: feet(13) }).sound).toBe(true);
});
