import type { Pattern, Problem } from './problem.ts';

/** Patterns found so far, each once; they serve every later linear program of the same problem. */
export class ColumnPool {
  readonly patterns: Pattern[] = [];
  private readonly known = new Set<string>();

  /** Adds a pattern; false when it is there already. */
  add(pattern: Pattern): boolean {
    const key = `${pattern.stock}:${pattern.items.join()}:${pattern.counts.join()}`;
    if (this.known.has(key)) return false;
    this.known.add(key);
    this.patterns.push(pattern);
    return true;
  }
}

/** Space its pieces take on the board. */
export function spaceOf({ items, counts }: Pattern, { sizes }: Problem): number {
  let space = 0;
  for (let k = 0; k < items.length; k++)
    space += (sizes[items[k] as number] as number) * (counts[k] as number);
  return space;
}

/** Whether a residual demand holds all of it. */
export function isWithin({ items, counts }: Pattern, demands: ArrayLike<number>): boolean {
  for (let k = 0; k < items.length; k++)
    if ((counts[k] as number) > (demands[items[k] as number] as number)) return false;
  return true;
}
