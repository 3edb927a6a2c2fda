import type { Bridge, RunSpec } from '../model/index.ts';
import { floorToStep, inches, type Ticks } from '../units/index.ts';
import type { Offset } from './bridge-joint.ts';
import { cutWithin, type Range } from './infill.ts';
import { bridgeLabel } from './labels.ts';
import { makePiece } from './make-piece.ts';
import { bridgeKey } from './names.ts';
import type { Piece } from './piece.ts';

/** Of a board on the side of a post, so that a screw holds in both (common practice: bearing of 3/4" at a joint). */
const LEAST_LAP = inches(3 / 4);

/**
 * Boards that stand between the sides of two posts and close the offset, through the runs: one over both posts,
 * as wide as it is or ripped to their outer faces; else two that meet in the middle, each with at least half of
 * its width on its post. Undefined where neither closes it.
 */
export function fillerBoards(
  { before, own, clear }: Offset,
  stock: Ticks,
  step: Ticks,
): readonly Range[] | undefined {
  const outer: Range = [Math.min(before[0], own[0]), Math.max(before[1], own[1])];
  const [near, far] = [Math.min(before[1], own[1]), Math.max(before[0], own[0])];
  const width = Math.min(stock, outer[1] - outer[0]);
  const middle = (near + far) / 2;
  const from = Math.min(Math.max(outer[0], Math.floor(middle - width / 2)), outer[1] - width);
  const one: Range = [from, from + width];
  if (laps(one, before) && laps(one, own)) return [one];
  if (clear <= 0) return undefined;
  const meet = Math.floor(middle);
  const each = floorToStep(Math.min(stock, meet - outer[0], outer[1] - meet), step);
  const two: readonly Range[] = [
    [meet - each, meet],
    [meet, meet + each],
  ];
  return each >= clear && each - clear / 2 >= LEAST_LAP ? two : undefined;
}

const laps = (board: Range, post: Range): boolean =>
  Math.min(board[1], post[1]) - Math.max(board[0], post[0]) >= LEAST_LAP;

/** One of the boards, its face square to the runs; `x` is where its thickness begins, `z` the height it closes. */
export function fillerBoard(
  {
    spec,
    bridge,
    number,
  }: {
    readonly spec: RunSpec;
    readonly bridge: Extract<Bridge, { kind: 'filler' }>;
    readonly number: number;
  },
  { x, y, z }: { readonly x: Ticks; readonly y: Range; readonly z: Range },
  supports: readonly string[],
): Piece {
  const { name, width, thickness, origin } = bridge.board.value;
  const heights = cutWithin(z, spec.measure.step, 'start');
  return makePiece(
    {
      key: `${bridgeKey(spec.name, 'filler')}/board-${number}`,
      label: `${bridgeLabel('filler')}-${number}`,
      role: 'filler',
      run: spec.name,
      side: 'middle',
      supports,
      from: [bridge.board.origin, origin, bridge.origin, spec.origin],
    },
    {
      stock: name,
      ripped: y[1] - y[0] < width.value,
      origin: [x, y[0], heights[0]],
      grain: [0, 0, 1],
      across: [0, 1, 0],
      through: [1, 0, 0],
      width: y[1] - y[0],
      thickness: thickness.value,
      ends: [{ at: 0 }, { at: heights[1] - heights[0] }],
    },
  );
}
