import type { Ticks } from '../units/index.ts';
import type { Range } from './infill.ts';
import type { Opening } from './layout.ts';
import type { Line } from './lines.ts';
import type { Racking } from './make-racked.ts';
import { twoDigits } from './names.ts';

/** Where one can look through an infill. */
export interface Sight {
  readonly key: string;
  readonly bay: number;
  readonly gate?: string;
  readonly upright: boolean;
  readonly lines: readonly Line[];
  /** Lines of the back, where slats lie on both faces, and how far the faces are apart. */
  readonly back?: readonly Line[];
  readonly cavity?: Ticks;
  /** The infill in the direction the pattern reads: heights when level, stations when upright. */
  readonly span: Range;
  /** What posts, rails and stiles leave free. */
  readonly x: Range;
  readonly z: Range;
}

/** Gaps between neighboring lines, and spaces at the infill's edges, as far as nothing hides them. */
export function openingsOf(sight: Sight): Opening[] {
  const { span, upright } = sight;
  const lines = inSight(sight);
  const found: Opening[] = [];
  const put = (name: string, gap: Range, neighbors: readonly (Line | undefined)[]) => {
    const across = clipped(gap, upright ? sight.x : sight.z);
    const along = upright ? sight.z : sight.x;
    if (!across || along[0] >= along[1]) return;
    const x = upright ? across : along;
    const z = upright ? along : across;
    const depths = neighbors.flatMap((line) => (line ? [line.stock.thickness.value] : []));
    found.push({
      key: `${sight.key}/${name}`,
      bay: sight.bay,
      gate: sight.gate,
      x0: x[0],
      x1: x[1],
      z0: z[0],
      z1: z[1],
      between: depths.length === 2,
      depth: depthOf(sight, Math.min(...depths), depths.length === 2),
    });
  };
  for (const [index, line] of lines.entries()) {
    const before = lines[index - 1];
    if (before) {
      const gap: Range = upright ? [before.high, line.low] : [line.high, before.low];
      put(`gap-${twoDigits(index)}`, gap, [before, line]);
    } else {
      const gap: Range = upright ? [span[0], line.low] : [line.high, span[1]];
      put(upright ? 'edge-left' : 'edge-top', gap, [line]);
    }
  }
  const last = lines.at(-1);
  if (last) {
    const gap: Range = upright ? [last.high, span[1]] : [span[0], last.low];
    put(upright ? 'edge-right' : 'edge-bottom', gap, [last]);
  }
  return found;
}

/** An opening of a racked bay: as tall, its middle moved up or down with the slope. */
export function rackedOpening(opening: Opening, { at, rise }: Racking): Opening {
  const by = Math.round(rise * ((opening.x0 + opening.x1) / 2 - at));
  return { ...opening, z0: opening.z0 + by, z1: opening.z1 + by, rise };
}

/** Lines one after the other as they stand in the way, whichever face they are on. */
function inSight({ lines, back, upright }: Sight): readonly Line[] {
  if (!back || back === lines) return lines;
  return [...lines, ...back].sort((a, b) => (upright ? a.low - b.low : b.high - a.high));
}

/** Through both faces and what is between them, except at an edge that one face alone makes. */
function depthOf({ lines, back, cavity }: Sight, thickness: Ticks, between: boolean): Ticks {
  return back && (between || back === lines) ? 2 * thickness + (cavity ?? 0) : thickness;
}

function clipped(a: Range, b: Range): Range | undefined {
  const low = Math.max(a[0], b[0]);
  const high = Math.min(a[1], b[1]);
  return low < high ? [low, high] : undefined;
}
