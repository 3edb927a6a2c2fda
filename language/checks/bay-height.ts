import { aboveGround, type Bay, type RunLayout, topEdge } from '../layout/index.ts';
import { lowestGround } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** How high a bay stands above the ground along it, however its run follows that. */
export interface BayHeight {
  /** What fills it, where its top is nearest to the ground. */
  readonly least: Ticks;
  /** Its posts and their caps, from the lowest ground; along a top that slopes, from the ground right below. */
  readonly most: Ticks;
}

/** Undefined where nothing fills the bay. */
export function heightOfBay(run: RunLayout, bay: Bay): BayHeight | undefined {
  const edge = topEdge(run, bay.number);
  if (!edge) return undefined;
  const cap = run.spec.caps?.value.thickness.value ?? 0;
  const { least, most } = aboveGround(run, bay, edge);
  const slats = most + run.spec.tops.value + cap;
  return {
    least,
    most: run.edges.get(bay.number)?.top ? Math.max(slats, postsBeside(run, bay) + cap) : slats,
  };
}

/** The higher of the posts beside a bay that slopes, above the lowest ground under it. */
function postsBeside(run: RunLayout, { from, to }: Bay): Ticks {
  const beside = run.posts.filter((post) => post.to === from || post.from === to);
  const heights = beside.flatMap((post) => {
    const tops = run.pieces.find(({ key }) => key === post.key)?.solid.vertices.map(([, , z]) => z) ?? [];
    return tops.length > 0 ? [Math.max(...tops) - lowestGround(run.groundLine, post.from, post.to)] : [];
  });
  return Math.max(0, ...heights);
}
