import { gateKey, type Leaf, type Piece, type RunLayout } from '../layout/index.ts';
import type { Measure, Ticks } from '../units/index.ts';
import { type Chain, chain } from './chains.ts';
import { type Extent, extentOf } from './extent.ts';
import { isBehind } from './front-slats.ts';

/** All pieces a gate leaf is made of: its posts stand with the run. */
export function leafPieces(run: RunLayout, leaf: Leaf): Piece[] {
  return run.pieces.filter((piece) => piece.gate === leaf.gate && piece.role !== 'post');
}

/** Key of a leaf: what the keys of its pieces begin with. */
export function leafKey(run: RunLayout, leaf: Leaf): string {
  return gateKey(run.spec.name, leaf.spec);
}

/** The dimension strings of a leaf; positions, too, are from its own left and lower edge. */
export function leafChains(
  run: RunLayout,
  leaf: Leaf,
  measure: Measure,
  from: 'front' | 'back' = 'front',
): Chain[] {
  // Slats of the far face lie between those of the near one, or behind them: their edges would only crowd the chain.
  const pieces = leafPieces(run, leaf).filter((piece) => !isBehind(leaf.spec.infill, piece, from));
  const reach = (roles: readonly Piece['role'][]): Extent[] =>
    pieces.filter((piece) => roles.includes(piece.role)).map((piece) => extentOf(piece.solid));
  const slats = reach(['slat', 'trim']);
  const frame = 'frame' as const;
  const across = (parts: Pick<Chain, 'key' | 'kind' | 'parent'>, edges: readonly Extent[]) =>
    chain(
      { ...parts, side: 'top' },
      within(
        edges.flatMap((e) => [e.x0 - leaf.x0, e.x1 - leaf.x0]),
        leaf.width,
      ),
      0,
      measure,
    );
  const upward = (parts: Pick<Chain, 'key' | 'kind' | 'parent' | 'side'>, edges: readonly Extent[]) =>
    chain(
      parts,
      within(
        edges.flatMap((e) => [e.z0 - leaf.z0, e.z1 - leaf.z0]),
        leaf.height,
      ),
      0,
      measure,
    );
  const all = [
    across({ key: 'width', kind: 'overall' }, []),
    across({ key: 'stiles', kind: frame, parent: 'width' }, reach(['stile'])),
    upward({ key: 'height', kind: 'overall', side: 'left' }, []),
    upward({ key: 'rails', kind: frame, side: 'left', parent: 'height' }, reach(['rail'])),
    leaf.spec.infill.flip.upright
      ? across({ key: 'slats', kind: 'slats', parent: 'width' }, slats)
      : upward({ key: 'slats', kind: 'slats', side: 'right', parent: 'height' }, slats),
  ];
  // A chain that only repeats its parent says nothing.
  return all.filter((one) => one.at.length > (one.parent === undefined ? 1 : 2));
}

/** Both ends of a length, and what lies between them. */
function within(edges: readonly Ticks[], length: Ticks): Ticks[] {
  return [0, ...edges.filter((t) => t > 0 && t < length), length];
}
