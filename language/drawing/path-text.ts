/** Rounded to a hundredth of a millimeter, as every number on a sheet is. */
export function hundredth(mm: number): number {
  const rounded = Math.round(mm * 100) / 100;
  // No negative zero: it prints as 0 and would be a change that is none.
  return rounded === 0 ? 0 : rounded;
}

/** Closed path of a rectangle from corner to corner. */
export function rectPath(x0: number, y0: number, x1: number, y1: number): string {
  const left = hundredth(x0);
  return `M${left} ${hundredth(y0)}H${hundredth(x1)}V${hundredth(y1)}H${left}Z`;
}

/** Closed path around corners x, y, x, y ... */
export function outlinePath(outline: readonly number[]): string {
  let path = '';
  for (let i = 0; i + 1 < outline.length; i += 2) {
    path += `${i === 0 ? 'M' : 'L'}${hundredth(outline[i] as number)} ${hundredth(outline[i + 1] as number)}`;
  }
  return path === '' ? '' : `${path}Z`;
}

/** A straight stroke. */
export function linePath(x0: number, y0: number, x1: number, y1: number): string {
  const [x, y] = [hundredth(x1), hundredth(y1)];
  const start = `M${hundredth(x0)} ${hundredth(y0)}`;
  if (hundredth(x0) === x) return `${start}V${y}`;
  if (hundredth(y0) === y) return `${start}H${x}`;
  return `${start}L${x} ${y}`;
}

/** A circle, as two arcs. */
export function circlePath(x: number, y: number, radius: number): string {
  const r = hundredth(radius);
  const d = hundredth(2 * r);
  return `M${hundredth(x - r)} ${hundredth(y)}a${r} ${r} 0 1 0 ${d} 0a${r} ${r} 0 1 0 ${-d} 0Z`;
}
