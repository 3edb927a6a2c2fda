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

/** Between views, in letters. */
const APART = 2;

/**
 * All views on one sheet at one scale: rows down the page, each beginning at the left. The plan and each run's
 * elevation have a row to themselves; gate leaves stand beside one another in the next, and so do sections, as many as the widest view takes.
 */
export function arrangeSheet(views: readonly ViewFrame[]): Sheet {
  const places: SheetPlace[] = [];
  const widest = Math.max(0, ...views.map((view) => view.box[2]));
  let y = 0;
  for (const row of rowsOf(views, widest)) {
    let x = 0;
    for (const view of row) {
      places.push({ key: view.key, x: hundredth(x - view.box[0]), y: hundredth(y - view.box[1]) });
      x += view.box[2] + APART * view.letter;
    }
    y += Math.max(...row.map((view) => view.box[3] + APART * view.letter));
  }
  const last = views[views.length - 1];
  return { box: [0, 0, hundredth(widest), hundredth(last ? y - APART * last.letter : 0)], places };
}

function rowsOf(views: readonly ViewFrame[], widest: number): ViewFrame[][] {
  const rows: ViewFrame[][] = [];
  let width = 0;
  let open: string | undefined;
  for (const view of views) {
    const apart = APART * view.letter;
    if (open !== undefined && open === rowOf(view) && width + apart + view.box[2] <= widest) {
      rows[rows.length - 1]?.push(view);
      width += apart + view.box[2];
      continue;
    }
    rows.push([view]);
    width = view.box[2];
    // A row opened by a plan or by a run's elevation takes no other view.
    open = rowOf(view);
  }
  return rows;
}

/** What views share that may stand in a row. */
function rowOf({ part, run, kind }: ViewFrame): string | undefined {
  return part === 'leaf' ? `${kind} ${run}` : part === 'section' ? part : undefined;
}
