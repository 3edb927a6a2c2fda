import type * as ast from '../grammar/index.ts';
import type { FitSpec, Mounting, Sourced } from './job.ts';
import type { ReadFill } from './read-fill.ts';
import { readFit } from './read-fit.ts';
import { assumed, originOf, type Reader, tell } from './reader.ts';

/** How the slats are held: as stated, else as is usual in such a block. */
export function readMounting(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: ast.SlatsStatement | undefined,
  usual: Mounting,
): Sourced<Mounting> {
  if (!statement || (!statement.between && !statement.face && !statement.both))
    return assumed(reader, block, usual);
  const origin = originOf(reader, statement);
  if (statement.face) return { value: { kind: 'face', face: statement.face }, origin };
  if (statement.both) return { value: { kind: statement.both }, origin };
  // The tree keeps only that they stand between: what they stand between is a matter of the block.
  const word = /\b(posts|frame)$/.exec(statement.$cstNode?.text.trim() ?? '')?.[1];
  if (word && word !== (block.$type === 'Run' ? 'posts' : 'frame')) {
    const args = { what: `slats between ${word}`, block: block.$type.toLowerCase() };
    tell(reader, 'wrong-statement', origin, args);
  }
  return { value: { kind: 'between' }, origin };
}

/** Remedies asked for in the block itself, else in the pattern, else none. */
export function readInfillFit(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: ast.Fit | undefined,
  fill: ReadFill,
): FitSpec {
  if (!statement) return fill.fit ?? { remedies: [], origin: originOf(reader, block, undefined, 'default') };
  const { name, repeat } = fill.spec;
  return readFit(reader, statement, fill.bindings, { name, repeat });
}
