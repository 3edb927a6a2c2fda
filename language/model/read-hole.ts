import type * as ast from '../grammar/index.ts';
import { GRAVEL } from '../standards/index.ts';
import { inches } from '../units/index.ts';
import type { HoleSpec } from './job.ts';
import { readLength } from './read-length.ts';
import { assumed, type Reader } from './reader.ts';

/** The hole of each post; gravel below it is common practice where nothing is said. */
export function readHole(
  reader: Reader,
  block: ast.Run,
  node: ast.HoleStatement | undefined,
): HoleSpec | undefined {
  const diameter = readLength(reader, node?.diameter, { what: 'hole' });
  const gravel = readLength(reader, node?.gravel, { what: 'gravel', zero: true });
  if (!diameter || (node?.gravel && !gravel)) return undefined;
  return { diameter, gravel: gravel ?? assumed(reader, block, inches(GRAVEL.value)) };
}
