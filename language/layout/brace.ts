import type { Ticks } from '../units/index.ts';
import { floorToStep } from '../units/index.ts';
import type { Range } from './infill.ts';
import { type About, makePiece } from './make-piece.ts';
import type { Piece, Vec3 } from './piece.ts';

/** The inside of a leaf's frame, and the brace that goes into it. */
export interface BracePlace {
  readonly inside: { readonly x: Range; readonly z: Range };
  /** Through the screen. */
  readonly y: Range;
  readonly width: Ticks;
  readonly hinges: 'left' | 'right';
  readonly step: Ticks;
}

/** Which pieces of the frame the brace's ends stand on: rails in a tall leaf, stiles in a wide one. */
export function braceStandsOn({ inside }: Pick<BracePlace, 'inside'>): 'rails' | 'stiles' {
  return heightOf(inside) >= widthOf(inside) ? 'rails' : 'stiles';
}

/** Whether a brace of this width goes into the frame at all. */
export function braceFits({ inside, width }: Pick<BracePlace, 'inside' | 'width'>): boolean {
  return width < Math.min(widthOf(inside), heightOf(inside));
}

/**
 * A brace from the low corner at the hinges to the high corner at the latch, where it pushes (common
 * practice). Its two ends are cut parallel to what they stand on and meet the inside corners, so it is a
 * parallelogram in the frame's plane.
 *
 * For rise H, run W and brace width w the end takes c along the rail, with c = w / sin(angle) and
 * tan(angle) = H / (W - c); solved for c that is a quadratic. Wide leaves exchange rise and run, which keeps
 * the miter at 45 degrees or less. It must fit (see `braceFits`).
 */
export function makeBrace(about: About, stock: string, place: BracePlace): Piece {
  const { inside, y, width, step } = place;
  const onRails = braceStandsOn(place) === 'rails';
  const far = onRails ? heightOf(inside) : widthOf(inside);
  const near = onRails ? widthOf(inside) : heightOf(inside);
  const taken = endLength(near, far, width);
  const length = Math.hypot(near - taken, far);
  const along = (near - taken) / length;
  const beyond = far / length;
  // Over its width an end runs on by this much along the grain.
  const skew = taken * along;
  const total = length + skew;
  const short = (total - floorToStep(total + 1e-6, step)) / 2;
  const miter = skew / width;

  const away = place.hinges === 'left' ? 1 : -1;
  const plane = (run: number, rise: number): Vec3 => [away * run, 0, rise];
  return makePiece(about, {
    stock,
    ripped: false,
    origin: [inside.x[place.hinges === 'left' ? 0 : 1], y[0], inside.z[0]],
    grain: onRails ? plane(along, beyond) : plane(beyond, along),
    across: onRails ? plane(beyond, -along) : plane(-along, beyond),
    through: [0, 1, 0],
    width,
    thickness: y[1] - y[0],
    ends: [
      { at: short, miter },
      { at: length - short, miter },
    ],
  });
}

/** Length of the cut at an end, for a strip of this width from corner to corner of a place near by far. */
function endLength(near: Ticks, far: Ticks, width: Ticks): number {
  const root = far * Math.sqrt(near * near + far * far - width * width);
  return (width * (root - width * near)) / (far * far - width * width);
}

const widthOf = ({ x }: BracePlace['inside']): Ticks => x[1] - x[0];

const heightOf = ({ z }: BracePlace['inside']): Ticks => z[1] - z[0];
