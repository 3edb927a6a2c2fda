/** A value between entries of a table, on a straight line; past its ends, that of the end. `at` ascends. */
export function interpolate(at: readonly number[], values: readonly number[], x: number): number {
  const last = at.length - 1;
  if (x <= (at[0] ?? 0)) return values[0] ?? 0;
  if (x >= (at[last] ?? 0)) return values[last] ?? 0;
  const i = at.findIndex((entry) => entry >= x);
  const [x0 = 0, x1 = 0, y0 = 0, y1 = 0] = [at[i - 1], at[i], values[i - 1], values[i]];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
}
