import type { GeometryArgs } from '../layout/index.ts';

type Args = GeometryArgs['bridge-impossible'];

/** Why an offset between two runs is not closed as asked, and what to write instead. */
export function bridgeMessage(a: Args): string {
  return `The offset from ${a.first} to ${a.second} ${WHY[a.why](a)}`;
}

const WHY: Readonly<Record<Args['why'], (a: Args) => string>> = {
  upright: ({ by }) =>
    `takes no ${by}: upright slats need rails, which it has none of. Write \`closed by filler\` with the name of a board.`,
  turns: ({ by }) =>
    `takes no ${by}: slats by turns on both faces do not stand in one plane. Write \`closed by filler\` with the name of a board.`,
  split: ({ by }) =>
    `takes no ${by}: posts of two halves have no whole side to hold it. Put the slats of both runs between posts or on a face, or leave the offset open.`,
  thickness: () =>
    'takes no return between the sides of the posts: the slats are of several thicknesses. Set the runs farther apart, or write `closed by filler` with the name of a board.',
  closed: ({ by }) =>
    `takes no ${by}: the two posts stand side by side and close it themselves. Leave \`closed by\` out, or step farther.`,
  space: ({ by, needs, room }) =>
    `takes a ${by} ${needs} thick between the sides of the two posts; the space stated is ${room}. Write ${needs}, or leave the space out.`,
  wide: ({ board, needs }) =>
    `is ${needs} between the posts, too much for a filler of ${board}: two of them side by side would each have less than half of its width on a post. Use a wider board, or write \`closed by return\`.`,
  'no-space': ({ second, needs }) =>
    `takes a panel only where there is a space along the runs for it. Say how far on ${second} begins: ${needs} or more.`,
  cleats: () =>
    'takes a panel only with cleats, for its slats stand between the posts. Write `cleats` with the name of a cleat.',
  narrow: ({ needs, room }) =>
    `takes no panel in ${room}: its slats and cleats need ${needs} along the runs. Begin farther on.`,
  sharp: ({ needs, room }) =>
    `takes no panel in ${room}: it would stand at more than the 45° a blade tilts, or leave nothing of its cleats. ${needs === '' ? 'Use wider cleats or a smaller end gap' : `Begin ${needs} on or farther`}, or write \`closed by return\`.`,
  depth: () =>
    'takes no panel: at its angle the ends of the slats are wider than the posts are deep. Use thinner slats or deeper posts, or begin farther on.',
  heights: ({ first, second }) =>
    `cannot be closed: ${first} and ${second} have no slats at one height there. Give both heights that overlap.`,
};
