import type { Piece, Role } from '../layout/index.ts';
import { splitAt } from './ground-split.ts';
import { hashText } from './hash.ts';
import { hiddenEdges, inFront, isHidden } from './occlusion.ts';
import { hundredth, linePath, outlinePath, rectPath } from './path-text.ts';
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
  const alike = new Map<string, Drawn>();
  const hidden = new Map<string, Drawn>();
  for (const place of places) {
    for (const one of place.seen) {
      const front = places.flatMap((other) =>
        other.near < one.near && overlapsPlace(other, one) ? inFront(one, other.seen) : [],
      );
      if (front.length > 0 && told(one.piece)) drawHidden(hidden, place.key, one, front, ground);
      if (front.length > 0 && isHidden(one, front)) continue;
      draw(alike, place.key, one, ground);
    }
  }
  return [...alike, ...hidden].map(([key, drawn]) => finish(key, drawn));
}

/** What shares a bay, a leaf, or the line of posts, with its bounds: things far apart need not be compared. */
interface Place {
  readonly key: string;
  readonly seen: Seen[];
  x0: number;
  x1: number;
  near: number;
}

function byPlace(seen: readonly Seen[]): Place[] {
  const places = new Map<string, Place>();
  for (const one of seen) {
    const owner = ownerOf(one.piece);
    let place = places.get(owner);
    if (!place) {
      place = { key: owner, seen: [], x0: Infinity, x1: -Infinity, near: Infinity };
      places.set(owner, place);
    }
    place.seen.push(one);
    if (one.x0 < place.x0) place.x0 = one.x0;
    if (one.x1 > place.x1) place.x1 = one.x1;
    if (one.near < place.near) place.near = one.near;
  }
  return [...places.values()];
}

/** Key of the bay or leaf a piece belongs to; for a post, of its run. */
export function ownerOf(piece: Pick<Piece, 'key'>): string {
  return piece.key.slice(0, Math.max(0, piece.key.lastIndexOf('/')));
}

function overlapsPlace(place: Place, one: Silhouette): boolean {
  return place.x0 < one.x1 && one.x0 < place.x1;
}

interface Drawn {
  readonly style: Style;
  depth: number;
  path: string;
  keys: string;
  readonly hits: Hit[];
}

function open(groups: Map<string, Drawn>, key: string, style: Style, depth: number): Drawn {
  let drawn = groups.get(key);
  if (!drawn) {
    drawn = { style, depth, path: '', keys: '', hits: [] };
    groups.set(key, drawn);
  }
  if (depth < drawn.depth) drawn.depth = depth;
  return drawn;
}

function add(drawn: Drawn, piece: Piece, part: Silhouette): void {
  const x = hundredth(part.x0);
  const y = hundredth(part.y0);
  const box = [x, y, hundredth(part.x1 - x), hundredth(part.y1 - y)] as const;
  drawn.keys += `${piece.key}\n`;
  drawn.hits.push(
    part.outline
      ? { piece: piece.key, box, outline: part.outline.map(hundredth) }
      : { piece: piece.key, box },
  );
}

function draw(groups: Map<string, Drawn>, place: string, one: Seen, ground: number): void {
  const { piece } = one;
  const style = styleOf(piece);
  const parts = piece.role === 'post' ? splitAt(one, ground) : { above: one };
  if (parts.above) {
    const drawn = open(groups, `${place}/${style}.${piece.side}`, style, one.near);
    drawn.path += partPath(parts.above);
    add(drawn, piece, parts.above);
  }
  if (parts.below) {
    const drawn = open(groups, `${place}/post-buried`, 'post-buried', one.near);
    drawn.path += partPath(parts.below);
    add(drawn, piece, parts.below);
  }
}

function partPath(part: Silhouette): string {
  return part.outline ? outlinePath(part.outline) : rectPath(part.x0, part.y0, part.x1, part.y1);
}

function drawHidden(
  groups: Map<string, Drawn>,
  place: string,
  one: Seen,
  front: readonly Silhouette[],
  ground: number,
): void {
  const part = one.piece.role === 'post' ? splitAt(one, ground).above : one;
  if (!part) return;
  const lines = hiddenEdges(part, front);
  if (lines.length === 0) return;
  const drawn = open(groups, `${place}/hidden`, 'hidden', HIDDEN_DEPTH);
  for (const line of lines) drawn.path += linePath(...line);
  add(drawn, one.piece, part);
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

function finish(key: string, drawn: Drawn): Group {
  const { style, path, hits } = drawn;
  const depth = hundredth(drawn.depth);
  return { key, hash: hashText(`${style} ${depth}\n${path}\n${drawn.keys}`), style, path, hits, depth };
}
