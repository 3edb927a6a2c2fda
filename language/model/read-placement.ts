import type * as ast from '../grammar/index.ts';
import { angleOfSides, formatDegrees, formatLength } from '../units/index.ts';
import type { Bridge, CornerKind, Placement, RunSpec, Sourced } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { assumed, follow, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

/** Sharper than this, posts and slats of two runs would stand in one another. */
export const SHARPEST_CORNER = 30;

/** East, where nothing is stated. */
export const DEFAULT_BEARING = 90;

/** Where a run stands on the plan, as stated; nothing when nothing is, or when that cannot be. */
export function readPlacement(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
): Pick<RunSpec, 'placement'> {
  const placed = pick('PlacedStatement');
  const after = pick('AfterStatement');
  const corner = pick('CornerStatement');
  const unclear = (at: ast.RunStatement, other: string, reason: 'both' | 'alone') =>
    tell(reader, 'placement-unclear', originOf(reader, at), { run: node.name, other, reason });
  if (placed && after) unclear(after, after.run?.$refText ?? '', 'both');
  if (corner && (!after || placed || after.gap || after.step)) unclear(corner, '', 'alone');
  const placement = placed
    ? readPlaced(reader, node, placed)
    : after && readAfter(reader, node, after, corner);
  return placement ? { placement } : {};
}

function readPlaced(reader: Reader, node: ast.Run, statement: ast.PlacedStatement): Placement | undefined {
  const east = readLength(reader, statement.east, { what: 'east', zero: true });
  const north = readLength(reader, statement.north, { what: 'north', zero: true });
  const bearing = readAngle(reader, node, statement, statement.bearing, 0, 360, 'bearing');
  if (!east || !north || (statement.bearing && !bearing)) return undefined;
  return {
    kind: 'at',
    east,
    north,
    bearing: bearing ?? assumed(reader, node, DEFAULT_BEARING),
    origin: originOf(reader, statement),
  };
}

function readAfter(
  reader: Reader,
  node: ast.Run,
  statement: ast.AfterStatement,
  cornerStatement: ast.CornerStatement | undefined,
): Placement | undefined {
  const other = follow(statement.run);
  if (!other) return undefined;
  const origin = originOf(reader, statement);
  if (other.$container !== reader.root) {
    const args = { run: node.name, other: other.name, reason: 'other-file' } as const;
    tell(reader, 'placement-unclear', originOf(reader, statement, 'run'), args);
    return undefined;
  }
  if (statement.gap || statement.step) return readApart(reader, node, statement, other.name);
  const inside = statement.of
    ? measuredAngle(reader, node, statement.of)
    : readAngle(reader, node, statement, statement.angle, SHARPEST_CORNER, 180, 'angle');
  if ((statement.angle || statement.of) && !inside) return undefined;
  // No turn is straight on; a turn of which no more is said is a square corner.
  const turned = 180 - (inside?.value ?? (statement.side ? 90 : 180));
  const value = turned === 0 ? 0 : statement.side === 'right' ? -turned : turned;
  const kind: CornerKind = cornerStatement?.kind ?? 'post';
  return {
    kind: 'after',
    run: other.name,
    turn: { value, origin: inside?.origin ?? origin },
    corner: cornerStatement
      ? { value: kind, origin: originOf(reader, cornerStatement) }
      : assumed(reader, node, kind),
    origin,
  };
}

/** Straight on with a post of its own: a space on, a step off the line of the first run, or both. */
function readApart(
  reader: Reader,
  node: ast.Run,
  statement: ast.AfterStatement,
  run: string,
): Placement | undefined {
  const origin = originOf(reader, statement);
  const gap = statement.gap
    ? readLength(reader, statement.gap, { what: 'space', zero: true })
    : assumed(reader, node, 0);
  if (!gap || !statement.step) return gap && { kind: 'on', run, gap, origin };
  const { toward, value } = statement.step;
  const step = readLength(reader, value, { what: 'step' });
  if (!step) return undefined;
  const off = toward === 'forward' ? { ...step, value: -step.value } : step;
  const bridge = readBridge(reader, statement.bridge);
  return { kind: 'on', run, gap, step: off, ...(bridge ? { bridge } : {}), origin };
}

/** A filler whose board cannot be read is told and left out. */
function readBridge(reader: Reader, node: ast.Bridge | undefined): Bridge | undefined {
  if (!node?.kind) return undefined;
  const origin = originOf(reader, node);
  if (node.kind !== 'filler') return { kind: node.kind, origin };
  const board = useFlat(reader, node.board, { node, property: 'board', place: 'filler' });
  return board && { kind: 'filler', board, origin };
}

/** The angle of a triangle along both runs and across, as a tape measures it. */
function measuredAngle(reader: Reader, node: ast.Run, sides: ast.CornerSides): Sourced<number> | undefined {
  const first = readLength(reader, sides.first, { what: 'side' });
  const second = readLength(reader, sides.second, { what: 'side' });
  const across = readLength(reader, sides.across, { what: 'side' });
  if (!first || !second || !across) return undefined;
  const value = angleOfSides(first.value, second.value, across.value);
  const origin = originOf(reader, sides);
  if (value !== undefined && value >= SHARPEST_CORNER) {
    // A tape is not read so finely that a hundredth of a degree would mean anything.
    return { value: Math.round(value * 100) / 100, origin };
  }
  const other =
    value === undefined ? [first, second, across].map(shown(reader)).join(', ') : formatDegrees(value);
  const reason = value === undefined ? 'sides' : 'angle';
  tell(reader, 'placement-unclear', origin, { run: node.name, other, reason });
  return undefined;
}

const shown =
  ({ measure }: Reader) =>
  ({ value }: Sourced<number>) =>
    formatLength(value, measure);

function readAngle(
  reader: Reader,
  node: ast.Run,
  statement: ast.PlacedStatement | ast.AfterStatement,
  angle: ast.Angle | undefined,
  least: number,
  most: number,
  reason: 'angle' | 'bearing',
): Sourced<number> | undefined {
  if (!angle) return undefined;
  const value = Number(angle.degrees);
  if (!Number.isFinite(value)) return undefined;
  const origin = originOf(reader, statement, reason);
  if (value >= least && value <= most) return { value, origin };
  tell(reader, 'placement-unclear', origin, { run: node.name, other: `${angle.degrees}°`, reason });
  return undefined;
}
