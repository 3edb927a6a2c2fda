import type * as ast from '../grammar/index.ts';
import type { Job, Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { originOf, type Reader, tell } from './reader.ts';

/** The job's own demand for privacy; empty when it makes none. */
export function readPrivacy(
  reader: Reader,
  seeThrough: ast.SeeThroughLimit | undefined,
  gapLimit: ast.GapLimit | undefined,
): Job['privacy'] {
  const share = seeThrough && readShare(reader, seeThrough);
  const gap = readLength(reader, gapLimit?.limit, { what: 'gap at most', zero: true });
  return { ...(share ? { seeThrough: share } : {}), ...(gap ? { gap } : {}) };
}

/** A percentage as a share from 0 to 1. */
function readShare(reader: Reader, node: ast.SeeThroughLimit): Sourced<number> | undefined {
  const { percent } = node;
  if (percent === undefined) return undefined;
  const value = Number(percent) / 100;
  if (value >= 0 && value <= 1) return { value, origin: originOf(reader, node) };
  const args = { what: 'see-through', size: `${percent} %`, reason: 'over-100' as const, limit: '100 %' };
  tell(reader, 'impossible-size', originOf(reader, node, 'percent'), args);
  return undefined;
}
