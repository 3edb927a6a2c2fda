import type * as ast from '../grammar/index.ts';
import type { Mounting, Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { assumedLength, type Reader } from './reader.ts';

/** A gap as stated, or as usual; undefined when what is stated cannot be used. */
export function orAssumed(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: { readonly $type: string; readonly value?: ast.Length } | undefined,
  name: 'tops' | 'endGap' | 'channelGap' | 'hingeGap' | 'latchGap',
): Sourced<number> | undefined {
  if (!statement) return assumedLength(reader, block, name);
  const what =
    name === 'channelGap' ? 'end gap' : name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return readLength(reader, statement.value, { what, zero: true });
}

/** The end gap that is usual for slats held so. */
export function usualEndGap(mounting: Mounting | undefined): 'endGap' | 'channelGap' {
  return mounting?.kind === 'channels' ? 'channelGap' : 'endGap';
}
