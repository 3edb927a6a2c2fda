import type { RunSpec, Stock } from './job.ts';

const known = new WeakMap<RunSpec, ReadonlyMap<string, Stock>>();

/**
 * Every stock that a run names, by its name, with the boards that its rips come from. Found wherever it stands in the
 * run, so that none is forgotten when a run learns to name another.
 */
export function stocksOf(spec: RunSpec): ReadonlyMap<string, Stock> {
  const held = known.get(spec);
  if (held) return held;
  const stocks = new Map<string, Stock>();
  const seen = new Set<object>();
  const add = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || value instanceof Map || seen.has(value)) return;
    seen.add(value);
    if (isStock(value)) stocks.set(value.name, value);
    for (const each of Object.values(value)) add(each);
  };
  add(spec);
  known.set(spec, stocks);
  return stocks;
}

const KINDS: ReadonlySet<unknown> = new Set(['board', 'rip', 'post', 'rail', 'cleat', 'channel']);

function isStock(value: object): value is Stock {
  return 'kind' in value && 'lengths' in value && 'name' in value && KINDS.has(value.kind);
}
