import { hashText } from '../../language/drawing/index.ts';
import { isMetric, type Job } from '../../language/model/index.ts';
import {
  type BoardPlan,
  type Item,
  type OrderLine,
  orderOf,
  type PlannedBoard,
  piecesOf,
  type Takeoff,
} from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Ticks, toInches, toMm } from '../../language/units/index.ts';
import type { Material, MaterialKind } from '../protocol.ts';
import { cutWords, whyNoPlan } from '../sheets/index.ts';
import { priceLines } from './price-lines.ts';
import { countsOf, many, percent, proofOfPlan } from './words.ts';

/** Lines of what is bought, and the keys of the pieces under them by the line's id. */
export interface MaterialLines {
  readonly lines: readonly Material[];
  readonly pieces: Readonly<Record<string, readonly string[]>>;
}

/** Names of items by the heading they stand under; all others are hardware. */
const HEADINGS: readonly { kind: MaterialKind; label: string; names: readonly string[] }[] = [
  { kind: 'concrete', label: 'Concrete and gravel', names: ['concrete', 'gravel'] },
  { kind: 'finish', label: 'Finish', names: ['finish', 'sealer'] },
];

/** What is bought: boards and posts by stock with the pieces cut from each, then what is bought besides, then the price. */
export function materialLines(takeoff: Takeoff, job: Job): MaterialLines {
  const pieces: Record<string, readonly string[]> = {};
  const order = orderOf(takeoff.plans, job, isMetric(job.measure.value));
  const stock = takeoff.plans.map((plan) => stockLine(plan, order, job, pieces));
  const others = HEADINGS.flatMap(({ names }) => names);
  const under = (items: readonly Item[]) => items.map(itemLine);
  const groups: readonly (Material | undefined)[] = [
    group('boards', 'Boards and posts', stock, countsOf(takeoff.plans)),
    group('hardware', 'Hardware', under(takeoff.items.filter(({ name }) => !others.includes(name)))),
    ...HEADINGS.map(({ kind, label, names }) =>
      group(kind, label, under(takeoff.items.filter(({ name }) => names.includes(name)))),
    ),
    takeoff.price && group('price', 'Price', priceLines(takeoff.price, job), totalOf(takeoff)),
  ];
  return { lines: groups.flatMap((one) => one ?? []), pieces };
}

function group(
  kind: MaterialKind,
  label: string,
  under: readonly Material[],
  note = '',
): Material | undefined {
  return under.length > 0 ? { id: kind, label, kind, under, ...(note === '' ? {} : { note }) } : undefined;
}

const totalOf = ({ price }: Takeoff): string =>
  price ? formatMoney({ minor: price.gross, currency: price.currency }) : '';

function stockLine(
  plan: BoardPlan,
  order: readonly OrderLine[],
  job: Job,
  pieces: Record<string, readonly string[]>,
): Material {
  const { demands, bought, none, waste, cost, boards } = plan;
  const { name } = bought;
  const id = `boards/${name}`;
  const [only] = demands;
  const counts =
    demands.length === 1 && only?.stock.name === name
      ? `${many(only.count, 'piece')}${only.temporary ? ', temporary, can be used again' : ''}`
      : demands
          .map(({ stock, count, temporary }) => `${count}${temporary ? ' temporary' : ''} of ${stock.name}`)
          .join(' and ');
  if (none) return { id, label: name, note: whyNoPlan(plan, job), kind: 'trouble', tip: counts };
  // Bought ones first, longest first; a strip may lie in the yard as well as a board.
  const kinds = new Map<string, PlannedBoard[]>();
  for (const board of boards) {
    const key = `${board.onHand !== undefined} ${board.onHand?.length} ${board.stock} ${board.length}`;
    const held = kinds.get(key);
    if (held) held.push(board);
    else kinds.set(key, [board]);
  }
  const sorted = [...kinds.values()].sort(
    ([a], [b]) =>
      Number(a?.onHand !== undefined) - Number(b?.onHand !== undefined) ||
      (b?.length ?? 0) - (a?.length ?? 0),
  );
  return {
    id,
    label: name,
    note: [counts, ...(cost ? [formatMoney(cost)] : []), `${percent(waste)} waste`, proofOfPlan(plan)].join(
      ', ',
    ),
    kind: 'stock',
    under: sorted.map((alike) => lengthLine(plan, alike, order, job, id, pieces)),
  };
}

/** Boards of one length, bought or on hand, and under it how they are cut. */
function lengthLine(
  { bought, buy }: BoardPlan,
  boards: readonly PlannedBoard[],
  order: readonly OrderLine[],
  job: Job,
  under: string,
  pieces: Record<string, readonly string[]>,
): Material {
  const [{ length, onHand, stock } = { length: 0, onHand: undefined, stock: bought.name }] = boards;
  const shown = formatLength(length, job.measure.value);
  const other = stock === bought.name ? '' : ` ${stock}`;
  const count = onHand ? boards.length : (buy.get(length) ?? 0);
  const id = `${under}/${onHand ? 'on hand ' : ''}${shown}${other}`;
  const price = onHand ? undefined : bought.prices?.get(length)?.value;
  const run = isMetric(job.measure.value)
    ? `${tenth((count * toMm(length)) / 1000)} m`
    : `${tenth((count * toInches(length)) / 12)} ft`;
  const line = order.find((one) => one.stock === bought.name && one.length === length);
  const spare = !onHand && line && line.spare > 0 ? [`and ${line.spare} spare`] : [];
  return {
    id,
    label: `${count} of ${shown}${other}`,
    note: [
      ...(onHand ? ['on hand'] : spare),
      run,
      ...(price
        ? [
            `${formatMoney(price)} each`,
            formatMoney({ minor: count * price.minor, currency: price.currency }),
          ]
        : []),
    ].join(', '),
    kind: 'length',
    under: cutLines(boards, job, id, pieces),
  };
}

/** Boards cut alike in one line, with how often. */
function cutLines(
  boards: readonly PlannedBoard[],
  job: Job,
  length: string,
  pieces: Record<string, readonly string[]>,
): readonly Material[] {
  const shown = (ticks: Ticks) => formatLength(Math.floor(ticks), job.measure.value);
  const alike = new Map<string, PlannedBoard[]>();
  for (const board of boards) {
    const cuts = cutWords(board, shown).join(', ');
    const held = alike.get(cuts);
    if (held) held.push(board);
    else alike.set(cuts, [board]);
  }
  return [...alike].map(([cuts, same]): Material => {
    const id = `${length}/${cuts}`;
    const keys = same.flatMap((board) => piecesOf(board).map(({ piece }) => piece.key));
    pieces[id] = keys;
    return {
      id,
      label: `${same.length} into ${cuts}`,
      note: `left ${shown(same[0]?.offcut ?? 0)}`,
      kind: 'cut',
      pieces: keys.length,
      mark: hashText(keys.join('\n')),
    };
  });
}

function itemLine({ name, what, net, count, unit, rule }: Item): Material {
  const counted = Math.abs(count - net) > 0.05 ? `, ${tenth(net)} counted` : '';
  return {
    id: `item/${name}/${what}`,
    label: what,
    note: `${tenth(count)}${unit === '' ? '' : ` ${unit}`}${counted}`,
    tip: rule,
    kind: 'item',
  };
}

const tenth = (value: number): number => Math.round(value * 10) / 10;
