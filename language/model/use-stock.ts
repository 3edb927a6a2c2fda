import type * as ast from '../grammar/index.ts';
import type { ChannelStock, FlatStock, PostStock, Sourced, Stock } from './job.ts';
import { readStock } from './read-stock.ts';
import { follow, isOwn, type Node, originOf, type Reader, tell } from './reader.ts';
import { wordForStock } from './resolve-parameter.ts';

/** Where stock is asked for: the node that names it, by which property, and what it is wanted for. */
export interface StockPlace {
  readonly node: Node;
  readonly property?: string;
  readonly place: string;
}

type StockReference = { readonly ref?: ast.Stock } | undefined;

/** Stock by width and thickness; undefined when it is missing, broken or a post, the last two told. */
export function useFlat(
  reader: Reader,
  reference: StockReference,
  at: StockPlace,
): Sourced<FlatStock> | undefined {
  const node = follow(reference);
  return node && flatFrom(reader, node, at);
}

/** The same for stock that is found already. */
export function flatFrom(reader: Reader, node: ast.Stock, at: StockPlace): Sourced<FlatStock> | undefined {
  if (node.$type === 'Post' || node.$type === 'Channel')
    return tellWrongKind(reader, node, at, 'board, rip, rail or cleat');
  const stock = soundStock(reader, node, at);
  if (!stock || stock.kind === 'post' || stock.kind === 'channel') return undefined;
  return { value: stock, origin: originOf(reader, at.node, at.property) };
}

/** A post; undefined when it is missing, broken or no post, the last two told. */
export function usePost(
  reader: Reader,
  reference: StockReference,
  at: StockPlace,
): Sourced<PostStock> | undefined {
  const node = follow(reference);
  if (!node) return undefined;
  if (node.$type !== 'Post') return tellWrongKind(reader, node, at, 'post');
  const stock = soundStock(reader, node, at);
  if (stock?.kind !== 'post') return undefined;
  return { value: stock, origin: originOf(reader, at.node, at.property) };
}

/** A channel that is found already; undefined when it is broken or none, which is told. */
export function channelFrom(
  reader: Reader,
  node: ast.Stock,
  at: StockPlace,
): Sourced<ChannelStock> | undefined {
  if (node.$type !== 'Channel') return tellWrongKind(reader, node, at, 'channel');
  const stock = soundStock(reader, node, at);
  if (stock?.kind !== 'channel') return undefined;
  return { value: stock, origin: originOf(reader, at.node, at.property) };
}

function soundStock(
  reader: Reader,
  node: ast.Stock,
  { node: owner, property }: StockPlace,
): Stock | undefined {
  const stock = readStock(reader, node);
  if (!stock && !isOwn(reader, node)) {
    const args = { name: node.name ?? '', kind: wordForStock(node) };
    const related = [{ origin: originOf(reader, node), note: args.kind }];
    tell(reader, 'used-broken', originOf(reader, owner, property), args, related);
  }
  return stock;
}

function tellWrongKind(reader: Reader, stock: ast.Stock, at: StockPlace, needed: string): undefined {
  const kind = wordForStock(stock);
  tell(
    reader,
    'wrong-kind',
    originOf(reader, at.node, at.property),
    { name: stock.name ?? '', kind, needed, place: at.place },
    [{ origin: originOf(reader, stock), note: kind }],
  );
}
