import type * as ast from '../grammar/index.ts';
import { nearNames } from '../grammar/index.ts';
import { formatLength } from '../units/index.ts';
import type { HandStock, Job } from './job.ts';
import { readLength } from './read-length.ts';
import { readStock } from './read-stock.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** Boards that lie in the yard. */
export function readOnHand(reader: Reader, nodes: readonly ast.OnHand[]): readonly HandStock[] {
  return nodes.flatMap((node) =>
    (node.items ?? []).flatMap((item): HandStock[] => {
      const target = follow(item.stock);
      const stock = target && readStock(reader, target);
      const length = readLength(reader, item.length, { what: 'on hand' });
      const count = Number(item.count);
      if (!stock || !length || !Number.isSafeInteger(count) || count < 1) return [];
      const usable = (item.usable ?? []).flatMap(
        (part) => readLength(reader, part, { what: 'usable' }) ?? [],
      );
      const all = usable.reduce((sum, { value }) => sum + value, 0);
      if (all > length.value) {
        const [size, limit] = [all, length.value].map((ticks) => formatLength(ticks, reader.measure));
        const args = { what: 'usable', size: size ?? '', reason: 'over-board' as const, limit: limit ?? '' };
        tell(reader, 'impossible-size', originOf(reader, item, 'usable'), args);
        return [];
      }
      return [
        {
          stock: stock.name,
          length: length.value,
          count,
          ...(usable.length > 0 ? { usable: usable.map(({ value }) => value) } : {}),
          origin: originOf(reader, item),
        },
      ];
    }),
  );
}

/** Share of spares; nothing where only the least of them is stated. Told where either cannot be. */
function sparesOf(reader: Reader, node: ast.SparesStatement | undefined): number | undefined {
  if (!node) return undefined;
  const { percent = '0', least } = node;
  if (least !== undefined && !(Number.isInteger(Number(least)) && Number(least) <= MOST_SPARES)) {
    const reason = Number.isInteger(Number(least)) ? ('too-many' as const) : ('not-whole' as const);
    const args = { what: 'spares', count: least, reason, least: 1, most: MOST_SPARES };
    tell(reader, 'absurd-count', originOf(reader, node, 'least'), args);
  }
  if (Number(percent) <= 100) return Number(percent) / 100;
  const args = { what: 'spares', size: `${percent} %`, reason: 'over-100' as const, limit: '' };
  tell(reader, 'impossible-size', originOf(reader, node, 'percent'), args);
  return undefined;
}

/** Of each section and length; more is a slip of the pen. */
const MOST_SPARES = 1_000;

const AIMS = ['cost', 'waste'] as const;

/** What boards are planned for; told where the word is none. */
export function readCutAim(
  reader: Reader,
  node: ast.CutAim | undefined,
): Pick<Job, 'cutFor' | 'settingsWithin'> {
  if (node?.few) {
    const over = overOf(reader, node);
    return { cutFor: { value: 'settings', origin: originOf(reader, node) }, ...over };
  }
  if (!node || node.what === undefined) return {};
  const value = AIMS.find((one) => one === node.what);
  if (value) return { cutFor: { value, origin: originOf(reader, node) } };
  const suggestion = nearNames(node.what, AIMS, 1)[0] ?? '';
  const args = { word: node.what, place: 'cut for least', suggestion, known: AIMS.join(', ') };
  tell(reader, 'unknown-word', originOf(reader, node, 'what'), args);
  return {};
}

/** What may be paid for fewer settings; told where it is more than twice the least. */
function overOf(reader: Reader, node: ast.CutAim): Pick<Job, 'settingsWithin'> {
  if (node.over === undefined) return {};
  const origin = originOf(reader, node, 'over');
  if (Number(node.over) <= 100) return { settingsWithin: { value: Number(node.over) / 100, origin } };
  const args = { what: 'share more', size: `${node.over} %`, reason: 'over-100' as const, limit: '' };
  tell(reader, 'impossible-size', origin, args);
  return {};
}

/** Kerf and trim of the saw, what is kept, and spares, as the job states them. */
export function readSaw(
  reader: Reader,
  saw: ast.SawStatement | undefined,
  spares: ast.SparesStatement | undefined,
): Pick<Job, 'saw' | 'spares' | 'leastSpares'> {
  const kerf = readLength(reader, saw?.kerf, { what: 'saw kerf', zero: true });
  const trim = readLength(reader, saw?.trim, { what: 'trim', zero: true });
  const keep = readLength(reader, saw?.keep, { what: 'keep' });
  const share = sparesOf(reader, spares);
  const least = Number(spares?.least ?? 0);
  return {
    saw: { ...(kerf ? { kerf } : {}), ...(trim ? { trim } : {}), ...(keep ? { keep } : {}) },
    ...(spares && share !== undefined ? { spares: { value: share, origin: originOf(reader, spares) } } : {}),
    ...(least > 0 && Number.isInteger(least) ? { leastSpares: least } : {}),
  };
}
