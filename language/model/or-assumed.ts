import type * as ast from '../grammar/index.ts';
import type { Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { assumedLength, type Reader } from './reader.ts';

/** A gap as stated, or as usual; undefined when what is stated cannot be used. */
export function orAssumed(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: { readonly $type: string; readonly value?: ast.Length } | undefined,
  name: 'tops' | 'endGap' | 'hingeGap' | 'latchGap',
): Sourced<number> | undefined {
  if (!statement) return assumedLength(reader, block, name);
  const what = name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return readLength(reader, statement.value, { what, zero: true });
}
