import { alongOf, partsOf, segmentsFor } from './board-parts.ts';
import { spaceOf } from './column-pool.ts';
import type { SettingsProgress } from './fewest-settings.ts';
import { lackingOf } from './lacking.ts';
import { lessSettings } from './less-settings.ts';
import { longerOffcuts } from './longer-offcuts.ts';
import { prepare } from './prepare.ts';
import type {
  CutBoard,
  CutInstance,
  CutPlan,
  NoPlan,
  Packing,
  Pattern,
  Problem,
  Ripping,
  Segment,
} from './problem.ts';
import { longerRippedOffcuts, type RippedBoard } from './rip-offcuts.ts';
import { settingsOf, settingsOfRipped } from './settings.ts';
import { type Progress, search } from './solve.ts';
import { type TakeLabels, takeLabels } from './take-labels.ts';

/** A search for the cheapest plan that can be gone on with at any time, and left at any time. */
export interface CutSearch {
  /** The best plan so far, with what is known of it; or why there is none. */
  plan(): CutPlan | NoPlan;
  /**
   * Whether no plan can cost less money; fewer boards or a longer offcut may still be found. Where fewest settings are
   * asked for, whether there are no fewer besides, or fewer are no longer sought.
   */
  proven(): boolean;
  /** Whether there is nothing more to be found out. */
  done(): boolean;
  /** Goes on until `enough` says so, which is asked every few milliseconds, or until all is known. */
  run(enough: () => boolean): void;
}

/** As `searchCuts`, all ends taken to be square. */
export function searchSquare(instance: CutInstance): CutSearch {
  const problem = prepare(instance);
  if ('kind' in problem)
    return { plan: () => problem, proven: () => false, done: () => true, run: () => undefined };
  const steps = search(problem);
  let progress: Progress = steps.next().value;
  const { settingsWithin } = instance;
  if (settingsWithin === undefined)
    return {
      plan: () => planOf(progress, problem, instance),
      proven: () => isProven(progress, problem),
      done: () => progress.done,
      run: (enough) => {
        while (!progress.done && !enough()) progress = steps.next().value;
      },
    };
  const few = lessSettings(problem, settingsWithin);
  const isCostKnown = () => progress.done || isProven(progress, problem);
  return {
    plan: () => planOf(progress, problem, instance, few.of(progress)),
    proven: () => isProven(progress, problem) && few.of(progress)?.done === true,
    done: () => isCostKnown() && (few.of(progress)?.done ?? progress.packing === undefined),
    run: (enough) => {
      for (let turn = 0; !enough(); turn++) {
        const { done } = few.of(progress) ?? { done: progress.packing === undefined };
        if (isCostKnown() && done) return;
        // What is hard to prove keeps no one waiting for fewer settings.
        const isTurn = isCostKnown() || (turn > PATIENCE && turn % 2 === 0);
        if (isTurn && !done) few.step(progress);
        else if (!isCostKnown()) progress = steps.next().value;
      }
    },
  };
}

/** A proof of least cost is sought so many steps before settings are lowered besides. */
const PATIENCE = 300;

function planOf(
  { packing: cheapest, cost, bound, done }: Progress,
  problem: Problem,
  instance: CutInstance,
  few?: SettingsProgress,
): CutPlan | NoPlan {
  if (!cheapest)
    return done && bound >= cost && !problem.ripping?.coarse
      ? { kind: 'too-few-boards', lacking: lackingOf(problem) }
      : { kind: 'none-yet' };
  const take = takeLabels(problem.labels);
  const { ripping } = problem;
  const thorough = isProven({ cost, bound }, problem);
  const packing = few?.packing ?? cheapest;
  const { cut, settings } = ripping
    ? rippedBoards(packing, take, { ...problem, ripping }, instance, {
        thorough,
        asTheyAre: few !== undefined,
      })
    : plainBoards(packing, take, problem, instance, few !== undefined);
  const boards = cut.sort((a, b) => b.length - a.length || a.offcut - b.offcut);
  return {
    boards,
    cost: boards.reduce((sum, board) => sum + board.price, 0),
    bound: moneyOf(bound, problem),
    settings,
    ...(few ? { settingsBound: few.bound } : {}),
    proven: thorough && (few === undefined || few.bound >= settings),
  };
}

/** Prices are whole, so what a plan costs is its combined cost without the boards counted along. */
const moneyOf = (combined: number, { scale }: Problem): number => Math.floor(combined / scale);

const isProven = ({ cost, bound }: Pick<Progress, 'cost' | 'bound'>, problem: Problem): boolean =>
  moneyOf(bound, problem) >= moneyOf(cost, problem);

const eachOnce = (packing: Packing): Pattern[] =>
  packing.flatMap(({ pattern, times }) => Array.from({ length: times }, () => pattern));

/** What is left in as long a piece as may be; or boards cut alike as they are. */
function plainBoards(
  packing: Packing,
  take: TakeLabels,
  problem: Problem,
  instance: CutInstance,
  asTheyAre: boolean,
): { cut: CutBoard[]; settings: number } {
  const patterns = asTheyAre ? eachOnce(packing) : longerOffcuts(problem, eachOnce(packing));
  return {
    cut: patterns.map((pattern) => boardOf(pattern, take, problem, instance)),
    settings: settingsOf(patterns.map((pattern) => ({ pattern, times: 1 }))),
  };
}

/** Takes the labels of a board's pieces from those left of each size. */
function boardOf(pattern: Pattern, take: TakeLabels, problem: Problem, instance: CutInstance): CutBoard {
  const stock = problem.stockOf[pattern.stock] as number;
  const { length, price } = instance.stock[stock] as CutInstance['stock'][number];
  const pieces = pattern.items.flatMap((item, k) => take(item, pattern.counts[k] as number));
  // A cut parts the offcut from the last piece.
  const offcut = Math.max(0, length - (instance.trim ?? 0) - spaceOf(pattern, problem) * problem.unit);
  return { stock, length, price, pieces, offcut };
}

/** Boards with their parts; patterns that are cut often are laid out once. */
function rippedBoards(
  packing: Packing,
  take: TakeLabels,
  problem: Problem & { readonly ripping: Ripping },
  instance: CutInstance,
  { thorough, asTheyAre }: { readonly thorough: boolean; readonly asTheyAre: boolean },
): { cut: CutBoard[]; settings: number } {
  const all = packing.flatMap(({ pattern, times }): RippedBoard[] => {
    const segments: readonly Segment[] = segmentsFor(pattern, problem, thorough) ?? [];
    return Array.from({ length: times }, () => ({ stock: pattern.stock, segments }));
  });
  const boards = asTheyAre ? all : longerRippedOffcuts(all, problem);
  const cut = boards.map(({ stock: at, segments }) => {
    const stock = problem.stockOf[at] as number;
    const { length, price } = instance.stock[stock] as CutInstance['stock'][number];
    const parts = partsOf(segments, at, take, problem);
    const offcut = Math.max(0, length - (instance.trim ?? 0) - alongOf(segments) * problem.unit);
    const pieces = parts.flatMap(({ strips }) => strips.flatMap((strip) => strip.pieces));
    return { stock, length, price, pieces, offcut, parts };
  });
  return { cut, settings: settingsOfRipped(boards, problem) };
}
