import { bestFillings } from './fillings.ts';
import type { Problem } from './problem.ts';

/** What finds no place when limited boards, longest first, are cut as full as they go: one way to see what lacks. */
export function lackingOf(problem: Problem): { label: string; count: number }[] {
  const { sizes, capacities, available, labels, ripping } = problem;
  const left = [...problem.demands];
  const fitsAlone = (item: number, stock: number): boolean =>
    ripping
      ? (ripping.along[item] as number) <= (ripping.room[stock] as number) &&
        (ripping.widths[ripping.widthOf[item] as number] as number) <=
          (ripping.across[ripping.acrossOf[stock] as number] as number)
      : (sizes[item] as number) <= (capacities[stock] as number);
  const order = capacities
    .map((_, j) => j)
    .sort((a, b) => (capacities[b] as number) - (capacities[a] as number));
  for (const j of order) {
    if (available[j] === Infinity) {
      for (let i = 0; i < left.length; i++) if (fitsAlone(i, j)) left[i] = 0;
      continue;
    }
    for (let board = 0; board < (available[j] as number) && left.some((count) => count > 0); board++) {
      const filling = bestFillings(problem, left, sizes, { steps: 2_000 }, [j]).filling(0);
      for (let i = 0; i < left.length; i++) left[i] = (left[i] as number) - (filling[i] as number);
    }
  }
  const counts = new Map<string, number>();
  for (const [i, count] of left.entries())
    for (const label of labels[i]?.slice(0, count) ?? []) counts.set(label, (counts.get(label) ?? 0) + 1);
  return [...counts].map(([label, count]) => ({ label, count }));
}
