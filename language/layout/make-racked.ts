import { floorToStep, ROUNDING, type Ticks } from '../units/index.ts';
import { heightAt, type Incline } from './incline.ts';
import { type About, makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';

/** The slope of a racked bay: its rise for one tick along, and the station where heights are as stated. */
export interface Racking {
  readonly at: Ticks;
  readonly rise: number;
}

/** A place in a racked bay: stations, depth, and heights as they are at the racking's station. */
interface RackedBlock {
  readonly x: readonly [Ticks, Ticks];
  readonly y: readonly [Ticks, Ticks];
  readonly z: readonly [number, number];
}

/** How much more room a board takes upright when it slopes than across its own width. */
export function slopedOver(rise: number): number {
  return Math.hypot(1, rise);
}

/** A plumb slat whose ends are sawn to the slope: `z` are those of its middle line, at the racking's station. */
export function makePlumb(
  about: About,
  stock: { readonly name: string; readonly ripped?: boolean },
  { x, y, z }: RackedBlock,
  { at, rise }: Racking,
): Piece {
  return makePiece(about, {
    stock: stock.name,
    ripped: stock.ripped ?? false,
    origin: [x[0], y[0], z[0] + rise * (x[0] - at)],
    grain: [0, 0, 1],
    across: [1, 0, 0],
    through: [0, 1, 0],
    width: x[1] - x[0],
    thickness: y[1] - y[0],
    ends: [
      { at: 0, miter: rise },
      { at: z[1] - z[0], miter: rise },
    ],
  });
}

/**
 * A board that slopes with its bay, `width` wide, its ends plumb: from one station to another, with its top edge at
 * `top` at the racking's station. Tip to tip it is a whole number of steps, no longer than its place. Where `under` is
 * given that is its bottom edge, and `width` what it is at its wider end.
 */
export function makeSloped(
  about: About,
  stock: { readonly name: string; readonly ripped?: boolean; readonly under?: Incline },
  { x, y, top, width }: Omit<RackedBlock, 'z'> & { readonly top: number; readonly width: Ticks },
  { at, rise }: Racking,
  step: Ticks,
): Piece {
  const over = slopedOver(rise);
  const [cos, sin] = [1 / over, rise / over];
  const { under } = stock;
  const tips = Math.abs(rise) * width;
  const place = (x[1] - x[0]) * over;
  const long = floorToStep(place + tips + ROUNDING, step) - tips;
  const length = long > 0 ? long : place;
  const from = x[0] + ((place - length) * cos) / 2;
  return makePiece(about, {
    stock: stock.name,
    ripped: stock.ripped ?? false,
    origin: [from, y[0], top + rise * (from - at)],
    grain: [cos, 0, sin],
    across: [sin, 0, -cos],
    through: [0, 1, 0],
    width,
    thickness: y[1] - y[0],
    ends: [
      { at: 0, miter: 0 - rise },
      { at: length, miter: 0 - rise },
    ],
    ...(under ? { taper: taperAlong({ at, z: top, rise }, under, from) } : {}),
  });
}

/** The bottom edge by how far below the top one it is, square to that, along it from a station. */
function taperAlong(top: Incline, bottom: Incline, from: number): { start: number; per: number } {
  const over = slopedOver(top.rise);
  const [cos, sin] = [1 / over, top.rise / over];
  const seen = (x: number) => {
    const [dx, dz] = [x - from, heightAt(bottom, x) - heightAt(top, from)];
    return [dx * cos + dz * sin, dx * sin - dz * cos] as const;
  };
  const [a, b] = [seen(from), seen(from + 1_000_000)];
  const per = (b[1] - a[1]) / (b[0] - a[0]);
  return { start: a[1] - per * a[0], per };
}
