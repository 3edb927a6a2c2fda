import type { Piece, Role } from '../layout/index.ts';
import { splitAt } from './ground-split.ts';
import { hashText } from './hash.ts';
import { hiddenEdges, isHidden, overlap } from './occlusion.ts';
import { hundredth, linePath, outlinePath } from './path-text.ts';
import { type Projection, project, type Silhouette } from './project.ts';
import type { Group, Hit, Style } from './view.ts';

/** A piece as seen. */
export interface Seen extends Silhouette {
  readonly piece: Piece;
}

/** What carries the slats is told in thin dashes where it lies behind them; the rest is left out where hidden. */
const TOLD_WHEN_HIDDEN: ReadonlySet<Role> = new Set<Role>(['post', 'rail', 'stile', 'brace']);

/** Pieces with their hidden lines drawn: all that carries slats. */
export function carriesSlats(piece: Piece): boolean {
  return TOLD_WHEN_HIDDEN.has(piece.role);
}

/** Hidden lines are drawn over what hides them. */
export const HIDDEN_DEPTH = -1e6;

/** Every piece as seen by a projection. */
export function see(pieces: readonly Piece[], projection: Projection): Seen[] {
  return pieces.map((piece) => {
    const { x0, y0, x1, y1, outline, near, far } = project(piece.solid, projection);
    return { piece, x0, y0, x1, y1, outline, near, far };
  });
}

/**
 * Groups of all pieces seen: alike pieces of a bay or leaf in one, hidden lines of each bay or leaf
 * in another. Below `ground` (sheet y) posts are drawn as buried. `told` picks the pieces whose hidden
 * lines are drawn.
 */
export function pieceGroups(
  seen: readonly Seen[],
  ground: number,
  told: (piece: Piece) => boolean = carriesSlats,
): Group[] {
  const places = byPlace(seen);
  const alike = new Groups();
  const hidden = new Groups();
  for (const place of places) {
    const others = places.filter((other) => other.near < place.far && overlapsPlace(other, place));
    for (const one of place.seen) {
      const front = frontOf(one, others);
      if (front.length > 0 && told(one.piece)) drawHidden(hidden, place.key, one, front, ground);
      if (front.length > 0 && isHidden(one, front)) continue;
      draw(alike, place.key, one, ground);
    }
  }
  return [...alike.all.values(), ...hidden.all.values()].map(finish);
}

/** What shares a bay, a leaf, or the line of posts, with its bounds: things far apart need not be compared. */
interface Place {
  readonly key: string;
  readonly seen: Seen[];
  x0: number;
  x1: number;
  /** Least and greatest distance at which one of its pieces begins. */
  near: number;
  far: number;
}

function byPlace(seen: readonly Seen[]): Place[] {
  const places = new Map<string, Place>();
  for (const one of seen) {
    const owner = ownerOf(one.piece);
    let place = places.get(owner);
    if (!place) {
      place = { key: owner, seen: [], x0: Infinity, x1: -Infinity, near: Infinity, far: -Infinity };
      places.set(owner, place);
    }
    place.seen.push(one);
    if (one.x0 < place.x0) place.x0 = one.x0;
    if (one.x1 > place.x1) place.x1 = one.x1;
    if (one.near < place.near) place.near = one.near;
    if (one.near > place.far) place.far = one.near;
  }
  return [...places.values()];
}

/** Key of the bay or leaf a piece belongs to; for a post, of its run. */
function ownerOf(piece: Pick<Piece, 'key'>): string {
  return piece.key.slice(0, Math.max(0, piece.key.lastIndexOf('/')));
}

function overlapsPlace(place: Place, one: Pick<Silhouette, 'x0' | 'x1'>): boolean {
  return place.x0 < one.x1 && one.x0 < place.x1;
}

const NOTHING: readonly Silhouette[] = [];

/** Everything that may hide some of a piece. */
function frontOf(one: Seen, places: readonly Place[]): readonly Silhouette[] {
  let front: Silhouette[] | undefined;
  for (const place of places) {
    if (place.near >= one.near || !overlapsPlace(place, one)) continue;
    for (const other of place.seen) {
      if (other.near < one.near && overlap(one, other)) {
        front ??= [];
        front.push(other);
      }
    }
  }
  return front ?? NOTHING;
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

function draw(groups: Groups, place: string, one: Seen, ground: number): void {
  const { piece } = one;
  const style = styleOf(piece);
  const { above, below } = piece.role === 'post' ? splitAt(one, ground) : { above: one };
  if (above) add(groups.open(place, style, piece.side, one.near), piece, above, true);
  if (below) add(groups.open(place, 'post-buried', undefined, one.near), piece, below, true);
}

function drawHidden(
  groups: Groups,
  place: string,
  one: Seen,
  front: readonly Silhouette[],
  ground: number,
): void {
  const part = one.piece.role === 'post' ? splitAt(one, ground).above : one;
  if (!part) return;
  const lines = hiddenEdges(part, front);
  // All its edges may coincide with those of what hides it: nothing to draw, yet something to light up.
  if (lines.length === 0 && !isHidden(one, front)) return;
  const drawn = groups.open(place, 'hidden', undefined, HIDDEN_DEPTH);
  for (const line of lines) drawn.path += linePath(...line);
  add(drawn, one.piece, part, false);
}

function styleOf(piece: Piece): Style {
  switch (piece.role) {
    case 'slat':
      return piece.cut.ripped ? 'slat-cut' : 'slat';
    case 'stile':
      return 'frame';
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
