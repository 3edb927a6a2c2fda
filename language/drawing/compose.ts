import { around, type Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { sheetOrder } from './sheet-order.ts';
import type { View } from './view.ts';

/** Room around everything drawn, in letters. */
const MARGIN = 1.2;

/** One view of parts drawn in the same coordinates. */
export function compose(
  frame: Omit<View, 'box' | 'groups' | 'labels' | 'stale'>,
  parts: readonly Part[],
): View {
  const [x0, y0, x1, y1] = around(...parts.map((part) => part.bounds));
  const margin = MARGIN * frame.letter;
  const { groups, labels } = sheetOrder(
    parts.flatMap((part) => part.groups),
    parts.flatMap((part) => part.labels),
  );
  return {
    ...frame,
    box: [
      hundredth(x0 - margin),
      hundredth(y0 - margin),
      hundredth(x1 - x0 + 2 * margin),
      hundredth(y1 - y0 + 2 * margin),
    ],
    groups,
    labels,
    stale: false,
  };
}
