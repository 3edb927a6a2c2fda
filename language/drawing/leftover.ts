import type { FitResult, Leaf, RunLayout } from '../layout/index.ts';
import { type Ticks, toMm } from '../units/index.ts';
import { lineGroup } from './line-group.ts';
import { rectPath } from './path-text.ts';
import type { Group } from './view.ts';

/** Painted behind the pieces. */
const DEPTH = 5e4;

/** The space a pattern was to fill. */
type Space = Pick<Leaf, 'x0' | 'x1' | 'z0' | 'z1'>;

/**
 * What the nominal pattern leaves open in the bays where nothing asked for closes: below the last
 * level slat, or after the last upright one.
 */
export function bayLeftovers(run: RunLayout): Group[] {
  const bays = (fit: FitResult): Space[] =>
    run.bays
      .filter((bay) => bay.gate === undefined && fit.bays.includes(bay.number))
      .map((bay) => ({ x0: bay.from, x1: bay.to, z0: run.bottom, z1: run.top }));
  const fits = run.fits.filter((fit) => fit.gate === undefined);
  return leftoverGroup(run.key, fits.map((fit) => leftoverPath(fit, bays(fit))).join(''));
}

/** The same for a gate leaf, which may be given in other coordinates than its run's. */
export function leafLeftover(run: RunLayout, leaf: Leaf, prefix: string): Group[] {
  const fits = run.fits.filter((fit) => fit.gate === leaf.gate);
  return leftoverGroup(prefix, fits.map((fit) => leftoverPath(fit, [leaf])).join(''));
}

function leftoverGroup(prefix: string, path: string): Group[] {
  return path === '' ? [] : [lineGroup(`${prefix}/leftover`, 'leftover', path, DEPTH)];
}

function leftoverPath(fit: FitResult, spaces: readonly Space[]): string {
  const left: Ticks = fit.leftover;
  if (fit.chosen !== undefined || !(left > 0)) return '';
  return spaces
    .map(({ x0, x1, z0, z1 }) =>
      fit.upright
        ? rectPath(toMm(Math.max(x0, x1 - left)), -toMm(z1), toMm(x1), -toMm(z0))
        : rectPath(toMm(x0), -toMm(Math.min(z1, z0 + left)), toMm(x1), -toMm(z0)),
    )
    .join('');
}
