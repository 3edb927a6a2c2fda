/**
 * A hash of plain data: alike for alike values, whatever the order of properties; a property that is undefined
 * is none. 64 bits, so that two states of one text do not meet by chance; not for secrets.
 */
export function hashOf(value: unknown): string {
  return digest(canonical(value, new Map()));
}

/** Text that is the same for the same data. Objects met again are written once; a circle ends at itself. */
function canonical(value: unknown, seen: Map<object, string>): string {
  if (typeof value === 'string') return JSON.stringify(value);
  if (typeof value !== 'object' || value === null) return String(value);
  const known = seen.get(value);
  if (known !== undefined) return known;
  seen.set(value, '^');
  const text = Array.isArray(value)
    ? `[${value.map((item) => canonical(item, seen)).join()}]`
    : `{${entriesOf(value)
        .map(([key, item]) => `${key}:${canonical(item, seen)}`)
        .join()}}`;
  // Long parts are met again and again (stock in a repeat): their digest stands for them.
  const short = text.length > 64 ? digest(text) : text;
  seen.set(value, short);
  return short;
}

function entriesOf(value: object): [string, unknown][] {
  return Object.entries(value)
    .filter(([, item]) => item !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1));
}

/** FNV-1a in two lanes of 32 bits with different seeds (G. Fowler, L. C. Noll, K.-P. Vo; 32-bit prime). */
function digest(text: string): string {
  let a = 0x811c9dc5;
  let b = 0x01234567;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    a = Math.imul(a ^ code, 0x01000193);
    b = Math.imul(b ^ code ^ (a >>> 15), 0x01000193);
  }
  return `#${hex(a)}${hex(b)}`;
}

const hex = (x: number): string => (x >>> 0).toString(16).padStart(8, '0');
