import type { MeasuredBay, MeasuredPost, Problem, RunSpec } from '../model/index.ts';
import { formatLength, type Ticks } from '../units/index.ts';
import type { Stand } from './follow-ground.ts';
import type { PlacedPosts } from './posts.ts';
import { geometryProblem } from './problems.ts';

/** What was measured of the bays and posts there are now, by number, and what was of others. */
export interface MeasuresNow {
  readonly bays: ReadonlyMap<number, MeasuredBay>;
  readonly posts: ReadonlyMap<number, MeasuredPost>;
  readonly problems: readonly Problem[];
}

const ABSENT = { planned: '', now: '', others: '' };

/**
 * Measures of a run held against its plan. One that names what was planned then is used only where the plan is
 * still so, whatever its number; where another bay or post is planned so now, it is told which.
 */
export function measuresNow(
  spec: RunSpec,
  placed: PlacedPosts,
  stands: ReadonlyMap<number, Stand>,
): MeasuresNow {
  const bays = baysNow(spec, placed);
  const posts = postsNow(spec, placed);
  const problems: Problem[] = [...bays.problems, ...posts.problems];
  for (const { bay, courses, origin } of spec.measured?.cuts ?? []) {
    const count = courseCount(stands.get(bay));
    if (count > 0 && (courses?.last ?? 0) <= count) continue;
    const args = { what: 'cut' as const, number: bay, count, ...ABSENT };
    problems.push(geometryProblem('measured-elsewhere', origin, args));
  }
  return { bays: bays.kept, posts: posts.kept, problems };
}

/** Number of the last course that is cut for a bay, one that follows the ground included. */
function courseCount(stand: Stand | undefined): number {
  return (stand?.filled?.lines ?? []).reduce((most, { course = 0 }) => Math.max(most, course), 0);
}

function baysNow(spec: RunSpec, { bays }: PlacedPosts): Kept<MeasuredBay> {
  const now = bays.map(({ bay }) => ({ number: bay.number, size: bay.clear }));
  return keptOf(spec, 'bay', spec.measured?.bays ?? [], now);
}

function postsNow(spec: RunSpec, { posts }: PlacedPosts): Kept<MeasuredPost> {
  const now = posts.map(({ mark }) => ({ number: mark.number, size: mark.from }));
  return keptOf(spec, 'post', spec.measured?.posts ?? [], now);
}

interface Kept<T> {
  readonly kept: ReadonlyMap<number, T>;
  readonly problems: readonly Problem[];
}

function keptOf<T extends MeasuredBay | MeasuredPost>(
  { measure }: RunSpec,
  what: 'bay' | 'post',
  measured: readonly T[],
  all: readonly { readonly number: number; readonly size: Ticks }[],
): Kept<T> {
  const kept = new Map<number, T>();
  const problems: Problem[] = [];
  const isNow = (size: Ticks, planned: Ticks) => Math.abs(size - planned) <= measure.step / 2;
  for (const one of measured) {
    const { number, planned, origin } = one;
    const own = all.find((now) => now.number === number);
    if (own && (!planned || isNow(own.size, planned.value))) {
      kept.set(number, one);
      continue;
    }
    const elsewhere = planned ? all.filter(({ size }) => isNow(size, planned.value)) : [];
    const args = {
      what,
      number,
      count: all.length,
      planned: planned ? formatLength(planned.value, measure) : '',
      now: own ? formatLength(own.size, measure) : '',
      others: elsewhere.map((other) => other.number).join(', '),
    };
    problems.push(geometryProblem('measured-elsewhere', origin, args));
  }
  return { kept, problems };
}
