import type * as ast from '../grammar/index.ts';
import type { CornerKind, Placement, RunSpec, Sourced } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { assumed, follow, originOf, type Reader, tell } from './reader.ts';

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
  if (corner && (!after || placed)) unclear(corner, '', 'alone');
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
  const inside = readAngle(reader, node, statement, statement.angle, SHARPEST_CORNER, 180, 'angle');
  if (statement.angle && !inside) return undefined;
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
