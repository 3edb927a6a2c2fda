import type * as ast from '../grammar/index.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** A whole number from `least` to `most`; anything else is told and comes out undefined. */
export function readCount(
  reader: Reader,
  node: ast.RepeatItem | ast.BayCount | ast.HingeSide,
  what: string,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  const { count } = node;
  if (count === undefined) return undefined;
  const value = Number(count);
  if (Number.isInteger(value) && value >= least && value <= most) return value;
  const reason = !Number.isInteger(value) ? 'not-whole' : value < least ? 'too-few' : 'too-many';
  tell(reader, 'absurd-count', originOf(reader, node, 'count'), { what, count, reason, least, most });
  return undefined;
}
