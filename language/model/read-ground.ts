import type * as ast from '../grammar/index.ts';
import type { Ticks } from '../units/index.ts';
import { DEFAULT_SIDE } from './defaults.ts';
import { faceToward } from './faces.ts';
import { groundLine } from './ground-line.ts';
import type { GroundLevel, RunSpec, Sourced } from './job.ts';
import type { Picked } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { assumedLength, originOf, type Reader, tell } from './reader.ts';

type Ground = Pick<RunSpec, 'ground' | 'levels' | 'slope'>;

/** The ground and how the screen follows it; undefined when a level cannot be read. */
export function readGround(
  reader: Reader,
  node: ast.Run,
  pick: Picked<ast.RunStatement>,
  length: Sourced<Ticks> | undefined,
): Ground | undefined {
  const statement = pick('GroundStatement');
  const slope = readSlope(reader, pick('SlopeStatement'));
  if (!statement) return { ground: assumedLength(reader, node, 'ground'), ...slope };
  const points = statement.points ?? [];
  if (points.length === 0) {
    const ground = readDirected(reader, statement.value, statement.direction);
    return ground && { ground, ...slope };
  }
  const origin = originOf(reader, statement);
  const levels = points.flatMap((point): GroundLevel[] => {
    const station = readLength(reader, point.station, { what: 'ground', zero: true });
    const level = readDirected(reader, point.value, point.direction);
    return station && level
      ? [{ station: station.value, level: level.value, origin: originOf(reader, point) }]
      : [];
  });
  if (levels.length !== points.length || !length) return undefined;
  const flat: Sourced<Ticks> = { value: levels[0]?.level ?? 0, origin };
  if (levels.every(({ level }) => level === flat.value)) return { ground: flat, ...slope };
  const highest = Math.max(...groundLine({ ground: flat, levels, length }).map(({ z }) => z));
  return { ground: { value: highest, origin }, levels, ...slope };
}

/** How the ground slopes across the run, toward its back; nothing where it is not stated or cannot be read. */
export function readAcross(reader: Reader, pick: Picked<ast.RunStatement>): Pick<RunSpec, 'across'> {
  const statement = pick('GroundAcross');
  const by = readLength(reader, statement?.by, { what: 'ground', zero: true });
  const over = readLength(reader, statement?.over, { what: 'ground' });
  if (!statement?.side || !by || !over) return {};
  const front = faceToward(pick('SeenFrom')?.side ?? DEFAULT_SIDE, statement.side) === 'front';
  const slope = by.value / over.value;
  const value = front === (statement.way === 'rises') ? -slope : slope;
  return { across: { value, origin: originOf(reader, statement) } };
}

function readDirected(
  reader: Reader,
  node: ast.Length | undefined,
  direction: 'up' | 'down' | undefined,
): Sourced<Ticks> | undefined {
  const length = readLength(reader, node, { what: 'ground', zero: true });
  if (!length || direction !== 'down' || length.value === 0) return length;
  return { value: -length.value, origin: length.origin };
}

function readSlope(reader: Reader, statement: ast.SlopeStatement | undefined): Pick<RunSpec, 'slope'> {
  if (!statement || (!statement.level && !statement.steps && !statement.racked)) return {};
  const value = statement.racked ? 'racked' : statement.steps ? 'in-steps' : 'level-top';
  return { slope: { value, origin: originOf(reader, statement) } };
}

/** Level slats are not racked: that is told, and they keep a level top. */
export function rackedOnlyUpright(
  reader: Reader,
  { slope, ...ground }: Ground,
  upright: boolean,
  run: string,
): Ground {
  if (!slope || upright || slope.value !== 'racked') return { ...ground, ...(slope ? { slope } : {}) };
  tell(reader, 'racked-level-slats', slope.origin, { run });
  return { ...ground, slope: { ...slope, value: 'level-top' } };
}
