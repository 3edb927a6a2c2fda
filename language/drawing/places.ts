import type { Piece } from '../layout/index.ts';
import { overlap } from './occlusion.ts';
import { type Projection, project, type Silhouette } from './project.ts';
import { indexShapes, type ShapeIndex, visitBeside } from './shape-index.ts';

/** A piece as seen. */
export interface Seen {
  readonly piece: Piece;
  readonly shape: Silhouette;
  /** Its face where it is cut through. */
  readonly cut?: boolean;
}

/** What shares a bay or a leaf, with its bounds: things far apart need not be compared. */
export interface Place {
  readonly key: string;
  readonly seen: Seen[];
  x0: number;
  x1: number;
  /** Least and greatest distance at which one of its pieces begins. */
  near: number;
  far: number;
  /** Of what is seen here, made when first asked for. */
  index?: ShapeIndex;
}

/** Every piece as seen by a projection. */
export function see(pieces: readonly Piece[], projection: Projection): Seen[] {
  return pieces.map((piece) => ({ piece, shape: project(piece.solid, projection) }));
}

/** What is seen, by the bay or leaf it belongs to. Posts stand far apart: each is a place of its own, under its run's key. */
export function placesOf(seen: readonly Seen[]): Place[] {
  const shared = new Map<string, Place>();
  const posts: Place[] = [];
  let place: Place | undefined;
  for (const one of seen) {
    const { key, role } = one.piece;
    const end = Math.max(0, key.lastIndexOf('/'));
    if (role === 'post') {
      posts.push(take(emptyPlace(key.slice(0, end)), one));
      continue;
    }
    // Pieces come bay by bay, so the last place is mostly the next.
    if (place?.key.length !== end || !key.startsWith(place.key)) {
      const owner = key.slice(0, end);
      place = shared.get(owner) ?? emptyPlace(owner);
      shared.set(owner, place);
    }
    take(place, one);
  }
  return [...posts, ...shared.values()];
}

function emptyPlace(key: string): Place {
  return { key, seen: [], x0: Infinity, x1: -Infinity, near: Infinity, far: -Infinity };
}

function take(place: Place, one: Seen): Place {
  const { x0, x1, near } = one.shape;
  place.seen.push(one);
  if (x0 < place.x0) place.x0 = x0;
  if (x1 > place.x1) place.x1 = x1;
  if (near < place.near) place.near = near;
  if (near > place.far) place.far = near;
  return place;
}

/** Places in which something may lie before something of `place`. */
export function placesBefore(place: Place, places: readonly Place[]): Place[] {
  return places.filter((other) => other.near < place.far && other.x0 < place.x1 && place.x0 < other.x1);
}

const NOTHING: readonly Silhouette[] = [];

/** Everything in these places that may hide some of a shape. */
export function shapesBefore(shape: Silhouette, places: readonly Place[]): readonly Silhouette[] {
  let front: Silhouette[] | undefined;
  for (const place of places) {
    if (place.near >= shape.near || place.x0 >= shape.x1 || shape.x0 >= place.x1) continue;
    place.index ??= indexShapes(place.seen.map((one) => one.shape));
    visitBeside(place.index, shape, (other) => {
      if (other.near >= shape.near || !overlap(shape, other)) return;
      front ??= [];
      if (other.parts) front.push(...other.parts.filter((part) => overlap(shape, part)));
      else front.push(other);
    });
  }
  return front ?? NOTHING;
}
