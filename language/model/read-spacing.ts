import type * as ast from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import { MOST_BAYS, MOST_POSTS } from './bounds.ts';
import type { PostSpacing, Sourced } from './job.ts';
import { readCount } from './read-count.ts';
import { readLength } from './read-length.ts';
import { assumedLength, originOf, type Reader, tell } from './reader.ts';

/**
 * How posts are spaced; when it is not stated, at most a usual distance clear. A limit counts as clear
 * unless it says on center.
 */
export function readSpacing(
  reader: Reader,
  run: ast.Run,
  statement: ast.PostsStatement,
): Sourced<PostSpacing> | undefined {
  const node = statement.spacing;
  if (!node) {
    const limit = assumedLength(reader, run, 'spacing');
    return { value: { kind: 'at-most', limit: limit.value, measured: 'clear' }, origin: limit.origin };
  }
  const value = spacingOf(reader, node);
  return value && { value, origin: originOf(reader, node) };
}

function spacingOf(reader: Reader, node: ast.PostSpacing): PostSpacing | undefined {
  switch (node.$type) {
    case 'SpacingLimit': {
      const limit = readLength(reader, node.limit, { what: 'posts' });
      return limit && { kind: 'at-most', limit: limit.value, measured: node.center ? 'on-center' : 'clear' };
    }
    case 'BayCount': {
      const kind = node.counted;
      if (node.count === undefined || kind === undefined) return undefined;
      const bounds = kind === 'bays' ? { least: 1, most: MOST_BAYS } : { least: 2, most: MOST_POSTS };
      const count = readCount(reader, node, kind, bounds);
      return count === undefined ? undefined : { kind, count };
    }
    case 'PostStations':
      return stationsOf(reader, node);
    default:
      return undefined;
  }
}

function stationsOf(reader: Reader, node: ast.PostStations): PostSpacing | undefined {
  const stated = node.stations ?? [];
  if (stated.length > MOST_POSTS) {
    const bound = { reason: 'too-many' as const, least: 1, most: MOST_POSTS };
    tell(reader, 'absurd-count', originOf(reader, node), {
      what: 'posts',
      count: String(stated.length),
      ...bound,
    });
    return undefined;
  }
  const stations = stated.map((each) => readLength(reader, each, { what: 'posts', zero: true }));
  const whole = stations.filter((each) => each !== undefined);
  return whole.length === stations.length ? { kind: 'stations', stations: whole } : undefined;
}

/** Whether a limit comes to a number of bays one can build; told at the limit when it does not. */
export function hasSaneBays(
  reader: Reader,
  spacing: Sourced<PostSpacing>,
  length: Sourced<number>,
  along: number,
): boolean {
  const bays = Math.ceil(bayEstimate(spacing.value, length.value, along));
  if (bays <= MOST_BAYS || spacing.value.kind !== 'at-most') return true;
  const count = String(bays);
  const bound = { reason: 'too-many' as const, least: 1, most: MOST_BAYS };
  tell(reader, 'absurd-count', spacing.origin, { what: 'bays', count, ...bound }, [
    { origin: length.origin, note: formatLength(length.value, reader.measure) },
  ]);
  return false;
}

/** About how many bays a spacing makes of a length, gates left out. */
export function bayEstimate(spacing: PostSpacing, length: number, along: number): number {
  switch (spacing.kind) {
    case 'bays':
      return spacing.count;
    case 'posts':
      return spacing.count - 1;
    case 'stations':
      return spacing.stations.length + 1;
    case 'at-most':
      return length / (spacing.measured === 'clear' ? spacing.limit + along : spacing.limit);
  }
}
