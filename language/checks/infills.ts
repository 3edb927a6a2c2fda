import type { FitResult, Leaf, Opening, Piece, RunLayout } from '../layout/index.ts';
import type { InfillSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';

/** One filled surface of a run: its own bays together, or one gate leaf. */
export interface Infill {
  readonly spec: InfillSpec;
  /** Set for a gate leaf. */
  readonly leaf?: Leaf;
  /** Between slats, and at the edges when the pattern closes. */
  readonly openings: readonly Opening[];
  readonly slats: readonly Piece[];
  readonly fits: readonly FitResult[];
}

/** The run's bays first, then each gate leaf. */
export function infillsOf(run: RunLayout): readonly Infill[] {
  const own = part(run, undefined, run.spec.infill);
  return [own, ...run.leaves.map((leaf) => ({ ...part(run, leaf.gate, leaf.spec.infill), leaf }))];
}

function part(run: RunLayout, gate: string | undefined, spec: InfillSpec): Infill {
  const fits = run.fits.filter((fit) => fit.gate === gate);
  // What a pattern that does not close leaves over is told as that, and not again as a gap.
  const closed = fits.every((fit) => fit.chosen);
  return {
    spec,
    openings: run.openings.filter((o) => o.gate === gate && (closed || o.between)),
    slats: run.pieces.filter((p) => p.role === 'slat' && p.gate === gate),
    fits,
  };
}

/** Size of an opening in the direction the pattern reads. */
export function openingSize(infill: Infill, opening: Opening): Ticks {
  return infill.spec.flip.upright ? opening.x1 - opening.x0 : opening.z1 - opening.z0;
}
