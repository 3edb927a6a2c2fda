import { type FitResult, heightAt, type Leaf, type RunLayout, topEdge } from '../layout/index.ts';
import { type Measure, type Ticks, toMm } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import { lineGroup } from './line-group.ts';
import { hundredth, rectPath } from './path-text.ts';
import { MIDDLE } from './place-labels.ts';
import type { Group, Label } from './view.ts';

/** Painted behind the pieces. */
const DEPTH = 5e4;

/** The space a pattern was to fill. */
type Space = Pick<Leaf, 'x0' | 'x1' | 'z0' | 'z1'>;

interface Leftover {
  readonly groups: readonly Group[];
  readonly labels: readonly Label[];
}

/**
 * What the nominal pattern leaves open in the bays where nothing asked for closes: below the last
 * level slat, or after the last upright one.
 */
export function bayLeftovers(run: RunLayout, measure: Measure): Leftover {
  const open = run.fits
    .filter((fit) => fit.gate === undefined)
    .flatMap((fit) =>
      run.bays
        .filter((bay) => bay.gate === undefined && fit.bays.includes(bay.number))
        .flatMap((bay) =>
          leftOpen(fit, { x0: bay.from, x1: bay.to, z0: run.bottom, z1: run.top }).map((open) =>
            raised(run, bay.number, open),
          ),
        ),
    );
  return leftover(run.key, open, measure);
}

/** As tall as the pattern was to be, under the top of its bay there. */
function raised(run: RunLayout, bay: number, open: Open): Open {
  const top = topEdge(run, bay);
  const by = top ? Math.round(heightAt(top, (open.x0 + open.x1) / 2)) - run.top : 0;
  return { ...open, z0: open.z0 + by, z1: open.z1 + by };
}

/** The same for a gate leaf, which may be given in other coordinates than its run's. */
export function leafLeftover(run: RunLayout, leaf: Leaf, prefix: string, measure: Measure): Leftover {
  const fits = run.fits.filter((fit) => fit.gate === leaf.gate);
  return leftover(
    prefix,
    fits.flatMap((fit) => leftOpen(fit, leaf)),
    measure,
  );
}

interface Open extends Space {
  readonly upright: boolean;
}

function leftOpen(fit: FitResult, { x0, x1, z0, z1 }: Space): Open[] {
  const left: Ticks = fit.leftover;
  if (fit.chosen !== undefined || !(left > 0)) return [];
  return fit.upright
    ? [{ x0: Math.max(x0, x1 - left), x1, z0, z1, upright: true }]
    : [{ x0, x1, z0, z1: Math.min(z1, z0 + left), upright: false }];
}

function leftover(prefix: string, open: readonly Open[], measure: Measure): Leftover {
  if (open.length === 0) return { groups: [], labels: [] };
  const path = open.map(({ x0, x1, z0, z1 }) => rectPath(toMm(x0), -toMm(z1), toMm(x1), -toMm(z0))).join('');
  const labels = open.map((one, i): Label => {
    const { x0, x1, z0, z1, upright } = one;
    return {
      key: `${prefix}/leftover/${i + 1}`,
      text: `left over ${dimensionText(upright ? x1 - x0 : z1 - z0, measure)}`,
      x: hundredth(toMm((x0 + x1) / 2)),
      y: hundredth(-toMm((z0 + z1) / 2)),
      anchor: 'middle',
      turn: upright ? 90 : 0,
      shift: [0, -MIDDLE],
      kind: 'note',
      priority: 45,
      room: hundredth(toMm(upright ? x1 - x0 : z1 - z0)),
      roomFor: 'height',
    };
  });
  return { groups: [lineGroup(`${prefix}/leftover`, 'leftover', path, DEPTH)], labels };
}
