import { adopt, create, type Element, G, type Text } from '@svgdotjs/svg.js';
import type { SvgElement } from '../../../language/drawing/index.ts';

/** An element as it shall be, under a key of its layer. */
export interface Keyed {
  readonly key: string;
  readonly element: SvgElement;
}

interface Shown {
  readonly made: Element;
  as: SvgElement;
}

/**
 * A layer whose elements are known by key. Showing a new list touches only what differs: an element
 * under the same key keeps its identity, an attribute of the same value is not written.
 */
export class KeyedLayer {
  readonly group: G;
  private readonly shown = new Map<string, Shown>();

  constructor(name: string) {
    this.group = new G().addClass(name);
  }

  show(parts: readonly Keyed[]): void {
    const wanted = new Map(parts.map(({ key, element }) => [key, element]));
    for (const [key, { made, as }] of this.shown) {
      if (wanted.get(key)?.tag === as.tag) continue;
      made.remove();
      this.shown.delete(key);
    }
    const parent = this.group.node;
    let next: ChildNode | null = parent.firstChild;
    for (const [key, element] of wanted) {
      const { node } = this.put(key, element);
      if (node === next) next = next.nextSibling;
      else parent.insertBefore(node, next);
    }
  }

  private put(key: string, element: SvgElement): Element {
    const shown = this.shown.get(key);
    if (shown) {
      patch(shown.made, shown.as, element);
      shown.as = element;
      return shown.made;
    }
    const made = make(element);
    made.node.setAttribute('data-key', key);
    this.shown.set(key, { made, as: element });
    return made;
  }
}

const BARE: SvgElement = { tag: 'path', attrs: {} };

function make(element: SvgElement): Element {
  const made = adopt(create(element.tag)) as Element;
  // Else every change of a text's place or size would measure and rebuild it.
  if (element.tag === 'text') (made as Text).rebuild(false);
  patch(made, BARE, element);
  return made;
}

function patch(made: Element, from: SvgElement, to: SvgElement): void {
  for (const [name, value] of Object.entries(to.attrs)) {
    if (from.attrs[name] !== value) made.attr(name, value);
  }
  for (const name of Object.keys(from.attrs)) {
    // Null takes an attribute away.
    if (!(name in to.attrs)) made.attr(name, null);
  }
  if (from.text !== to.text) (made as Text).clear().plain(to.text ?? '');
}
