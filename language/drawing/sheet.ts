import { hundredth } from './path-text.ts';
import type { Box, ViewFrame } from './view.ts';

/** Where a view's own coordinates begin on the sheet: add `x` and `y` to them. */
export interface SheetPlace {
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

export interface Sheet {
  readonly box: Box;
  readonly places: readonly SheetPlace[];
}

/** Between views, in letters of the larger one. */
const APART = 2;

/**
 * All views on one sheet at one scale: rows down the page, each beginning at the left; the views of a
 * run that are narrow enough (its gate leaves) stand beside one another in a row.
 */
export function arrangeSheet(views: readonly ViewFrame[]): Sheet {
  const widest = Math.max(0, ...views.map((view) => view.box[2]));
  const places: SheetPlace[] = [];
  let [x, y, rowHeight, sheetWidth] = [0, 0, 0, 0];
  let run: string | undefined;
  for (const view of views) {
    const [left, top, width, height] = view.box;
    const apart = APART * view.letter;
    const first = run !== view.run || x === 0;
    // A run's own elevation opens a row for itself; so its leaves begin the next.
    const elevation = view.key === view.run || run !== view.run;
    if (!first && (x + width > widest || elevation)) [x, y, rowHeight] = [0, y + rowHeight + apart, 0];
    else if (first && places.length > 0 && x > 0) [x, y, rowHeight] = [0, y + rowHeight + apart, 0];
    places.push({ key: view.key, x: hundredth(x - left), y: hundredth(y - top) });
    rowHeight = Math.max(rowHeight, height);
    sheetWidth = Math.max(sheetWidth, x + width);
    x += width + apart;
    run = view.run;
  }
  return { box: [0, 0, hundredth(sheetWidth), hundredth(y + rowHeight)], places };
}
