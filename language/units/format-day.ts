/** A day as it is written, `2026-05-04`, from days since the first of 1970. */
export function formatDay(day: number): string {
  return new Date(day * 86_400_000).toISOString().slice(0, 10);
}
