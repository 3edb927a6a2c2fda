import { type Hit, hitsOf, pieceAt } from '../../../language/drawing/index.ts';
import type { PictureState } from './picture-state.ts';

/** A piece found, and the places of it in the view it was found in. */
export interface Picked {
  readonly piece: string;
  readonly view: string;
  readonly hits: readonly Hit[];
}

/** The piece at a point of the sheet. */
export function pickAt(state: PictureState, x: number, y: number): Picked | undefined {
  for (const place of state.sheet.places) {
    const view = state.views.find(({ key }) => key === place.key);
    if (!view) continue;
    const piece = pieceAt(view, x - place.x, y - place.y);
    if (piece !== undefined) {
      const seen = view.groups.filter(({ style }) => style !== 'hidden');
      return { piece, view: view.key, hits: hitsOf({ ...view, groups: seen }, new Set([piece])) };
    }
  }
  return undefined;
}
