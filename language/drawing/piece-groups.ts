import type { Piece, Role } from '../layout/index.ts';
import { splitAt } from './ground-split.ts';
import { hashText } from './hash.ts';
import { hiddenEdges, isHidden } from './occlusion.ts';
import { hundredth, linePath, outlinePath } from './path-text.ts';
import { placesBefore, placesOf, type Seen, shapesBefore } from './places.ts';
import type { Silhouette } from './project.ts';
import type { Group, Hit, Style } from './view.ts';

/** What carries the slats is told in thin dashes where it lies behind them; the rest is left out where hidden. */
const TOLD_WHEN_HIDDEN: ReadonlySet<Role> = new Set<Role>([
  'post',
  'rail',
  'stiffener',
  'batten',
  'collar',
  'stile',
  'brace',
  'cable',
  'spacer',
]);

/** Pieces with their hidden lines drawn: all that carries slats, but no half of a post behind the other. */
export function carriesSlats(piece: Piece): boolean {
  return TOLD_WHEN_HIDDEN.has(piece.role) && (piece.role !== 'post' || piece.side === 'middle');
}

/** Height of the ground on the sheet, by how far along. Posts are parted level there. */
export type GroundAt = (x: number) => number;

/** Hidden lines are drawn over what hides them. */
export const HIDDEN_DEPTH = -1e6;

/**
 * Groups of all pieces seen: alike pieces of a bay or leaf in one, hidden lines of each bay or leaf
 * in another. Below `ground` (sheet y) posts are drawn as buried. `told` picks the pieces whose hidden
 * lines are drawn. With `layers` slats of a farther layer are paler.
 */
export function pieceGroups(
  seen: readonly Seen[],
  ground: GroundAt,
  told: (piece: Piece) => boolean = carriesSlats,
  layers = true,
): Group[] {
  const places = placesOf(seen);
  const alike = new Groups();
  const hidden = new Groups();
  for (const place of places) {
    const before = placesBefore(place, places);
    const nearest = nearestSlat(place.seen);
    for (const one of place.seen) {
      const front = shapesBefore(one.shape, before);
      if (front.length > 0 && told(one.piece)) drawHidden(hidden, place.key, one, front, ground);
      if (front.length > 0 && isHidden(one.shape, front)) continue;
      draw(alike, place.key, one, ground, layers && isFar(one, nearest));
    }
  }
  return [...alike.all.values(), ...hidden.all.values()].map(finish);
}

interface Drawn {
  readonly key: string;
  readonly place: string;
  readonly style: Style;
  readonly side: Piece['side'] | undefined;
  depth: number;
  path: string;
  keys: string;
  readonly hits: Hit[];
}

/** Groups while they are filled. Pieces come bay by bay, alike ones together, so the last is mostly the next. */
class Groups {
  readonly all = new Map<string, Drawn>();
  private last: Drawn | undefined;

  open(place: string, style: Style, side: Piece['side'] | undefined, depth: number): Drawn {
    let drawn = this.last;
    if (drawn?.place !== place || drawn.style !== style || drawn.side !== side) {
      const key = side === undefined ? `${place}/${style}` : `${place}/${style}.${side}`;
      drawn = this.all.get(key);
      if (!drawn) {
        drawn = { key, place, style, side, depth, path: '', keys: '', hits: [] };
        this.all.set(key, drawn);
      }
      this.last = drawn;
    }
    if (depth < drawn.depth) drawn.depth = depth;
    return drawn;
  }
}

/** Notes where a piece lies, and draws it if asked to. */
function add(drawn: Drawn, piece: Piece, part: Silhouette, drawIt: boolean): void {
  const x0 = hundredth(part.x0);
  const y0 = hundredth(part.y0);
  const x1 = hundredth(part.x1);
  const y1 = hundredth(part.y1);
  const box = [x0, y0, hundredth(x1 - x0), hundredth(y1 - y0)] as const;
  drawn.keys += piece.key;
  drawn.keys += '\n';
  if (part.outline) {
    if (drawIt) drawn.path += outlinePath(part.outline);
    drawn.hits.push({ piece: piece.key, box, outline: part.outline.map(hundredth) });
  } else {
    if (drawIt) drawn.path += `M${x0} ${y0}H${x1}V${y1}H${x0}Z`;
    drawn.hits.push({ piece: piece.key, box });
  }
}

function draw(groups: Groups, place: string, one: Seen, ground: GroundAt, far: boolean): void {
  const { piece, shape } = one;
  if (one.cut) {
    add(groups.open(place, 'section', piece.side, shape.near), piece, shape, true);
    return;
  }
  if (piece.role !== 'post') {
    add(groups.open(place, far ? 'slat-far' : styleOf(piece), piece.side, shape.near), piece, shape, true);
    return;
  }
  const { above, below } = splitAt(shape, ground((shape.x0 + shape.x1) / 2));
  if (above) add(groups.open(place, 'post', piece.side, shape.near), piece, above, true);
  if (below) add(groups.open(place, 'post-buried', undefined, shape.near), piece, below, true);
}

function drawHidden(
  groups: Groups,
  place: string,
  one: Seen,
  front: readonly Silhouette[],
  ground: GroundAt,
): void {
  const part =
    one.piece.role === 'post'
      ? splitAt(one.shape, ground((one.shape.x0 + one.shape.x1) / 2)).above
      : one.shape;
  if (!part) return;
  const lines = hiddenEdges(part, front);
  // All its edges may coincide with those of what hides it: nothing to draw, yet something to light up.
  if (lines.length === 0 && !isHidden(one.shape, front)) return;
  const drawn = groups.open(place, 'hidden', undefined, HIDDEN_DEPTH);
  for (const line of lines) drawn.path += linePath(...line);
  add(drawn, one.piece, part, false);
}

function nearestSlat(seen: readonly Seen[]): number {
  return seen.reduce(
    (least, { piece, shape }) => (isSlat(piece) ? Math.min(least, shape.near) : least),
    Infinity,
  );
}

/** Slats and trim of a farther layer than the first: not only a little behind because the first are thicker. */
function isFar({ piece, shape }: Seen, nearest: number): boolean {
  return isSlat(piece) && shape.near - nearest > shape.far - shape.near;
}

const isSlat = ({ role }: Piece): boolean => role === 'slat' || role === 'trim';

function styleOf(piece: Piece): Style {
  switch (piece.role) {
    case 'slat':
      return piece.cut.ripped ? 'slat-cut' : 'slat';
    case 'stile':
      return 'frame';
    case 'cap':
    case 'collar':
    case 'filler':
      return 'trim';
    case 'batten':
    case 'stiffener':
    case 'kick':
      return 'rail';
    case 'channel':
    case 'spacer':
      return 'cleat';
    case 'cable':
    case 'prop':
      return 'brace';
    case 'strip':
    case 'stake':
      return 'cleat';
    case 'rail':
      return piece.gate === undefined ? 'rail' : 'frame';
    default:
      return piece.role;
  }
}

function finish({ key, style, path, keys, hits, depth: nearest }: Drawn): Group {
  const depth = hundredth(nearest);
  return { key, hash: hashText(`${style} ${depth}\n${path}\n${keys}`), style, path, hits, depth };
}
