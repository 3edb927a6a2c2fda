import type * as ast from '../grammar/index.ts';
import type { ChannelStock, FlatStock, Sourced } from './job.ts';
import { tellMissing } from './pick-statements.ts';
import { follow, originOf, type Reader } from './reader.ts';
import { channelFrom, flatFrom, useFlat } from './use-stock.ts';

/** A statement that names flat stock. */
type StockStatement = ast.CleatsStatement | ast.RailsStatement | ast.FrameStatement;

/**
 * Flat stock as stated; when it is not, the only stock of its kind that the file sees. When there is
 * none or a choice, that is told at the block's name.
 */
export function statedOrOnly(
  reader: Reader,
  block: ast.Run | ast.Gate,
  what: 'cleats' | 'rails' | 'frame',
  statement: StockStatement | undefined,
): Sourced<FlatStock> | undefined {
  if (statement) return useFlat(reader, statement.stock, { node: statement, property: 'stock', place: what });
  const seen = stockSeen(reader, what === 'cleats' ? 'Cleat' : 'Rail');
  const [only, ...others] = seen;
  if (!only || others.length > 0) {
    return tellMissing(
      reader,
      block,
      what,
      seen.map(({ name }) => name),
    );
  }
  const found = flatFrom(reader, only, { node: block, property: 'name', place: what });
  return found && { value: found.value, origin: originOf(reader, only, undefined, 'derived') };
}

/** The channels slats end in, by the same rule. */
export function channelsStatedOrOnly(
  reader: Reader,
  block: ast.Run | ast.Gate,
  statement: ast.SlatsStatement,
): Sourced<ChannelStock> | undefined {
  const stated = follow(statement.channel);
  if (statement.channel)
    return stated && channelFrom(reader, stated, { node: statement, property: 'channel', place: 'slats' });
  const seen = stockSeen(reader, 'Channel');
  const [only, ...others] = seen;
  if (!only || others.length > 0) {
    const names = seen.map(({ name }) => name);
    return tellMissing(reader, block, 'channels', names);
  }
  const found = channelFrom(reader, only, { node: statement, place: 'slats' });
  return found && { value: found.value, origin: originOf(reader, only, undefined, 'derived') };
}

type SeenStock = ast.Cleat | ast.Rail | ast.Channel;

/** Stock of one kind in the file and the files it uses; of one name only the nearest. */
function stockSeen(reader: Reader, type: SeenStock['$type']): readonly SeenStock[] {
  const seen = new Map<string, SeenStock>();
  for (const file of [reader.root, ...reader.used]) {
    for (const element of file.elements ?? []) {
      if (element.$type !== 'Cleat' && element.$type !== 'Rail' && element.$type !== 'Channel') continue;
      if (element.$type === type && element.name?.trim() && !seen.has(element.name))
        seen.set(element.name, element);
    }
  }
  return [...seen.values()];
}
