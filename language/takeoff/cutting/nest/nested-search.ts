import type { CutSearch } from '../plan-cuts.ts';
import type { CutBoard, CutInstance, CutPlan, NoPlan } from '../problem.ts';
import { turnsOf } from './ends.ts';
import { type Laying, layBoard } from './lay-board.ts';
import { withLeastShares, withShares } from './shares.ts';

/** How near what pieces are taken to need is to all from tip to tip, where neither that nor the least settles it. */
const BETWEEN = [0.25, 0.5, 0.75];
/** A search goes on so many looks at the clock before another has its turn. */
const TURN = 40;

/** A search with one view of what pieces need, and the best plan of it that could be laid. */
interface Level {
  readonly search: CutSearch;
  laid?: CutPlan | undefined;
}

/**
 * As `searchCuts`, for pieces with angled ends, which need less of a board where alike ends meet. Plans are made as if all
 * ends were square, by several views of what each piece needs of a board (see `withShares`), and each of their boards is
 * laid out; the cheapest plan counts whose pieces can be laid on their boards as found. The least that pieces can need
 * gives the bound: no plan that crosscuts, rips and crosscuts costs less, however its pieces lie.
 */
export function searchNested(
  instance: CutInstance,
  searchPlain: (instance: CutInstance) => CutSearch,
): CutSearch {
  const laying: Laying = {
    instance,
    demands: new Map(instance.pieces.map((piece) => [piece.label, piece])),
    turns: turnsOf(instance.turnsOver ?? false),
  };
  const begin = (shares: CutInstance): Level => ({ search: searchPlain(shares) });
  const [safe, least] = [begin(withShares(instance, 1)), begin(withLeastShares(instance))];
  const levels = [safe, least];
  const known = new Map<string, CutBoard | undefined>();
  const refresh = (level: Level) => {
    const plan = level.search.plan();
    level.laid = 'kind' in plan ? undefined : laidPlan(plan, laying, known);
  };
  const boundOf = () => {
    const plan = least.search.plan();
    return 'kind' in plan ? 0 : plan.bound;
  };
  const best = () =>
    levels.reduce<CutPlan | undefined>(
      (held, { laid }) => (laid && isBetter(laid, held) ? laid : held),
      undefined,
    );
  let bound = 0;
  let settled = false;
  let turn = 0;
  const settle = () => {
    bound = boundOf();
    const plan = best();
    const few =
      instance.settingsWithin === undefined || (plan && plan.settings <= fewestOf(plan, least, instance));
    settled = plan !== undefined && plan.cost <= bound && few === true;
  };
  const isOver = ({ search }: Level) => search.proven() || search.done();
  refresh(safe);
  const stated = safe.search.plan();
  // What is too long lies on no board, however it is turned.
  if ('kind' in stated && (stated.kind === 'too-long' || stated.kind === 'too-wide'))
    return { plan: () => stated, proven: () => false, done: () => true, run: () => undefined };
  return {
    plan: () => {
      const plan = best();
      if (!plan) return noneOf(safe.search.plan(), least.search.plan());
      const { cost } = plan;
      const fewest = instance.settingsWithin === undefined ? undefined : fewestOf(plan, least, instance);
      return {
        ...plan,
        bound: Math.min(bound, cost),
        proven: settled,
        ...(fewest === undefined ? {} : { settingsBound: fewest }),
      };
    },
    proven: () => settled,
    done: () => settled || (levels.length === BETWEEN.length + 2 && levels.every(isOver)),
    run: (enough) => {
      while (!settled) {
        const open = levels.filter((level) => !isOver(level));
        // Each has its turn, however short the spans are that there are.
        const level = open[turn++ % Math.max(1, open.length)];
        if (level) {
          let looks = 0;
          let over = false;
          level.search.run(() => {
            over ||= enough();
            return over || level.search.proven() || ++looks > TURN;
          });
          refresh(level);
          settle();
          if (over || settled) return;
          continue;
        }
        settle();
        const next = BETWEEN[levels.length - 2];
        if (settled || next === undefined) return;
        levels.push(begin(withShares(instance, next)));
      }
    },
  };
}

/** Less cost, then fewer settings where they count, then fewer boards. */
function isBetter(one: CutPlan, held: CutPlan | undefined): boolean {
  if (!held) return true;
  const figures = ({ cost, settings, settingsBound, boards }: CutPlan) => [
    cost,
    settingsBound === undefined ? 0 : settings,
    boards.length,
  ];
  const [a, b] = [figures(one), figures(held)];
  for (const [at, figure] of a.entries()) if (figure !== b[at]) return figure < (b[at] as number);
  return false;
}

/**
 * No plan for so much takes fewer settings. Whatever costs no more than the plan of least need was allowed is one of the
 * plans that this one was sought among; else each length is set once at least.
 */
function fewestOf(plan: CutPlan, { search }: Level, { pieces }: CutInstance): number {
  const least = search.plan();
  const lengths = new Set(pieces.filter(({ count }) => count > 0).map(({ length }) => length)).size;
  const shown = !('kind' in least) && least.cost === plan.cost ? (least.settingsBound ?? 0) : 0;
  return Math.min(plan.settings, Math.max(lengths, shown));
}

function noneOf(safe: CutPlan | NoPlan, least: CutPlan | NoPlan): NoPlan {
  if ('kind' in least) return least;
  return 'kind' in safe && safe.kind !== 'too-few-boards' ? safe : { kind: 'none-yet' };
}

/** Each board laid, those with the same pieces once; undefined where one of them is too short. */
function laidPlan(
  plan: CutPlan,
  laying: Laying,
  known: Map<string, CutBoard | undefined>,
): CutPlan | undefined {
  const boards: CutBoard[] = [];
  for (const planned of plan.boards) {
    // The board as it is, not as long as it may be taken to be.
    const { length } = laying.instance.stock[planned.stock] ?? planned;
    const isSquare = planned.pieces.every((label) => laying.demands.get(label)?.ends === undefined);
    if (isSquare && length === planned.length) {
      boards.push(planned);
      continue;
    }
    const parts = planned.parts?.map(({ strips }) => strips.map((strip) => strip.pieces));
    const key = JSON.stringify([planned.stock, parts ?? planned.pieces]);
    if (!known.has(key)) known.set(key, layBoard({ ...planned, length }, laying));
    const laid = known.get(key);
    if (!laid) return undefined;
    boards.push(laid);
  }
  return { ...plan, boards, settings: settingsOf(boards) ?? plan.settings };
}

/** Boards cut alike once, by the different pieces of each: other ends are another setting, though as long. */
function settingsOf(boards: readonly CutBoard[]): number | undefined {
  if (boards.some(({ parts }) => parts)) return undefined;
  const ways = new Map(
    boards.map(({ stock, pieces }) => [JSON.stringify([stock, [...pieces].sort()]), new Set(pieces).size]),
  );
  return [...ways.values()].reduce((sum, each) => sum + each, 0);
}
