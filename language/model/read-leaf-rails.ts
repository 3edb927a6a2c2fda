import type * as ast from '../grammar/index.ts';
import type { LeafRails, Sourced } from './job.ts';
import { readCount } from './read-count.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

const MOST_RAILS = 12;
const MOST_COURSE = 999;

/** Rails of a leaf as stated; undefined when a number or a length of them cannot be read. */
export function readLeafRails(reader: Reader, statement: ast.GateRails): Sourced<LeafRails> | undefined {
  const origin = originOf(reader, statement);
  if (statement.count !== undefined) {
    const count = readCount(reader, statement, 'rails', { least: 2, most: MOST_RAILS });
    return count === undefined ? undefined : { value: { kind: 'count', count }, origin };
  }
  const stated = statement.courses ?? [];
  if (stated.length > 0) {
    const courses = stated.map(Number);
    const odd = courses.find((course) => !Number.isInteger(course) || course < 1 || course > MOST_COURSE);
    if (odd === undefined) return { value: { kind: 'courses', courses }, origin };
    const reason = !Number.isInteger(odd) ? 'not-whole' : odd < 1 ? 'too-few' : 'too-many';
    tell(reader, 'absurd-count', origin, {
      what: 'course',
      count: String(odd),
      reason,
      least: 1,
      most: MOST_COURSE,
    });
    return undefined;
  }
  const lengths = statement.heights ?? [];
  const heights = lengths.flatMap((length): Sourced<number>[] => {
    const height = readLength(reader, length, { what: 'rails' });
    return height ? [height] : [];
  });
  if (heights.length === 0 || heights.length !== lengths.length) return undefined;
  return { value: { kind: 'at', heights }, origin };
}
