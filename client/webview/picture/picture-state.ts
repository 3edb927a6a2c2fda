import {
  applyDelta,
  arrangeSheet,
  type Delta,
  type Sheet,
  type View,
} from '../../../language/drawing/index.ts';

/** A picture as known, with its views laid out on one sheet. */
export interface PictureState {
  /** 0 while nothing was received. */
  readonly version: number;
  readonly views: readonly View[];
  readonly sheet: Sheet;
}

export const NO_PICTURE: PictureState = { version: 0, views: [], sheet: { box: [0, 0, 0, 0], places: [] } };

/** The picture after a delta; undefined when the delta does not continue it and all of it must be asked for. */
export function receive(state: PictureState, delta: Delta): PictureState | undefined {
  if (delta.base !== 0 && delta.base !== state.version) return undefined;
  const views = applyDelta(state.views, delta);
  if (views.length !== delta.order.length) return undefined;
  return { version: delta.version, views, sheet: arrangeSheet(views) };
}
