import { G } from '@svgdotjs/svg.js';
import {
  type Group,
  groupElement,
  labelElements,
  placeLabels,
  type SheetPlace,
  type SvgElement,
  type View,
} from '../../../language/drawing/index.ts';
import { type Keyed, KeyedLayer } from './keyed-layer.ts';

/** One view of the picture: its lines, its labels and, when it is stale, a quiet word of that. */
export class ViewFigure {
  readonly group = new G().addClass('view');
  private readonly lines = new KeyedLayer('lines');
  private readonly labels = new KeyedLayer('labels');
  private readonly tag = new KeyedLayer('tag');
  private view: View | undefined;
  private letter = 0;
  private place = '';

  constructor() {
    this.group.add(this.lines.group).add(this.labels.group).add(this.tag.group);
  }

  /** Shows a state of the view. What was shown already, at the same size of letters, costs nothing. */
  show(view: View, letter: number): void {
    const { view: old, letter: was } = this;
    if (old === view && was === letter) return;
    this.view = view;
    this.letter = letter;
    if (was !== letter) this.group.css('--letter', `${letter}px`);
    if (old?.groups !== view.groups) this.lines.show(view.groups.map(asElement));
    if (old?.labels !== view.labels || was !== letter) this.labels.show(labelsOf(view, letter));
    if (old?.stale !== view.stale) this.group[view.stale ? 'addClass' : 'removeClass']('stale');
    this.tag.show(view.stale ? [staleTag(view, letter)] : []);
  }

  moveTo({ x, y }: SheetPlace): void {
    const place = `translate(${x} ${y})`;
    if (this.place !== place) this.group.attr('transform', place);
    this.place = place;
  }
}

const elements = new WeakMap<Group, Keyed>();

function asElement(group: Group): Keyed {
  let keyed = elements.get(group);
  if (!keyed) {
    keyed = { key: group.key, element: groupElement(group) };
    elements.set(group, keyed);
  }
  return keyed;
}

function labelsOf(view: View, letter: number): Keyed[] {
  return placeLabels(view.labels, letter).flatMap((placed) =>
    labelElements(placed, letter).map((element) => ({ key: `${placed.label.key} ${element.tag}`, element })),
  );
}

function staleTag(view: View, letter: number): Keyed {
  const [x, y] = view.box;
  const element: SvgElement = {
    tag: 'text',
    attrs: { class: 'label-stale', x, y: y - 0.4 * letter, 'font-size': letter },
    text: 'last good picture',
  };
  return { key: 'stale', element };
}
