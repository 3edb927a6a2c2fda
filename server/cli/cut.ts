import type { CutAim } from '../../language/model/index.ts';
import {
  type CutBoard,
  type CutInstance,
  type CutPlan,
  type NoPlan,
  searchCuts,
} from '../../language/takeoff/index.ts';
import type { Request } from './arguments.ts';
import { printable } from './printable.ts';
import { type ReadInstance, readInstance } from './read-instance.ts';
import type { Terminal } from './run-command-line.ts';
import { CannotRun } from './usage.ts';

/** A proof is sought this long unless told otherwise. */
const SECONDS = 30;

/** Plans the cuts of a plain list of lengths; 1 when pieces do not fit on what there is. */
export function cut(
  { files, format, seconds = SECONDS, by = 'cost', more = 0 }: Request,
  folder: string,
  terminal: Terminal,
): number {
  const [path = ''] = files;
  const read = readInstance(path, folder);
  const plan = planned(instanceFor(read.instance, by, more), seconds);
  if ('kind' in plan) {
    terminal.error(`${reason(plan, read)}\n`);
    return 1;
  }
  const priced =
    by === 'waste'
      ? withPrices(plan, read)
      : { ...plan, cost: plan.cost / read.money, bound: plan.bound / read.money };
  const boards = plan.boards.map((board) => ({
    ...board,
    price: (read.instance.stock[board.stock]?.price ?? 0) / read.money,
  }));
  terminal.out(format === 'json' ? asJson(priced, boards) : asText(priced, boards, read, by));
  return 0;
}

/** When the cost is proven, a little longer is given to fewer boards at this cost: a share of the time so far. */
const LONGER = 0.25;

function planned(instance: CutInstance, seconds: number): CutPlan | NoPlan {
  try {
    const began = performance.now();
    const end = began + seconds * 1000;
    const search = searchCuts(instance);
    search.run(() => search.proven() || performance.now() > end);
    const longer = Math.min(end, performance.now() + (performance.now() - began) * LONGER + 20);
    search.run(() => performance.now() > longer);
    return search.plan();
  } catch (error) {
    if (error instanceof RangeError) throw new CannotRun(error.message);
    throw error;
  }
}

function instanceFor(instance: CutInstance, by: CutAim, more: number): CutInstance {
  if (by === 'settings') return { ...instance, settingsWithin: more };
  return by === 'waste' ? byLength(instance) : instance;
}

/** Least waste is least length bought: each board costs its length, in parts fine enough for whole numbers. */
function byLength(instance: CutInstance): CutInstance {
  return {
    ...instance,
    stock: instance.stock.map((board) => ({ ...board, price: Math.round(board.length * 1000) })),
  };
}

function withPrices(plan: CutPlan, { instance, money }: ReadInstance): CutPlan {
  const cost = plan.boards.reduce((sum, { stock }) => sum + (instance.stock[stock]?.price ?? 0), 0) / money;
  return { ...plan, cost, bound: plan.bound / 1000 };
}

function asJson(
  { cost, bound, proven, settings, settingsBound }: CutPlan,
  boards: readonly CutBoard[],
): string {
  const listed = boards.map(({ length, price, pieces, parts }) => ({
    length,
    price,
    pieces,
    ...(parts ? { parts } : {}),
  }));
  return `${JSON.stringify({ cost, bound, proven, settings, ...(settingsBound === undefined ? {} : { settingsBound }), boards: listed })}\n`;
}

function asText(
  plan: CutPlan,
  boards: readonly CutBoard[],
  { instance, unit }: ReadInstance,
  by: CutAim,
): string {
  const { cost, bound, proven, settings, settingsBound } = plan;
  const alike = new Map<string, { board: CutBoard; times: number }>();
  for (const board of boards) {
    const key = `${board.stock} ${board.parts ? JSON.stringify(board.parts) : board.pieces.join('\n')}`;
    const held = alike.get(key);
    if (held) held.times++;
    else alike.set(key, { board, times: 1 });
  }
  const lines = [...alike.values()].map(
    ({ board, times }) => `${times} x ${board.length}: ${cutsOf(board)}; offcut ${round(board.offcut)}`,
  );
  const bought = round(boards.reduce((sum, board) => sum + board.length, 0));
  const what = by === 'waste' ? 'length bought' : 'cost';
  const judged = by === 'waste' ? bought : cost;
  const isLeast = judged <= bound + 1e-9;
  const proof = isLeast
    ? `No plan has a lower ${what}: proven.`
    : proven
      ? `The lowest cost is ${round(bound)}: proven.`
      : `Not proven: ${what} may be up to ${round(judged - bound)} lower (bound ${round(bound)}).`;
  const few = settingsBound === undefined ? [] : [settingsText(settings, settingsBound)];
  const kerf = `kerf ${instance.kerf}${instance.trim ? `, trim ${instance.trim} a board` : ''}${unit ? `, in ${unit}` : ''}`;
  return `${[...lines, '', `${boards.length} boards, ${bought} bought, cost ${cost}; ${kerf}.`, proof, ...few].map(printable).join('\n')}\n`;
}

/** How often the saw is set, and whether fewer would do for so much. */
function settingsText(settings: number, least: number): string {
  const proof = settings <= least ? 'no plan for so much takes fewer' : `it may be as few as ${least}`;
  return `${settings} setting${settings === 1 ? '' : 's'} of the saw, boards cut alike together: ${proof}.`;
}

/** What a board is crosscut into; where pieces have widths, with the strips of each part. */
function cutsOf({ pieces, parts }: CutBoard): string {
  if (!parts) return counted(pieces);
  return parts
    .map(({ length, strips }) => {
      const beside = strips.map((strip) => `${round(strip.width)} (${counted(strip.pieces)})`);
      return `${round(length)} into ${beside.join(' + ')}`;
    })
    .join(', ');
}

/** `3 slat, 1 rail`. */
function counted(labels: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const label of labels) counts.set(label, (counts.get(label) ?? 0) + 1);
  return [...counts].map(([label, count]) => `${count} ${label}`).join(', ');
}

const round = (value: number): number => Math.round(value * 1e6) / 1e6;

function reason(none: NoPlan, { unit }: ReadInstance): string {
  if (none.kind === 'too-long') {
    const labels = [...new Set(none.labels)];
    const told = labels.slice(0, 5).join(', ') + (labels.length > 5 ? ` and ${labels.length - 5} more` : '');
    return printable(
      `${told}: longer than any board gives (${round(none.longest)}${unit ? ` ${unit}` : ''} after trim). List longer stock.`,
    );
  }
  if (none.kind === 'too-wide')
    return printable(
      `${[...new Set(none.labels)].slice(0, 5).join(', ')}: wider than any board (${round(none.widest)}${unit ? ` ${unit}` : ''}). List wider stock.`,
    );
  if (none.kind === 'none-yet')
    return 'No plan was found in this time, nor that there is none. Give it more with --seconds.';
  const lacking = none.lacking.map(({ label, count }) => `${count} ${label}`).join(', ');
  return printable(
    `The boards that are available do not give all pieces${lacking && `; cut as full as they go, ${lacking} find no place`}. Raise what is available, or list stock without a limit.`,
  );
}
