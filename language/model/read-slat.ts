import type * as ast from '../grammar/index.ts';
import type { FlatStock, Sourced } from './job.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';
import { type Bindings, resolveParameter } from './resolve-parameter.ts';
import { flatFrom } from './use-stock.ts';

/** Where a slat is named inside a pattern or a fit. */
type SlatNode = ast.RepeatItem | ast.EndRule | ast.ChangeWidth;

/**
 * The stock a slat is made of, named directly or by a parameter. Its origin is the node that names it,
 * so that a piece leads back to its place in the repeat. Undefined when there is none that can be used.
 */
export function readSlat(
  reader: Reader,
  node: SlatNode,
  place: string,
  bindings: Bindings,
): Sourced<FlatStock> | undefined {
  const origin = originOf(reader, node);
  const source = follow(node.slat);
  if (!source) return undefined;
  if (source.$type !== 'Parameter') {
    const found = flatFrom(reader, source, { node, property: 'slat', place });
    return found && { value: found.value, origin };
  }
  const meaning = resolveParameter(reader, source, bindings);
  if (!meaning) return undefined;
  if (meaning.kind === 'stock') {
    const found = flatFrom(reader, meaning.stock, { node: meaning.at, place });
    return found && { value: found.value, origin };
  }
  const args = { name: meaning.text, kind: 'length', needed: 'board, rip, rail or cleat', place };
  tell(reader, 'wrong-kind', originOf(reader, meaning.at), args, [{ origin, note: place }]);
  return undefined;
}
