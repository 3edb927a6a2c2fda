/** Times of one hop, in milliseconds. */
export interface Row {
  readonly what: string;
  readonly times: readonly number[];
  /** What the hop should stay under at p95, where something is aimed at. */
  readonly budget?: number;
  /** Times of doing the same without the means whose worth is measured. */
  readonly baseline?: readonly number[];
}

/** The value below which a share of the times lies (nearest rank). */
export function quantile(times: readonly number[], share: number): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))] ?? Number.NaN;
}

const ms = (value: number): string => (Number.isNaN(value) ? '-' : value.toFixed(1)).padStart(8);

/** Prints rows under a heading: count, median, p95, aim, and the baseline's median and p95. */
export function printTable(heading: string, rows: readonly Row[]): void {
  const width = Math.max(40, ...rows.map((row) => row.what.length));
  console.log(`\n${heading}`);
  console.log(`${''.padEnd(width)}     n   median      p95      aim   base median  base p95`);
  for (const { what, times, budget, baseline = [] } of rows) {
    const p95 = quantile(times, 0.95);
    const aim = budget === undefined ? ''.padStart(8) : ms(budget);
    const verdict = budget === undefined ? '' : p95 <= budget ? '' : '  misses its aim';
    const base =
      baseline.length === 0 ? '' : `      ${ms(quantile(baseline, 0.5))}  ${ms(quantile(baseline, 0.95))}`;
    console.log(
      `${what.padEnd(width)} ${String(times.length).padStart(5)} ${ms(quantile(times, 0.5))} ${ms(p95)} ${aim}${base}${verdict}`,
    );
  }
}
