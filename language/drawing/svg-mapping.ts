import { hundredth, linePath } from './path-text.ts';
import { MIDDLE, RING } from './place-labels.ts';
import type { Group, PlacedLabel } from './view.ts';

/** An element as plain data: attributes and text are put as values, never as markup. */
export interface SvgElement {
  readonly tag: 'path' | 'text' | 'circle';
  readonly attrs: Readonly<Record<string, string | number>>;
  readonly text?: string;
}

/** The one element of a group. Its look follows from its class alone. */
export function groupElement(group: Group): SvgElement {
  return { tag: 'path', attrs: { class: `pen-${group.style}`, d: group.path } };
}

/** The text of a label, and the leader or ring that goes with it. Looks follow from classes and the font size. */
export function labelElements(placed: PlacedLabel, letter: number): SvgElement[] {
  const { label, leader, size } = placed;
  const x = hundredth(placed.x);
  const y = hundredth(placed.y);
  const attrs: Record<string, string | number> = {
    class: `label-${label.kind}`,
    x,
    y,
    'text-anchor': placed.anchor,
    'font-size': hundredth(size),
  };
  // Turned counterclockwise about its own anchor, so that it is read from the right.
  if (label.turn === 90) attrs.transform = `rotate(-90 ${x} ${y})`;
  const elements: SvgElement[] = [{ tag: 'text', attrs, text: label.text }];
  if (leader) elements.push({ tag: 'path', attrs: { class: 'pen-leader', d: linePath(...leader) } });
  if (label.kind === 'mark') {
    elements.push({
      tag: 'circle',
      attrs: { class: 'pen-ring', cx: x, cy: hundredth(y - MIDDLE * size), r: hundredth(RING * letter) },
    });
  }
  return elements;
}
