import type * as ast from '../grammar/index.ts';
import { type Node, originOf, type Reader, tell } from './reader.ts';

/** A whole number from `least` to `most`; anything else is told and comes out undefined. */
export function readCount(
  reader: Reader,
  node: ast.RepeatItem | ast.BayCount | ast.HingeSide | ast.GateRails | ast.JointsStatement,
  what: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  return wholeNumber(reader, node, 'count', node.count, what, { least, most });
}

/** No run has more bays, posts or courses than this. */
const MOST_NUMBERED = 50_000;

/** The same of a number that counts along: a bay's, a post's, a course's. */
export function readNumber(
  reader: Reader,
  node: Node,
  property: string,
  number: string | undefined,
  what: string,
): number | undefined {
  return wholeNumber(reader, node, property, number, what, { least: 1, most: MOST_NUMBERED });
}

function wholeNumber(
  reader: Reader,
  node: Node,
  property: string,
  count: string | undefined,
  what: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  if (count === undefined) return undefined;
  const value = Number(count);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  const reason = !Number.isInteger(value) ? 'not-whole' : value < least ? 'too-few' : 'too-many';
  tell(reader, 'absurd-count', originOf(reader, node, property), { what, count, reason, least, most });
  return undefined;
}
