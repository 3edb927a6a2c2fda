/**
 * Whether two values are the same plain data, whatever the order of properties; a property that is
 * undefined is none. Says the same as equal hashes, many times faster. The values hold no circles.
 */
export function isSame(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return Object.is(a, b);
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  const left = a as Record<string, unknown>;
  const right = b as Record<string, unknown>;
  let shared = 0;
  for (const key in left) {
    if (left[key] === undefined) continue;
    if (right[key] === undefined || !isSame(left[key], right[key])) return false;
    shared++;
  }
  for (const key in right) if (right[key] !== undefined) shared--;
  return shared === 0;
}
