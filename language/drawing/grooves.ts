import type { Groove, Hollow, Piece, Vec3 } from '../layout/index.ts';
import { lineGroup } from './line-group.ts';
import { linePath, outlinePath } from './path-text.ts';
import { HIDDEN_DEPTH } from './piece-groups.ts';
import type { Seen } from './places.ts';
import { corners, type Projection, project } from './project.ts';
import type { Group } from './view.ts';

/** Corners of a hollow: at its mouth and at its bottom, at either end, nearer the side where the section begins. */
interface Mouth {
  readonly foot: readonly [mouth: Vec3, bottom: Vec3];
  readonly top: readonly [mouth: Vec3, bottom: Vec3];
}

function mouthOf({ vertices, side }: Hollow): Mouth | undefined {
  const [a, b, , , c, d] = vertices;
  if (!a || !b || !c || !d) return undefined;
  return side === 'start' ? { foot: [a, b], top: [c, d] } : { foot: [b, a], top: [d, c] };
}

/** Grooves of posts, rails and stiles that one sees the front of, in dashes: their bottoms and their ends. */
export function hiddenGrooves(key: string, pieces: readonly Piece[], projection: Projection): Group[] {
  const at = { x: 0, y: 0, away: 0 };
  const point = ([x, y, z]: Vec3): readonly [number, number] => {
    projection(x, y, z, at);
    return [at.x, at.y];
  };
  const path = pieces
    .flatMap(({ cut, solid }) =>
      (cut.grooves ?? []).map((groove, index) => {
        const hollow = solid.hollows?.[index];
        const mouth = hollow && mouthOf(hollow);
        if (!mouth) return '';
        const [foot, bottom, top] = [mouth.foot[0], mouth.foot[1], mouth.top[1]].map(point) as [
          readonly [number, number],
          readonly [number, number],
          readonly [number, number],
        ];
        const ends = groove.to === undefined ? '' : linePath(...top, ...point(mouth.top[0]));
        return `${linePath(...foot, ...bottom)}${linePath(...bottom, ...top)}${ends}`;
      }),
    )
    .join('');
  return path === '' ? [] : [lineGroup(`${key}/grooves`, 'hidden', path, HIDDEN_DEPTH)];
}

/** A hair before the piece they are in, in millimeters: first what lies in them, then their edges. */
const FILLED = 0.003;
const EDGES = 0.005;

/** Grooves and channels that one looks into, with the spacers that lie there. */
export function openGrooves(key: string, seen: readonly Seen[], projection: Projection): Group[] {
  let [edges, filling, near] = ['', '', Infinity];
  for (const { piece, cut } of seen) {
    const { hollows } = piece.solid;
    if (!hollows || cut) continue;
    for (const hollow of hollows) {
      const mouth = mouthOf(hollow);
      if (!mouth || mouth.foot[0][0] <= mouth.foot[1][0]) continue;
      const shape = project(hollow, projection);
      edges += outlinePath(corners(shape));
      near = Math.min(near, shape.near);
    }
  }
  for (const { piece, shape } of seen)
    if (piece.role === 'spacer' && edges !== '') filling += outlinePath(corners(shape));
  if (edges === '') return [];
  return [
    lineGroup(`${key}/spacers`, 'cleat', filling, near - FILLED),
    lineGroup(`${key}/grooves`, 'hatch', edges, near - EDGES),
  ].filter(({ path }) => path !== '');
}

/** An upright piece seen from above, with its grooves where they run out at its top. */
export function notched(one: Seen, projection: Projection): Seen {
  const { solid } = one.piece;
  const [a, b, c, d] = solid.vertices.slice(4);
  if (!solid.hollows || !a || !b || !c || !d) return one;
  const ring: Vec3[] = [a, b];
  const into = (side: Groove['side']) =>
    solid.hollows?.find((hollow) => hollow.side === side)?.vertices.slice(4) ?? [];
  const [e, f, g, h] = into('end');
  if (e && f && g && h) ring.push(f, e, h, g);
  ring.push(c, d);
  const [i, j, k, l] = into('start');
  if (i && j && k && l) ring.push(l, k, j, i);
  const at = { x: 0, y: 0, away: 0 };
  const outline = ring.flatMap(([x, y, z]) => {
    projection(x, y, z, at);
    return [at.x, at.y];
  });
  const { parts: _, ...whole } = one.shape;
  return { ...one, shape: { ...whole, outline } };
}
