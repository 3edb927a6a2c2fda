import { isMetric, type Job } from '../../language/model/index.ts';
import {
  type BoardPlan,
  type Item,
  type OrderLine,
  orderOf,
  type PlannedBoard,
  type Takeoff,
} from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, type Ticks, toInches, toMm } from '../../language/units/index.ts';
import type { Material, MaterialKind } from '../protocol.ts';
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
  const { demand, bought, none, waste, cost, strips, buy, used } = plan;
  const { name } = demand.stock;
  const id = `boards/${name}`;
  const ripped = bought.name === name ? '' : `, ${many(strips, 'strip')} from each ${bought.name}`;
  if (none)
    return { id, label: name, note: whyNone(plan, job), kind: 'trouble', tip: `${demand.count} pieces` };
  const lengths = [...buy.keys()].sort((a, b) => b - a);
  const hand = [...used.keys()].sort((a, b) => b - a);
  return {
    id,
    label: name,
    note: [
      `${many(demand.count, 'piece')}${ripped}`,
      ...(cost ? [formatMoney(cost)] : []),
      `${percent(waste)} waste`,
      proofOfPlan(plan),
    ].join(', '),
    kind: 'stock',
    under: [
      ...lengths.map((length) => lengthLine(plan, length, false, order, job, id, pieces)),
      ...hand.map((length) => lengthLine(plan, length, true, order, job, id, pieces)),
    ],
  };
}

function whyNone({ none }: BoardPlan, job: Job): string {
  if (none?.kind === 'no-lengths') return 'states no lengths, so no boards can be planned';
  if (none?.kind === 'too-long')
    return `${many(none.labels.length, 'piece')} longer than any board gives, ${formatLength(Math.floor(none.longest), job.measure.value)}`;
  return 'no plan was found yet';
}

/** Boards of one length, bought or on hand, and under it how they are cut. */
function lengthLine(
  plan: BoardPlan,
  length: Ticks,
  onHand: boolean,
  order: readonly OrderLine[],
  job: Job,
  stock: string,
  pieces: Record<string, readonly string[]>,
): Material {
  const shown = formatLength(length, job.measure.value);
  const count = (onHand ? plan.used : plan.buy).get(length) ?? 0;
  const id = `${stock}/${onHand ? 'on hand ' : ''}${shown}`;
  const price = onHand ? undefined : plan.bought.prices?.get(length)?.value;
  const run = isMetric(job.measure.value)
    ? `${tenth((count * toMm(length)) / 1000)} m`
    : `${tenth((count * toInches(length)) / 12)} ft`;
  // Spares are those of the stock that is bought, whatever is ripped from it.
  const own = plan.bought.name === plan.demand.stock.name;
  const line = order.find((one) => one.stock === plan.bought.name && one.length === length);
  const spare = own && !onHand && line && line.spare > 0 ? [`and ${line.spare} spare`] : [];
  return {
    id,
    label: `${count} of ${shown}${plan.bought.name === plan.demand.stock.name ? '' : ` ${plan.bought.name}`}`,
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
    under: cutLines(
      plan.boards.filter((board) => board.length === length && board.onHand === onHand),
      job,
      id,
      pieces,
    ),
  };
}

/** Boards cut alike in one line, with how often; those with the longest pieces first, as they are cut. */
function cutLines(
  boards: readonly PlannedBoard[],
  job: Job,
  length: string,
  pieces: Record<string, readonly string[]>,
): readonly Material[] {
  const shown = (ticks: Ticks) => formatLength(ticks, job.measure.value);
  const alike = new Map<string, PlannedBoard[]>();
  for (const board of boards) {
    const counts = new Map<Ticks, number>();
    for (const one of board.pieces) counts.set(one.length, (counts.get(one.length) ?? 0) + 1);
    const cuts = [...counts].map(([each, count]) => `${count} of ${shown(each)}`).join(', ');
    const held = alike.get(cuts);
    if (held) held.push(board);
    else alike.set(cuts, [board]);
  }
  return [...alike].map(([cuts, same]): Material => {
    const id = `${length}/${cuts}`;
    const keys = same.flatMap((board) => board.pieces.map(({ piece }) => piece.key));
    pieces[id] = keys;
    return {
      id,
      label: `${same.length} into ${cuts}`,
      note: `left ${shown(Math.floor(same[0]?.offcut ?? 0))}`,
      kind: 'cut',
      pieces: keys.length,
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
