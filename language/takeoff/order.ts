import type { Job, Stock } from '../model/index.ts';
import { type Ticks, toInches, toMm } from '../units/index.ts';
import { type BoardPlan, isTemporary } from './board-plan.ts';

/** A line of the order for the yard. */
export interface OrderLine {
  readonly stock: string;
  /** All of it comes off again, and can be used again. */
  readonly temporary?: true;
  /** As it measures: width and thickness, or along and through. */
  readonly section: readonly [Ticks, Ticks];
  readonly length: Ticks;
  /** Needed by the plan, and bought besides. */
  readonly needed: number;
  readonly spare: number;
  /** Of all of them: feet or meters run. */
  readonly run: number;
  /** Board feet by the size it is called, or cubic meters as it measures. */
  readonly volume: number;
}

/** Of what comes off again none are bought besides. */
const NO_SPARES: Pick<Job, 'spares' | 'leastSpares'> = {};

/** What is bought, by section and then longest first, with the spares the job asks for; what is temporary last, without spares. */
export function orderOf(plans: readonly BoardPlan[], job: Job, metric: boolean): readonly OrderLine[] {
  const lines = new Map<string, OrderLine>();
  for (const plan of plans) {
    const { bought, buy } = plan;
    for (const [length, needed] of buy) {
      const key = `${bought.name} ${length}`;
      const before = lines.get(key)?.needed ?? 0;
      const passing = isTemporary(plan);
      const line = lineOf(bought, length, before + needed, passing ? NO_SPARES : job, metric);
      lines.set(key, passing ? { ...line, temporary: true } : line);
    }
  }
  const size = ({ section }: OrderLine) => section[0] * section[1];
  return [...lines.values()].sort(
    (a, b) =>
      Number(a.temporary ?? false) - Number(b.temporary ?? false) ||
      size(b) - size(a) ||
      a.stock.localeCompare(b.stock) ||
      b.length - a.length,
  );
}

function lineOf(
  bought: Stock,
  length: Ticks,
  needed: number,
  job: Pick<Job, 'spares' | 'leastSpares'>,
  metric: boolean,
): OrderLine {
  const section = sectionOf(bought);
  const spare = sparesFor(needed, job);
  const count = needed + spare;
  const run = count * (metric ? toMm(length) / 1000 : toInches(length) / 12);
  const volume = metric
    ? (run * toMm(section[0]) * toMm(section[1])) / 1e6
    : (run * calledInches(section[0]) * calledInches(section[1])) / 12;
  return { stock: bought.name, section, length, needed, spare, run, volume };
}

/** Spares of so many of one section and length: the share asked for, up to whole ones, and no fewer than the least. */
export function sparesFor(
  needed: number,
  { spares, leastSpares = 0 }: Pick<Job, 'spares' | 'leastSpares'>,
): number {
  if (needed === 0) return 0;
  return Math.max(leastSpares, Math.ceil(needed * (spares?.value ?? 0) - 1e-9));
}

function sectionOf(stock: Stock): readonly [Ticks, Ticks] {
  return stock.kind === 'post'
    ? [stock.along.value, stock.through.value]
    : [stock.width.value, stock.thickness.value];
}

/** A board foot counts the size lumber is called by: dressed sizes up to the next inch, thickness at least one (PS 20). */
function calledInches(size: Ticks): number {
  return Math.max(1, Math.ceil(toInches(size) - 1e-6));
}
