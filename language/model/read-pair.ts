import type * as ast from '../grammar/index.ts';
import type { Ticks } from '../units/index.ts';
import type { PairSpec, Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** Two leaves as stated; undefined for one leaf, or when a length of theirs cannot be read. */
export function readPair(
  reader: Reader,
  statement: ast.LeavesStatement | undefined,
  latchStatement: ast.LatchGap | undefined,
  latchGap: Sourced<Ticks>,
): PairSpec | undefined {
  if (!statement?.two) return undefined;
  // Two leaves shut against each other, not against a post.
  if (latchStatement)
    tell(reader, 'wrong-statement', originOf(reader, latchStatement), {
      what: 'latch gap',
      block: 'gate with two leaves',
    });
  const meetingGap = statement.meeting
    ? readLength(reader, statement.meeting, { what: 'meeting gap', zero: true })
    : latchGap;
  const active = statement.active && readLength(reader, statement.active, { what: 'active leaf' });
  if (!meetingGap || (statement.active && !active)) return undefined;
  return { meetingGap, ...(active ? { active } : {}), origin: originOf(reader, statement) };
}
