import { mkdirSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { isMetric, type Job } from '../../language/model/index.ts';
import {
  type BoardPlan,
  orderOf,
  type Price,
  type Takeoff,
  takeoffOf,
} from '../../language/takeoff/index.ts';
import { formatLength, formatMoney, toMm } from '../../language/units/index.ts';
import { asCsv, fileNameOf, orderRows, ticketsOf } from '../sheets/index.ts';
import type { Request } from './arguments.ts';
import { tellBrokenRuns } from './broken-runs.ts';
import { openFiles } from './open-files.ts';
import { printable } from './printable.ts';
import type { Terminal } from './run-command-line.ts';

/** Of the JSON form; raised when a field changes its meaning. */
const VERSION = 1;
const SECONDS = 10;

/** Prints what is bought and cut, and what it costs; 1 when a run or a stock could not be worked out. */
export async function takeoff(
  { files, format, seconds = SECONDS, out }: Request,
  folder: string,
  terminal: Terminal,
): Promise<number> {
  const opened = await openFiles(files, folder);
  let code = 0;
  const told: unknown[] = [];
  for (const { path, work } of opened.files) {
    const { job, layout } = work;
    const end = performance.now() + seconds * 1000;
    const found = takeoffOf(layout, job, () => performance.now() > end);
    if (format === 'json') told.push({ file: path, ...asJson(found, job) });
    else if (format === 'csv') terminal.out(asCsv(orderRows(found, job)));
    else terminal.out(`${asText(found, job).map(printable).join('\n')}\n`);
    if (out) writeTickets(found, job, resolve(folder, out), terminal);
    for (const plan of found.plans) {
      if (!plan.none) continue;
      code = 1;
      terminal.error(`${path}: ${printable(whyNone(plan, job))}\n`);
    }
  }
  if (tellBrokenRuns(opened.files, terminal) > 0) code = 1;
  if (format === 'json') terminal.out(`${JSON.stringify({ version: VERSION, takeoffs: told }, null, 2)}\n`);
  return code;
}

function writeTickets(found: Takeoff, job: Job, out: string, terminal: Terminal): void {
  mkdirSync(out, { recursive: true });
  for (const [name, svg] of ticketsOf(found, job)) {
    const file = join(out, fileNameOf(name));
    writeFileSync(file, svg);
    terminal.error(`${file}\n`);
  }
}

function whyNone({ none, demand }: BoardPlan, job: Job): string {
  const { name } = demand.stock;
  if (none?.kind === 'no-lengths') return `${name} states no \`lengths\`, so no boards can be planned.`;
  if (none?.kind === 'too-long')
    return `${name}: ${none.labels.length} pieces are longer than any board gives (${formatLength(Math.floor(none.longest), job.measure.value)}).`;
  return `${name}: no plan was found; ask for more --seconds.`;
}

function asText(found: Takeoff, job: Job): string[] {
  const measure = job.measure.value;
  const metric = isMetric(measure);
  const length = (ticks: number) => formatLength(ticks, measure);
  const lines = [`Takeoff${job.name === undefined ? '' : ` of ${job.name}`}`, '', 'To buy'];
  for (const one of orderOf(found.plans, job, metric)) {
    const spare = one.spare > 0 ? ` and ${one.spare} spare` : '';
    const run = metric ? `${round(one.run)} m` : `${round(one.run)} ft`;
    const volume = metric ? `${round(one.volume, 3)} m³` : `${round(one.volume)} board ft`;
    lines.push(
      `  ${one.needed}${spare} x ${one.stock}, ${length(one.section[0])} x ${length(one.section[1])}, ${length(one.length)}: ${run}, ${volume}`,
    );
  }
  for (const plan of found.plans) {
    if (plan.boards.length === 0) continue;
    lines.push('', headOf(plan));
    for (const [text, times] of alike(plan, job)) lines.push(`  ${times} x ${text}`);
  }
  if (found.items.length > 0) {
    lines.push('', 'Besides');
    for (const { what, count, unit, rule } of found.items)
      lines.push(`  ${round(count)} ${unit === '' ? '' : `${unit} `}${what} (${rule})`);
  }
  if (found.price) lines.push('', ...priceText(found.price, job));
  return lines;
}

function headOf({ demand, bought, strips, waste, proven, cost, bound }: BoardPlan): string {
  const pieces = `${demand.count} pieces of ${demand.stock.name}`;
  const ripped = strips > 1 ? `, ${strips} strips from a ${bought.name}` : '';
  const gap =
    cost && bound ? `; may be ${formatMoney({ ...cost, minor: cost.minor - bound.minor })} too dear` : '';
  return `${pieces}${ripped}: ${round(100 * waste)} % waste, ${proven ? 'proven cheapest' : `not proven${gap}`}`;
}

/** Boards cut alike, once with how often. */
function alike({ boards }: BoardPlan, job: Job): ReadonlyMap<string, number> {
  const length = (ticks: number) => formatLength(ticks, job.measure.value);
  const found = new Map<string, number>();
  for (const board of boards) {
    const counts = new Map<number, number>();
    for (const { length: piece } of board.pieces) counts.set(piece, (counts.get(piece) ?? 0) + 1);
    const cuts = [...counts].map(([piece, count]) => `${count} of ${length(piece)}`).join(', ');
    const from = board.onHand ? `${length(board.length)} on hand` : length(board.length);
    const text = `${from}: ${cuts}; left ${length(Math.floor(board.offcut))}`;
    found.set(text, (found.get(text) ?? 0) + 1);
  }
  return found;
}

function priceText(price: Price, job: Job): string[] {
  const money = (minor: number) => formatMoney({ minor, currency: price.currency });
  const lines = price.lines.map(({ group, what, count, unit, minor, lacks }) => {
    const size =
      group === 'boards'
        ? ` ${formatLength(Number(unit), job.measure.value)}`
        : unit === ''
          ? ''
          : ` ${unit}`;
    return `  ${what}: ${round(count)}${group === 'boards' ? ' x' : ''}${size}: ${minor === undefined ? `no ${lacks} is given` : money(minor)}`;
  });
  const { quote } = job;
  const percent = (share: { readonly value: number } | undefined) => `${round(100 * (share?.value ?? 0))} %`;
  return [
    'Price',
    ...lines,
    `  material ${money(price.material)}, labor ${money(price.labor)} (${round(price.minutes / 60)} hours)`,
    ...(quote.overhead ? [`  overhead ${percent(quote.overhead)}: ${money(price.overhead)}`] : []),
    ...(quote.margin
      ? [`  margin ${percent(quote.margin)} of what is asked: ${money(price.profit)}`]
      : quote.markup
        ? [`  markup ${percent(quote.markup)} on cost: ${money(price.profit)}`]
        : []),
    `  net ${money(price.net)}${quote.tax ? `, tax ${percent(quote.tax)} ${money(price.tax)}, total ${money(price.gross)}` : ''}`,
    ...(price.deposit === undefined
      ? []
      : [`  deposit ${money(price.deposit)}; caps on deposits differ by place`]),
    ...(price.whole ? [] : ['  Lines without a price are not in the sum.']),
  ];
}

/** Lengths in millimeters, money in minor units. */
function asJson(found: Takeoff, job: Job) {
  const mm = (ticks: number) => Math.round(toMm(ticks) * 1e4) / 1e4;
  return {
    proven: found.proven,
    stock: found.plans.map((plan) => ({
      stock: plan.demand.stock.name,
      bought: plan.bought.name,
      strips: plan.strips,
      pieces: plan.demand.count,
      proven: plan.proven,
      cost: plan.cost?.minor ?? null,
      bound: plan.bound?.minor ?? null,
      waste: plan.waste,
      none: plan.none?.kind ?? null,
      buy: [...plan.buy].map(([length, count]) => ({ length: mm(length), count })),
      boards: plan.boards.map((board) => ({
        length: mm(board.length),
        onHand: board.onHand,
        offcut: mm(board.offcut),
        pieces: board.pieces.map(({ piece, length }) => ({
          key: piece.key,
          label: piece.label,
          length: mm(length),
        })),
      })),
    })),
    items: found.items,
    price: found.price
      ? {
          ...found.price,
          lines: found.price.lines.map((line) =>
            line.group === 'boards' ? { ...line, unit: `${mm(Number(line.unit))} mm` } : line,
          ),
        }
      : null,
    currency: found.price?.currency ?? job.currency ?? null,
  };
}

const round = (value: number, digits = 1): number => Math.round(value * 10 ** digits) / 10 ** digits;
