import type * as ast from '../grammar/index.ts';
import { formatLength, type Money, TICKS_PER_FOOT, TICKS_PER_MM, type Ticks } from '../units/index.ts';
import { MOST_LENGTHS } from './bounds.ts';
import type { ChannelStock, FlatStock, PostStock, Sourced, Stock } from './job.ts';
import { pickStatements, tellMissing } from './pick-statements.ts';
import { readLength } from './read-length.ts';
import { readMaterial } from './read-material.ts';
import { asMeasured, asPlanned, tellTooNarrow } from './read-measured-boards.ts';
import { readPrice } from './read-price.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

const IN_POST = new Set([
  'AlongStatement',
  'ThroughStatement',
  'WallStatement',
  'MadeOfStatement',
  'LengthsStatement',
]);
const IN_CLEAT = new Set(['WidthStatement', 'ThicknessStatement', 'MadeOfStatement', 'LengthsStatement']);
const IN_CHANNEL = new Set([...IN_CLEAT, 'WallStatement']);
const IN_BOARD = new Set([...IN_CLEAT, 'WallStatement', 'SpanLimit']);

/** A stock as stated, and as measured where it was; undefined when a size is missing or cannot be. Read once, told once. */
export function readStock(reader: Reader, node: ast.Stock): Stock | undefined {
  if (reader.stocks.has(node)) return reader.stocks.get(node);
  // Whoever comes back here while it is being read comes round in a circle.
  reader.stocks.set(node, undefined);
  const planned = readOnce(reader, node);
  const flat = planned && planned.kind !== 'post' && planned.kind !== 'channel';
  const stock = flat ? asMeasured(reader, node, planned) : planned;
  reader.stocks.set(node, stock);
  return stock;
}

function readOnce(reader: Reader, node: ast.Stock): Stock | undefined {
  if (!node.name?.trim()) return undefined;
  switch (node.$type) {
    case 'Post':
      return readPost(reader, node);
    case 'Rip':
      return readRip(reader, node);
    case 'Channel':
      return readChannel(reader, node);
    default:
      return readFlat(reader, node);
  }
}

function readPost(reader: Reader, node: ast.Post): PostStock | undefined {
  const pick = pickStatements(reader, 'post', node.statements, IN_POST);
  const along = size(reader, node, 'along', pick('AlongStatement'));
  const through = size(reader, node, 'through', pick('ThroughStatement'));
  const rest = {
    ...wallOf(reader, pick('WallStatement')),
    ...materialOf(reader, pick('MadeOfStatement')),
    ...lengthsOf(reader, pick('LengthsStatement')),
  };
  if (!along || !through) return undefined;
  return { kind: 'post', name: node.name, origin: originOf(reader, node), along, through, ...rest };
}

/** A channel has a wall, and a space within it. */
function readChannel(reader: Reader, node: ast.Channel): ChannelStock | undefined {
  const pick = pickStatements(reader, 'channel', node.statements, IN_CHANNEL);
  const width = size(reader, node, 'width', pick('WidthStatement'));
  const thickness = size(reader, node, 'thickness', pick('ThicknessStatement'));
  const wall = size(reader, node, 'wall', pick('WallStatement'));
  const rest = {
    ...materialOf(reader, pick('MadeOfStatement')),
    ...lengthsOf(reader, pick('LengthsStatement')),
  };
  if (!width || !thickness || !wall) return undefined;
  const least = Math.min(width.value, Math.floor(thickness.value / 2));
  if (wall.value >= least) {
    const [own = '', w, t] = [wall, width, thickness].map(({ value }) => formatLength(value, reader.measure));
    const args = { what: 'wall', size: own, reason: 'no-pocket' as const, limit: `${w} by ${t}` };
    tell(reader, 'impossible-size', wall.origin, args);
    return undefined;
  }
  return {
    kind: 'channel',
    name: node.name,
    origin: originOf(reader, node),
    width,
    thickness,
    wall,
    ...rest,
  };
}

function readFlat(reader: Reader, node: ast.Board | ast.Rail | ast.Cleat): FlatStock | undefined {
  const kind = node.$type === 'Board' ? 'board' : node.$type === 'Rail' ? 'rail' : 'cleat';
  const pick = pickStatements(reader, kind, node.statements, kind === 'cleat' ? IN_CLEAT : IN_BOARD);
  const width = size(reader, node, 'width', pick('WidthStatement'));
  const thickness = size(reader, node, 'thickness', pick('ThicknessStatement'));
  const spanLimit = readLength(reader, pick('SpanLimit')?.limit, { what: 'span' });
  const rest = {
    ...wallOf(reader, pick('WallStatement')),
    ...materialOf(reader, pick('MadeOfStatement')),
    ...lengthsOf(reader, pick('LengthsStatement')),
  };
  if (!width || !thickness) return undefined;
  const origin = originOf(reader, node);
  return { kind, name: node.name, origin, width, thickness, ...(spanLimit ? { spanLimit } : {}), ...rest };
}

/** A rip is its board made narrower: thickness, material, lengths and span are the board's. */
function readRip(reader: Reader, node: ast.Rip): FlatStock | undefined {
  const width = readLength(reader, node.width, { what: 'width' });
  if (comesRound(node)) {
    tell(reader, 'circular', originOf(reader, node), { name: node.name, kind: 'rip' });
    return undefined;
  }
  const parent = useFlat(reader, node.parent, { node, property: 'parent', place: 'rip' })?.value;
  if (!width || !parent) return undefined;
  const board = asPlanned(parent).width.value;
  if (width.value >= board) {
    const [size, limit] = [width.value, board].map((ticks) => formatLength(ticks, reader.measure));
    const args = { what: 'width', size: size ?? '', reason: 'not-narrower' as const, limit: limit ?? '' };
    tell(reader, 'impossible-size', width.origin, args, [{ origin: parent.origin, note: parent.kind }]);
    return undefined;
  }
  if (width.value >= parent.width.value) {
    tellTooNarrow(reader, node.name, width.value, parent);
    return undefined;
  }
  const { thickness, material, lengths, prices, spanLimit } = parent;
  return {
    kind: 'rip',
    name: node.name,
    origin: originOf(reader, node),
    width,
    thickness,
    lengths,
    ...(prices ? { prices } : {}),
    parent,
    ...(material ? { material } : {}),
    ...(spanLimit ? { spanLimit } : {}),
  };
}

/** Whether a rip is, through others, ripped from itself. */
function comesRound(rip: ast.Rip): boolean {
  const passed = new Set<ast.Stock>();
  let next: ast.Stock | undefined = rip;
  while (next?.$type === 'Rip' && !passed.has(next)) {
    passed.add(next);
    next = follow(next.parent);
  }
  return next === rip;
}

function size(
  reader: Reader,
  block: ast.Stock,
  what: string,
  statement: { readonly value: ast.Length } | undefined,
): Sourced<Ticks> | undefined {
  if (!statement) return tellMissing(reader, block, what);
  return readLength(reader, statement.value, { what });
}

function wallOf(reader: Reader, statement: ast.WallStatement | undefined): Pick<Stock, 'wall'> {
  const wall = readLength(reader, statement?.value, { what: 'wall' });
  return wall ? { wall } : {};
}

function materialOf(reader: Reader, statement: ast.MadeOfStatement | undefined): Pick<Stock, 'material'> {
  const node = follow(statement?.material);
  const material = node && readMaterial(reader, node);
  return material ? { material } : {};
}

/** Of one board; a price by length times that, to the nearest minor unit. */
function priceOf(reader: Reader, sold: ast.SoldLength, length: Ticks): Sourced<Money> | undefined {
  const price = readPrice(reader, sold.price);
  if (!price || sold.unit === undefined) return price;
  const unit = {
    foot: TICKS_PER_FOOT,
    ft: TICKS_PER_FOOT,
    meter: 1000 * TICKS_PER_MM,
    m: 1000 * TICKS_PER_MM,
  }[sold.unit];
  if (unit === undefined) {
    const args = { word: sold.unit, place: 'unit of a price', suggestion: 'foot', known: 'foot, meter' };
    tell(reader, 'unknown-word', originOf(reader, sold, 'unit'), args);
    return undefined;
  }
  return { ...price, value: { ...price.value, minor: Math.round((price.value.minor * length) / unit) } };
}

function lengthsOf(
  reader: Reader,
  statement: ast.LengthsStatement | undefined,
): Pick<Stock, 'lengths' | 'prices'> {
  const stated = statement?.lengths ?? [];
  if (statement && stated.length > MOST_LENGTHS) {
    const count = String(stated.length);
    const args = { what: 'lengths', count, reason: 'too-many' as const, least: 1, most: MOST_LENGTHS };
    tell(reader, 'absurd-count', originOf(reader, statement), args);
  }
  const prices = new Map<Ticks, Sourced<Money>>();
  const lengths = stated.slice(0, MOST_LENGTHS).flatMap((sold) => {
    const length = readLength(reader, sold.length, { what: 'lengths' });
    const price = length && priceOf(reader, sold, length.value);
    if (length && price) prices.set(length.value, price);
    return length ?? [];
  });
  return {
    lengths: lengths.sort((a, b) => a.value - b.value),
    ...(prices.size > 0 ? { prices } : {}),
  };
}
