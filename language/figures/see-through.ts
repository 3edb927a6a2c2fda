import { baysOf, type Opening, type Piece } from '../layout/index.ts';
import { boxOf } from './box.ts';

/**
 * Share of an infill that is open straight on, 0 to 1: the area of the openings over the area of openings
 * and slats together, as seen from the front; a slat right behind another hides nothing more. Posts, frames
 * and rails are left out, and with them the ends of slats that lie on them; they are closed anyway. So is what
 * closes the offset from another run, which belongs to no bay.
 */
export function seeThrough(openings: readonly Opening[], slats: readonly Piece[]): number {
  const open = openings.reduce((sum, o) => sum + (o.x1 - o.x0) * (o.z1 - o.z0), 0);
  const windows = windowsOf(openings);
  const own = slats.filter(({ bay, gate }) => bay !== undefined || gate !== undefined);
  const seen = new Map(own.map((slat) => [outline(slat), slat])).values();
  const closed = [...seen].reduce((sum, slat) => {
    const places = placesOf(slat).flatMap((place) => windows.get(place) ?? []);
    return (
      sum + (places.length > 0 ? places.reduce((all, one) => all + faceArea(slat, one), 0) : boxArea(slat))
    );
  }, 0);
  return open + closed > 0 ? open / (open + closed) : 0;
}

type Range = readonly [from: number, to: number];
interface Window {
  readonly x: Range;
  /** Of a bay that slopes, as it would be at station 0. */
  readonly z: Range;
  readonly rise: number;
}

const placeOf = ({ gate, bay }: Pick<Opening, 'gate' | 'bay'>): string =>
  gate === undefined ? `${bay}` : `gate ${gate}`;

/** Every bay that a slat goes through, or its leaf. */
const placesOf = (slat: Piece): readonly string[] =>
  slat.gate === undefined && slat.bay !== undefined
    ? baysOf(slat).map((bay) => placeOf({ bay }))
    : [placeOf(slat)];

/** What the openings of each bay and leaf reach over. */
function windowsOf(openings: readonly Opening[]): ReadonlyMap<string, Window> {
  const windows = new Map<string, Window>();
  for (const opening of openings) {
    const { x0, x1, rise = 0 } = opening;
    const [z0, z1] = [opening.z0, opening.z1].map((z) => z - rise * ((x0 + x1) / 2)) as [number, number];
    const place = placeOf(opening);
    const { x, z } = windows.get(place) ?? { x: [x0, x1], z: [z0, z1] };
    windows.set(place, {
      x: [Math.min(x[0], x0), Math.max(x[1], x1)],
      z: [Math.min(z[0], z0), Math.max(z[1], z1)],
      rise,
    });
  }
  return windows;
}

/** Where a slat is seen from the front. */
function outline(slat: Piece): string {
  const { low, high } = boxOf(slat);
  return [low[0], high[0], low[2], high[2]].join();
}

/** Of a slat as long as the openings beside it. */
function faceArea(slat: Piece, window: Window): number {
  const { low, high } = boxOf(slat);
  const [x, z]: [Range, Range] = [
    [low[0], high[0]],
    [low[2], high[2]],
  ];
  // A plumb slat sawn to a slope is as long on either edge as from one slope to the other.
  if (window.rise !== 0) return sizeOf(x) * shared(alongSlope(slat, window.rise), window.z);
  // Ripped with a taper it is as wide as at its middle.
  if (slat.cut.taper) return (shared(x, window.x) * (slat.cut.taper[0] + slat.cut.taper[1])) / 2;
  return sizeOf(x) >= sizeOf(z) ? shared(x, window.x) * sizeOf(z) : sizeOf(x) * shared(z, window.z);
}

function alongSlope({ solid }: Piece, rise: number): Range {
  const heights = solid.vertices.map(([x, , z]) => z - rise * x);
  return [Math.min(...heights), Math.max(...heights)];
}

function boxArea(slat: Piece): number {
  const { low, high } = boxOf(slat);
  return (high[0] - low[0]) * (high[2] - low[2]);
}

const sizeOf = (range: Range): number => range[1] - range[0];
const shared = (a: Range, b: Range): number => Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
