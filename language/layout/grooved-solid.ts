import type { Ticks } from '../units/index.ts';
import type { End, Shape } from './make-piece.ts';
import type { Groove, Solid, Vec3 } from './piece.ts';

type Corner = (shape: Shape, along: number, across: number, through: number) => Vec3;
type Span = readonly [from: Ticks, to: Ticks];

/** Convex parts of a piece with grooves, and the grooves themselves; `corner` puts a point of the section in space. */
export function hollowed(
  shape: Shape,
  grooves: readonly Groove[],
  corner: Corner,
): Required<Pick<Solid, 'parts' | 'hollows'>> {
  const block = (v: Span, s: Span, along: readonly [End, End]): Solid => ({
    vertices: along.flatMap(({ at, miter = 0, bevel = 0 }) => {
      const there = (a: number, b: number) => corner(shape, at + miter * a + bevel * b, a, b);
      return [there(v[0], s[0]), there(v[1], s[0]), there(v[1], s[1]), there(v[0], s[1])];
    }),
  });
  const hollows = grooves.map((groove) => ({
    ...block(
      groove.side === 'start' ? [0, groove.depth] : [shape.width - groove.depth, shape.width],
      [groove.at, groove.at + groove.width],
      [{ at: groove.from }, groove.to === undefined ? shape.ends[1] : { at: groove.to }],
    ),
    side: groove.side,
  }));
  const parts = stretches(shape, grooves).flatMap(({ ends, cut }) =>
    slabs(shape, cut).map(({ v, s }) => block(v, s, ends)),
  );
  return { parts, hollows };
}

/** Along the grain, stretches over which the section is the same, each with the grooves in it. */
function stretches({ ends }: Shape, grooves: readonly Groove[]) {
  const marks = [...new Set(grooves.flatMap(({ from, to }) => (to === undefined ? [from] : [from, to])))]
    .filter((at) => at > ends[0].at)
    .sort((a, b) => a - b);
  const bounds: readonly End[] = [ends[0], ...marks.map((at) => ({ at })), ends[1]];
  return bounds.slice(1).map((to, index) => {
    const from = bounds[index] ?? to;
    const cut = grooves.filter((one) => one.from <= from.at && (one.to === undefined || one.to > from.at));
    return { ends: [from, to] as const, cut };
  });
}

/** The section in strips through its thickness, as few as there are. */
function slabs(
  { width, thickness }: Shape,
  cut: readonly Groove[],
): { readonly v: Span; readonly s: Span }[] {
  const marks = [...new Set([0, ...cut.flatMap(({ at, width: wide }) => [at, at + wide]), thickness])].sort(
    (a, b) => a - b,
  );
  const made: { v: Span; s: Span }[] = [];
  for (const [index, to] of marks.slice(1).entries()) {
    const from = marks[index] ?? to;
    const deep = (side: Groove['side']) =>
      cut
        .filter((one) => one.side === side && one.at <= from && one.at + one.width >= to)
        .reduce((most, { depth }) => Math.max(most, depth), 0);
    const v: Span = [deep('start'), width - deep('end')];
    const before = made.at(-1);
    if (before && before.v[0] === v[0] && before.v[1] === v[1]) before.s = [before.s[0], to];
    else made.push({ v, s: [from, to] });
  }
  return made.filter(({ v }) => v[1] > v[0]);
}
