import type * as ast from '../grammar/index.ts';
import type { FitSpec, InfillSpec, Mounting, Sourced } from './job.ts';
import { channelsStatedOrOnly } from './only-stock.ts';
import type { ReadFill } from './read-fill.ts';
import { readFit } from './read-fit.ts';
import { readLength } from './read-length.ts';
import { assumed, assumedLength, originOf, type Reader, tell } from './reader.ts';

/** How the slats are held: as stated, else as is usual in such a block; undefined when what is stated cannot be. */
export function readMounting(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: ast.SlatsStatement | undefined,
  usual: Mounting,
): Sourced<Mounting> | undefined {
  if (!statement || !HOWS.some((how) => statement[how])) return assumed(reader, block, usual);
  const origin = originOf(reader, statement);
  if (statement.grooves) return readGrooves(reader, block, statement);
  if (statement.channels) {
    const channel = channelsStatedOrOnly(reader, block, statement);
    return channel && { value: { kind: 'channels', channel }, origin };
  }
  if (statement.split) {
    if (block.$type === 'Run') return { value: { kind: 'split' }, origin };
    tell(reader, 'wrong-statement', origin, { what: 'slats through split posts', block: 'gate' });
    return assumed(reader, block, usual);
  }
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

const HOWS = ['between', 'face', 'both', 'grooves', 'channels', 'split'] as const;

/** Of two depths or two widths the first counts. */
function readGrooves(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: ast.SlatsStatement,
): Sourced<Mounting> | undefined {
  const stated = (what: ast.GrooveSize['what']) => statement.sizes.find((size) => size.what === what);
  const [deep, wide] = [stated('deep'), stated('wide')];
  const depth = deep
    ? readLength(reader, deep.value, { what: 'depth of a groove' })
    : assumedLength(reader, block, 'grooveDepth');
  const width = wide && readLength(reader, wide.value, { what: 'width of a groove' });
  if (!depth || (wide && !width)) return undefined;
  const room = assumedLength(reader, block, 'grooveRoom').value;
  const value: Mounting = { kind: 'grooves', depth, ...(width ? { width } : {}), room };
  return { value, origin: originOf(reader, statement) };
}

/** How screws are kept from telling the sides apart, where it is stated. */
export function readScrewsLook(
  reader: Reader,
  statement: ast.ScrewsLook | undefined,
): Pick<InfillSpec, 'screws'> {
  if (!statement?.look) return {};
  return { screws: { value: statement.look, origin: originOf(reader, statement) } };
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
