import { baysOf, bottomEdge, heightAt, type Piece, type RunLayout } from '../layout/index.ts';
import { levelAt } from '../model/index.ts';
import type { Measure, Ticks } from '../units/index.ts';
import { type Chain, chain } from './chains.ts';
import { extentOf } from './extent.ts';
import { isBehind } from './front-slats.ts';

/**
 * The dimension strings of a run: lengths from station 0, heights from the ground.
 * Chains of no extent are left out, so that a run with faults is still drawn.
 */
export function dimensionChains(run: RunLayout, measure: Measure, from: 'front' | 'back' = 'front'): Chain[] {
  const length = run.spec.length.value;
  // Where the ground is not level every post is as deep as its own place asks.
  const foot = run.spec.levels ? Infinity : Math.min(run.ground, ...postFeet(run));
  const { ground, bottom, top, postTop } = heightsBeside(run, from);
  const lengths = (parts: Pick<Chain, 'key' | 'parent' | 'kind' | 'lean'>, at: readonly Ticks[]) =>
    chain({ ...parts, side: 'top' }, at, 0, measure);
  const heights = (parts: Pick<Chain, 'key' | 'parent' | 'kind' | 'side'>, at: readonly Ticks[]) =>
    chain(parts, at, ground, measure);
  const posts = run.posts.flatMap((post) => [post.from, post.to]).filter((x) => x > 0 && x < length);
  const all = [
    lengths({ key: 'length', kind: 'overall' }, [0, length]),
    ...wallChains(run).map(({ at, ...parts }) => lengths({ ...parts, kind: 'overall' }, at)),
    lengths({ key: 'posts', kind: 'posts', parent: 'length' }, [0, ...posts, length]),
    ...run.bays.flatMap((bay) => {
      const leaves = run.leaves.filter((leaf) => leaf.bay === bay.number);
      if (leaves.length === 0) return [];
      const { from, to } = bay;
      const edges = leaves
        .flatMap(({ x0, x1 }) => [x0, x1])
        .filter((x) => x > from && x < to)
        .sort((a, b) => a - b);
      return lengths({ key: `gate-${bay.gate}`, kind: 'gate', parent: 'posts' }, [from, ...edges, to]);
    }),
    ...uprightChains(run, measure, from),
    heights({ key: 'height', kind: 'overall', side: 'left' }, [Math.min(foot, ground), ground, top, postTop]),
    heights({ key: 'infill', kind: 'heights', side: 'left', parent: 'height' }, [ground, bottom, top]),
    ...levelChain(run, measure, from),
  ];
  return all.filter((one) => one.at.length > 1);
}

/** Heights at the highest ground; of a run that slopes, at the end where they are written. */
function heightsBeside(
  run: RunLayout,
  from: 'front' | 'back',
): Record<'ground' | 'bottom' | 'top' | 'postTop', Ticks> {
  const { ground, bottom, top, postTop } = run;
  const first = from === 'front';
  const [bay, post] = first ? [run.bays[0], run.posts[0]] : [run.bays.at(-1), run.posts.at(-1)];
  const edges = bay && run.edges.get(bay.number);
  if (!bay || !post || !edges?.top) return { ground, bottom, top, postTop };
  const at = first ? bay.from : bay.to;
  const low = bottomEdge(run, bay.number);
  const solid = run.pieces.find(({ key }) => key === post.key)?.solid;
  return {
    ground: Math.round(levelAt(run.groundLine, at)),
    bottom: low ? Math.round(heightAt(low, at)) : bottom,
    top: Math.round(heightAt(edges.top, at)),
    postTop: solid ? extentOf(solid).z1 : postTop,
  };
}

/** From the end posts to the plumb lines of the walls past them, and from wall to wall where there are two. */
function wallChains({ walls, spec }: RunLayout) {
  const gaps = walls.map(({ side, plumb, inward }) => ({
    key: `wall-${side}`,
    // Into the wall, clear of the lines up to the chains farther out.
    lean: (inward === 1 ? -1 : 1) as 1 | -1,
    at: [side === 'start' ? 0 : spec.length.value, plumb],
  }));
  const [start, end] = walls;
  return start && end ? [...gaps, { key: 'walls', at: [start.plumb, end.plumb] }] : gaps;
}

function postFeet(run: RunLayout): Ticks[] {
  return run.pieces.flatMap((piece) => (piece.role === 'post' ? [extentOf(piece.solid).z0] : []));
}

/** Slats and gaps of the level bays, which share their lines: taken from the first bay that has any. */
function levelChain(run: RunLayout, measure: Measure, from: 'front' | 'back'): Chain[] {
  if (run.spec.infill.flip.upright) return [];
  // A bay that stands on the highest ground, from which the heights are taken: no other with that top has fewer slats.
  const bays = [...slatsByBay(run, from)].filter(([number]) => run.reach.get(number)?.[1] === run.top);
  const level = bays.map(([, own]) => own.filter(({ cut }) => !cut.taper));
  const slats = level.reduce((least, own) => (own.length < least.length ? own : least), level[0] ?? []);
  if (slats.length === 0) return [];
  const edges = slats.flatMap((slat) => {
    const { z0, z1 } = extentOf(slat.solid);
    return [z0, z1].filter((z) => z > run.bottom && z < run.top);
  });
  return [
    chain(
      { key: 'slats', kind: 'slats', side: 'right', parent: 'infill' },
      [run.bottom, ...edges, run.top],
      run.ground,
      measure,
    ),
  ];
}

/** Slats and gaps along the first bay of each clear width that occurs: bays alike have them alike. */
function uprightChains(run: RunLayout, measure: Measure, from: 'front' | 'back'): Chain[] {
  if (!run.spec.infill.flip.upright) return [];
  const slats = slatsByBay(run, from);
  const shown = new Set<Ticks>();
  const chains: Chain[] = [];
  for (const bay of run.bays) {
    const own = slats.get(bay.number);
    if (!own || bay.gate !== undefined || shown.has(bay.clear)) continue;
    shown.add(bay.clear);
    const edges = own.flatMap((slat) => {
      const { x0, x1 } = extentOf(slat.solid);
      return [x0, x1];
    });
    const within = edges.filter((x) => x > bay.from && x < bay.to);
    chains.push(
      chain(
        { key: `slats-${bay.number}`, kind: 'slats', side: 'top', parent: 'posts' },
        [bay.from, ...within, bay.to],
        0,
        measure,
      ),
    );
  }
  return chains;
}

/** Of the face that is looked at, where both have slats. */
function slatsByBay(run: RunLayout, from: 'front' | 'back'): Map<number, Piece[]> {
  const bays = new Map<number, Piece[]>();
  for (const piece of run.pieces) {
    if (piece.role !== 'slat' && piece.role !== 'trim') continue;
    if (piece.gate !== undefined || isBehind(run.spec.infill, piece, from)) continue;
    for (const bay of baysOf(piece)) {
      const list = bays.get(bay);
      if (list) list.push(piece);
      else bays.set(bay, [piece]);
    }
  }
  return bays;
}
