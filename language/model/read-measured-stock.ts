import type * as ast from '../grammar/index.ts';
import type { FlatStock, Origin } from './job.ts';
import { blocksOf } from './read-measured-boards.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';
import { useFlat } from './use-stock.ts';

/** Stock that was measured, once each. A block of no board, or a second one of the same, is told. */
export function readMeasuredStock(reader: Reader): readonly FlatStock[] {
  const seen = new Map<ast.Stock, Origin>();
  return blocksOf(reader).flatMap((block): readonly FlatStock[] => {
    const node = follow(block.stock);
    const used = useFlat(reader, block.stock, { node: block, property: 'stock', place: 'measured board' });
    if (!node || !used) return [];
    const origin = originOf(reader, block);
    const earlier = seen.get(node);
    if (!earlier) {
      seen.set(node, origin);
      return [used.value];
    }
    const what = `measured board ${used.value.name}`;
    tell(reader, 'stated-twice', origin, { what, block: 'file' }, [{ origin: earlier, note: what }]);
    return [];
  });
}
