import { isMetric } from '../model/index.ts';
import { floorToStep, inches, type Measure, mm, type Ticks } from '../units/index.ts';
import type { BracePlace } from './brace.ts';
import { type About, makePiece } from './make-piece.ts';
import type { Piece } from './piece.ts';

/** Wire rope of gates, with a turnbuckle (common practice: 3/16 in, 5 mm). */
const THICK = { imperial: inches(3 / 16), metric: mm(5) };

/** How thick a cable is drawn. */
export function cableThickness(measure: Measure): Ticks {
  return THICK[isMetric(measure) ? 'metric' : 'imperial'];
}

/**
 * A cable from the high corner at the hinges to the low corner at the latch, where it pulls (common practice): the
 * other diagonal than that of a brace, which pushes. A thin bar on the diagonal from inside corner to inside corner
 * of the frame, with square ends as near to the corners as they go: the length between the eyes.
 */
export function makeCable(about: About, place: Omit<BracePlace, 'width'>): Piece {
  const { inside, y, hinges, step } = place;
  const width = y[1] - y[0];
  const [across, high] = [inside.x[1] - inside.x[0], inside.z[1] - inside.z[0]];
  const length = Math.hypot(across, high);
  const [run, rise] = [across / length, high / length];
  const least = (width / 2) * Math.max(rise / run, run / rise);
  const free = length - 2 * least;
  const spare = least + (free - (floorToStep(free + 1e-6, step) || free)) / 2;
  const away = hinges === 'left' ? 1 : -1;
  const [x, z] = [inside.x[hinges === 'left' ? 0 : 1], inside.z[1]];
  return makePiece(about, {
    stock: 'cable',
    ripped: false,
    // The width lies above and below the diagonal by halves.
    origin: [x + (away * rise * width) / 2, y[0], z + (run * width) / 2],
    grain: [away * run, 0, -rise],
    across: [-away * rise, 0, -run],
    through: [0, 1, 0],
    width,
    thickness: width,
    ends: [{ at: spare }, { at: length - spare }],
  });
}
