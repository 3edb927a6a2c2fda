import type { Hit, View } from './view.ts';

/**
 * The piece a click at a point of a view means: the nearest thing drawn there, the smallest where
 * several are equally near. What is only told by hidden lines is not clicked.
 */
export function pieceAt(view: View, x: number, y: number): string | undefined {
  for (let i = view.groups.length - 1; i >= 0; i--) {
    const group = view.groups[i];
    if (!group || group.style === 'hidden') continue;
    let best: Hit | undefined;
    for (const hit of group.hits) {
      if (isIn(hit, x, y) && (!best || areaOf(hit) < areaOf(best))) best = hit;
    }
    if (best) return best.piece;
  }
  return undefined;
}

/** All places of a piece in a view: to be lit up when its statement is under the cursor. */
export function hitsOf(view: View, pieces: ReadonlySet<string>): Hit[] {
  return view.groups.flatMap((group) => group.hits.filter((hit) => pieces.has(hit.piece)));
}

function areaOf(hit: Hit): number {
  return hit.box[2] * hit.box[3];
}

function isIn(hit: Hit, x: number, y: number): boolean {
  const [left, top, width, height] = hit.box;
  if (x < left || y < top || x > left + width || y > top + height) return false;
  const { outline } = hit;
  if (!outline) return true;
  // A line from the point to the right crosses the outline an odd number of times.
  let inside = false;
  for (let i = 0; i < outline.length; i += 2) {
    const ax = outline[i] as number;
    const ay = outline[i + 1] as number;
    const bx = outline[(i + 2) % outline.length] as number;
    const by = outline[(i + 3) % outline.length] as number;
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) inside = !inside;
  }
  return inside;
}
