/** More ways than this are not told apart; of many widths there are more than any plan needs. */
const MOST_WAYS = 400;

/**
 * Every way to lay strips side by side so that no further one goes in: of each width so many. With more than can be
 * told apart only some, each width in at least one, and `all` is false.
 *
 * @param widths widest first, each with a kerf
 * @param room of the board, with a kerf
 */
export function waysAcross(
  widths: readonly number[],
  room: number,
): { readonly ways: readonly (readonly number[])[]; readonly all: boolean } {
  const ways: number[][] = [];
  const now = widths.map(() => 0);
  const fill = (at: number, left: number): void => {
    if (ways.length > MOST_WAYS) return;
    if (at === widths.length) {
      const isFull = widths.every((width) => width > left);
      if (isFull && now.some((count) => count > 0)) ways.push([...now]);
      return;
    }
    const width = widths[at] as number;
    for (let many = Math.floor(left / width); many >= 0; many--) {
      now[at] = many;
      fill(at + 1, left - many * width);
    }
    now[at] = 0;
  };
  fill(0, room);
  if (ways.length <= MOST_WAYS) return { ways, all: true };
  const alone = widths.flatMap((width, at) =>
    width > room ? [] : [widths.map((_, other) => (other === at ? Math.floor(room / width) : 0))],
  );
  return { ways: [...alone, ...ways.slice(0, MOST_WAYS)], all: false };
}
