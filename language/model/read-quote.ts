import type * as ast from '../grammar/index.ts';
import { nearNames } from '../grammar/index.ts';
import type { HandStock, Job, Quote, Sourced } from './job.ts';
import { readLength } from './read-length.ts';
import { readPrice } from './read-price.ts';
import { readStock } from './read-stock.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** What a task may be counted by. */
export const TASK_COUNTS = [
  'job',
  'run',
  'bay',
  'post',
  'hole',
  'slat',
  'piece',
  'board',
  'cut',
  'gate',
] as const;
export type TaskCount = (typeof TASK_COUNTS)[number];

/** Rates and prices that the job gives; all that is not given stays out. */
export function readQuote(reader: Reader, nodes: readonly ast.Quote[]): Quote {
  const tasks: Quote['tasks'][number][] = [];
  const prices: Quote['prices'][number][] = [];
  const extras: Quote['extras'][number][] = [];
  const shares = new Map<string, Sourced<number>>();
  let labor: Quote['labor'];
  let deposit: Quote['deposit'];
  for (const statement of nodes.flatMap((node) => node.statements ?? [])) {
    const origin = originOf(reader, statement);
    switch (statement.$type) {
      case 'LaborRate':
        labor ??= readPrice(reader, statement.price);
        break;
      case 'TaskTime': {
        const per = countOf(reader, statement);
        if (per && statement.name !== undefined && statement.minutes !== undefined)
          tasks.push({ name: statement.name, minutes: Number(statement.minutes), per, origin });
        break;
      }
      case 'ItemPrice': {
        const price = readPrice(reader, statement.price);
        if (price && statement.item !== undefined)
          prices.push({ item: statement.item, price: price.value, unit: statement.unit ?? '', origin });
        break;
      }
      case 'Surcharge': {
        const share = shareOf(reader, statement, statement.percent, statement.kind);
        if (share && !shares.has(statement.kind)) shares.set(statement.kind, share);
        break;
      }
      case 'Deposit': {
        const share = shareOf(reader, statement, statement.percent, 'deposit');
        const most = readPrice(reader, statement.limit);
        if (share) deposit ??= { share, ...(most ? { most } : {}) };
        break;
      }
      case 'ExtraLine': {
        const price = readPrice(reader, statement.price);
        if (price && statement.what !== undefined)
          extras.push({
            what: statement.what,
            count: Number(statement.count ?? 1),
            price: price.value,
            origin,
          });
        break;
      }
    }
  }
  const share = (kind: string) => shares.get(kind);
  return {
    ...(nodes[0] ? { origin: originOf(reader, nodes[0]) } : {}),
    ...(labor ? { labor } : {}),
    tasks,
    prices,
    extras,
    overhead: share('overhead'),
    markup: share('markup'),
    margin: share('margin'),
    tax: share('tax'),
    ...(deposit ? { deposit } : {}),
  };
}

function countOf(reader: Reader, node: ast.TaskTime): TaskCount | undefined {
  const word = node.per;
  if (word === undefined) return undefined;
  const known = TASK_COUNTS.find((one) => one === word || `${one}s` === word);
  if (known) return known;
  const suggestion = nearNames(word, TASK_COUNTS, 1)[0] ?? '';
  const args = { word, place: 'count of a task', suggestion, known: TASK_COUNTS.join(', ') };
  tell(reader, 'unknown-word', originOf(reader, node, 'per'), args);
  return undefined;
}

function shareOf(
  reader: Reader,
  node: ast.Surcharge | ast.Deposit,
  percent: string | undefined,
  what: string,
): Sourced<number> | undefined {
  if (percent === undefined) return undefined;
  const value = Number(percent) / 100;
  // A margin of all that is asked would leave nothing for what it costs.
  if (value >= 0 && value <= 1 && !(what === 'margin' && value === 1))
    return { value, origin: originOf(reader, node) };
  const args = { what, size: `${percent} %`, reason: 'over-100' as const, limit: '100 %' };
  tell(reader, 'impossible-size', originOf(reader, node, 'percent'), args);
  return undefined;
}

/** Boards that lie in the yard. */
export function readOnHand(reader: Reader, nodes: readonly ast.OnHand[]): readonly HandStock[] {
  return nodes.flatMap((node) =>
    (node.items ?? []).flatMap((item): HandStock[] => {
      const target = follow(item.stock);
      const stock = target && readStock(reader, target);
      const length = readLength(reader, item.length, { what: 'on hand' });
      const count = Number(item.count);
      if (!stock || !length || !Number.isSafeInteger(count) || count < 1) return [];
      return [{ stock: stock.name, length: length.value, count, origin: originOf(reader, item) }];
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
  const args = { what: 'spares', size: percent, reason: 'over-100' as const, limit: '' };
  tell(reader, 'impossible-size', originOf(reader, node, 'percent'), args);
  return undefined;
}

/** Of each section and length; more is a slip of the pen. */
const MOST_SPARES = 1_000;

/** Kerf and trim of the saw, and spares, as the job states them. */
export function readSaw(
  reader: Reader,
  saw: ast.SawStatement | undefined,
  spares: ast.SparesStatement | undefined,
): Pick<Job, 'saw' | 'spares' | 'leastSpares'> {
  const kerf = readLength(reader, saw?.kerf, { what: 'saw kerf', zero: true });
  const trim = readLength(reader, saw?.trim, { what: 'trim', zero: true });
  const share = sparesOf(reader, spares);
  const least = Number(spares?.least ?? 0);
  return {
    saw: { ...(kerf ? { kerf } : {}), ...(trim ? { trim } : {}) },
    ...(spares && share !== undefined ? { spares: { value: share, origin: originOf(reader, spares) } } : {}),
    ...(least > 0 && Number.isInteger(least) ? { leastSpares: least } : {}),
  };
}
