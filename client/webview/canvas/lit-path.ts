import { type Hit, outlinePath, rectPath, type SheetPlace } from '../../../language/drawing/index.ts';

/** One path around all places of lit pieces, in sheet coordinates. */
export function litPath(hits: readonly Hit[], { x, y }: SheetPlace): string {
  return hits
    .map(({ box: [left, top, width, height], outline }) =>
      outline
        ? outlinePath(outline.map((n, i) => n + (i % 2 === 0 ? x : y)))
        : rectPath(left + x, top + y, left + width + x, top + height + y),
    )
    .join('');
}
