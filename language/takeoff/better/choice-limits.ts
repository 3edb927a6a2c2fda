import type { Layout, RunLayout } from '../../layout/index.ts';
import type { ChoiceFigures } from './choice-figures.ts';

/** Whether the run is laid out with every pattern landing. */
export const closes = ({ fits, problems }: RunLayout): boolean =>
  problems.length === 0 && fits.every(({ chosen }) => chosen !== undefined);

/** Problems of all runs together, and runs that cannot be built at all. */
export const faultsOf = ({ runs }: Layout): number =>
  runs.reduce((sum, { problems, sound }) => sum + problems.length + (sound ? 0 : 1), 0);

/** How often each code is told. */
export function countCodes(codes: readonly string[]): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const code of codes) counts.set(code, (counts.get(code) ?? 0) + 1);
  return counts;
}

/** Whether nothing is told that is not told as often before. */
export function addsNothing(codes: readonly string[], before: ReadonlyMap<string, number>): boolean {
  return [...countCodes(codes)].every(([code, number]) => number <= (before.get(code) ?? 0));
}

/** A place that is hidden enough stays so; one that is not is seen no more than it is. */
export function keepsHidden({ seen }: ChoiceFigures, now: ChoiceFigures): boolean {
  return seen.every(({ share, allowed }, at) => share <= Math.max(allowed, now.seen[at]?.share ?? 0) + 1e-4);
}
