/** Texts longer than this are not compared: no one means a name by them. */
const LONGEST = 40;

/**
 * Those of `candidates` that `word` was probably meant to be, nearest first: at most a third of its
 * letters wrong, one wrong at least; a word with its end still missing is near too.
 */
export function nearNames(word: string, candidates: Iterable<string>, most = 3): string[] {
  if (word === '' || word.length > LONGEST) return [];
  const allowed = Math.max(1, Math.floor(word.length / 3));
  const lower = word.toLowerCase();
  const near: { name: string; distance: number }[] = [];
  for (const name of new Set(candidates)) {
    if (name.length > LONGEST || name === word) continue;
    const distance = editDistance(lower, name.toLowerCase(), allowed);
    if (distance <= allowed) near.push({ name, distance });
    else if (word.length > 2 && name.toLowerCase().startsWith(lower))
      near.push({ name, distance: allowed + 1 });
  }
  near.sort((a, b) => a.distance - b.distance || (a.name < b.name ? -1 : 1));
  return near.slice(0, most).map(({ name }) => name);
}

/**
 * Letters to change, leave out, put in or swap with their neighbor (optimal string alignment);
 * `most + 1` when there are more than `most`.
 */
export function editDistance(a: string, b: string, most = Number.POSITIVE_INFINITY): number {
  if (Math.abs(a.length - b.length) > most) return most + 1;
  let beforeLast: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let row = 1; row <= a.length; row++) {
    const current = [row];
    for (let column = 1; column <= b.length; column++) {
      const same = a[row - 1] === b[column - 1] ? 0 : 1;
      let cost = Math.min(
        (last[column] ?? 0) + 1,
        (current[column - 1] ?? 0) + 1,
        (last[column - 1] ?? 0) + same,
      );
      if (row > 1 && column > 1 && a[row - 1] === b[column - 2] && a[row - 2] === b[column - 1]) {
        cost = Math.min(cost, (beforeLast[column - 2] ?? 0) + 1);
      }
      current.push(cost);
    }
    beforeLast = last;
    last = current;
  }
  const distance = last[b.length] ?? 0;
  return distance > most ? most + 1 : distance;
}
