import type { FitChoice, FitResult, RunLayout } from '../layout/index.ts';
import type { InfillSpec, Origin } from '../model/index.ts';
import { isMeasured } from '../model/index.ts';
import { infillOf } from './infill-of.ts';

/** What a pattern fills, as it was planned and as it stands now. */
export interface BuiltPanel {
  /** A bay of an upright pattern; missing for level slats, which are the same in all bays. */
  readonly bay?: number;
  readonly gate?: string;
  readonly planned: PanelFit;
  readonly built: PanelFit;
}

/** How a pattern closes in a panel. */
export interface PanelFit {
  readonly fit: FitResult;
  /** Missing where it does not close. */
  readonly choice?: FitChoice;
  /** In ticks; of a pattern that does not close, the nominal one. */
  readonly gap: number;
}

/**
 * Panels of a run beside what was planned for them: of its bays, then of its leaves. None where nothing was measured,
 * where either cannot be built, or where the lines are those of another run, with which it is told.
 */
export function builtPanels(run: RunLayout): readonly BuiltPanel[] {
  const { planned } = run;
  if (!planned?.sound || !run.sound || run.spec.linesAs) return [];
  return run.fits
    .filter(({ mirrored }) => !mirrored)
    .flatMap((fit) => {
      const infill = infillOf(run, fit.gate);
      // Upright, each bay by itself: bays that are alike now may have been planned otherwise.
      const numbers = fit.upright && fit.gate === undefined ? fit.bays : [undefined];
      return numbers.flatMap((bay): BuiltPanel[] => {
        const before = planned.fits.find(
          (one) => one.gate === fit.gate && (bay === undefined || one.bays.includes(bay)),
        );
        if (!before) return [];
        return [
          {
            ...(bay === undefined ? {} : { bay }),
            ...(fit.gate === undefined ? {} : { gate: fit.gate }),
            planned: panelFit(before, infill),
            built: panelFit(fit, infill),
          },
        ];
      });
    })
    .sort(
      (a, b) => Number(a.gate !== undefined) - Number(b.gate !== undefined) || (a.bay ?? 0) - (b.bay ?? 0),
    );
}

function panelFit(fit: FitResult, { pattern }: InfillSpec): PanelFit {
  const { chosen } = fit;
  return { fit, ...(chosen ? { choice: chosen } : {}), gap: chosen?.gap ?? pattern.gap.value };
}

/** Where it is stated what made a panel come out otherwise: its boards, its bay, or what was measured of the run. */
export function measuredAt(run: RunLayout, { bay, gate }: Pick<BuiltPanel, 'bay' | 'gate'>): Origin {
  const { spec, planned } = run;
  const board = infillOf(run, gate).pattern.repeat.find(({ value }) => isMeasured(value))?.value;
  const own = spec.measured?.bays.find(({ number }) => number === bay);
  const height = bay === undefined ? spec.measured?.height : undefined;
  const ofBoard = board?.measured ?? board?.parent?.measured;
  return (own ?? height ?? ofBoard ?? spec.measured ?? planned?.spec ?? spec).origin;
}
