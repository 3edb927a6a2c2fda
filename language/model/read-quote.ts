import type * as ast from '../grammar/index.ts';
import { nearNames } from '../grammar/index.ts';
import type { Quote, Sourced } from './job.ts';
import { readPrice } from './read-price.ts';
import { originOf, type Reader, tell } from './reader.ts';

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
