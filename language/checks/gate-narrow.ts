import { clearWhenOpen } from '../figures/index.ts';
import { ACCESSIBLE_CLEAR } from '../standards/index.ts';
import { formatLength, inches, mm } from '../units/index.ts';
import { type LimitedRunCheck, thresholdOf } from './define.ts';

/** A gate that is asked to be accessible and leaves too little to pass when it stands open. */
export const gateNarrow: LimitedRunCheck = {
  kind: {
    code: 'gate-narrow',
    severity: 'warning',
    stage: 'layout',
    basis: {
      kind: 'published',
      source: ACCESSIBLE_CLEAR.source,
      section: ACCESSIBLE_CLEAR.section,
      confirmed: 'primary',
    },
    threshold: {
      is: 'length',
      imperial: inches(ACCESSIBLE_CLEAR.value),
      metric: mm(815),
      says: 'least clear width of an accessible gate that stands open at a right angle',
    },
    message: (a) =>
      `Gate ${a.gate} leaves ${a.clear} to pass when it stands open; ${a.least} is asked of an accessible one. ` +
      `An opening of ${a.opening} would do. Slopes, latches and room to turn are ruled too: ask your local authority.`,
  },
  check: (run, job) => {
    const least = thresholdOf(job, gateNarrow.kind);
    return run.leaves.flatMap((leaf) => {
      if (!leaf.spec.accessible) return [];
      const clear = clearWhenOpen(
        leaf,
        run.pieces.filter((piece) => piece.gate === leaf.gate && piece.role !== 'post'),
      );
      if (clear >= least) return [];
      const shown = (ticks: number) => formatLength(ticks, job.measure.value);
      const opening = shown(leaf.spec.opening.value + least - clear);
      return [
        {
          code: 'gate-narrow',
          at: leaf.spec.accessible,
          args: { gate: leaf.gate, clear: shown(clear), least: shown(least), opening },
        },
      ];
    });
  },
};
