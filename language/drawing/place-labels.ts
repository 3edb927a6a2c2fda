import { textWidth } from './text-width.ts';
import type { Anchor, Label, PlacedLabel, Shift } from './view.ts';

/** Above and below the baseline, in font sizes: capitals and digits, and the tails of letters. */
const ABOVE = 0.76;
const BELOW = 0.22;
/** Clear space kept around every text, in letters. */
const CLEAR = 0.15;
/** Radius of the ring around a mark, in letters. */
export const RING = 0.88;
/** Middle of a capital above its baseline, in font sizes. */
export const MIDDLE = 0.36;

/** Left, top, right, bottom. */
export type Bounds = readonly [number, number, number, number];

/** Titles are a size larger. */
export function sizeOf(kind: Label['kind'], letter: number): number {
  return kind === 'title' ? 1.3 * letter : letter;
}

/**
 * Which labels are shown when letters are `letter` sheet millimeters high, and where: by priority,
 * none on another. A text that has no room goes where it is led to, or leans the other way, if it may be
 * led; else it is left out.
 */
export function placeLabels(labels: readonly Label[], letter: number): PlacedLabel[] {
  if (!(letter > 0) || !Number.isFinite(letter)) return [];
  const taken = new Taken(4 * letter);
  const placed: PlacedLabel[] = [];
  const order = labels.every((label, i) => i === 0 || (labels[i - 1] as Label).priority <= label.priority)
    ? labels
    : [...labels].sort((a, b) => a.priority - b.priority);
  for (const label of order) {
    if (label.text === '' || !Number.isFinite(label.x) || !Number.isFinite(label.y)) continue;
    const size = sizeOf(label.kind, letter);
    const needed = label.roomFor === 'height' ? size : textWidth(label.text) * size + CLEAR * letter;
    const choices = waysOut(label).map(({ anchor, shift }) => at(label, anchor, shift, letter, size, true));
    if (label.room === 0 || needed <= label.room) {
      choices.unshift(at(label, label.anchor, label.shift, letter, size, false));
    }
    const one = choices.find((choice) => taken.take(roomFor(choice, letter)));
    if (one) placed.push(one);
  }
  return placed;
}

type Way = NonNullable<Label['led']>;

function waysOut({ led }: Label): readonly Way[] {
  if (!led) return [];
  return led.anchor === 'middle' ? [led] : [led, leantOver(led)];
}

const OTHER: Readonly<Record<Anchor, Anchor>> = { start: 'end', middle: 'middle', end: 'start' };

/** A text on the other side of its point. */
export function leantOver({ anchor, shift: [along, up] }: Way): Way {
  return { anchor: OTHER[anchor], shift: [0 - along, up] };
}

function at(
  label: Label,
  anchor: Anchor,
  [along, up]: Shift,
  letter: number,
  size: number,
  led: boolean,
): PlacedLabel {
  const point = (a: number, u: number): [number, number] =>
    label.turn === 0
      ? [label.x + a * letter, label.y - u * letter]
      : [label.x - u * letter, label.y - a * letter];
  const [x, y] = point(along, up);
  if (!led) return { label, x, y, anchor, size };
  const [x0, y0] = point(0, 0.12);
  const [x1, y1] = point(anchor === 'middle' ? along : along * 0.5, up - 0.2);
  return { label, x, y, anchor, size, leader: [x0, y0, x1, y1] };
}

/** What a placed label keeps to itself: its text with some air, and the line of its leader. */
function roomFor(placed: PlacedLabel, letter: number): Bounds[] {
  const text = boundsOf(placed, letter, CLEAR * letter);
  if (!placed.leader) return [text];
  const [x0, y0, x1, y1] = placed.leader;
  return [text, [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1) + 0.01, Math.max(y0, y1) + 0.01]];
}

/** The room a placed label takes on the sheet, `clear` more on every side; a mark's with its ring. */
export function boundsOf(placed: PlacedLabel, letter: number, clear = 0): Bounds {
  const { label, x, y, anchor, size } = placed;
  const width = textWidth(label.text) * size;
  if (label.kind === 'mark') {
    const r = RING * letter + clear;
    const middle = y - MIDDLE * size;
    const half = Math.max(r, width / 2 + clear);
    return [x - half, middle - r, x + half, middle + r];
  }
  const from = (anchor === 'start' ? 0 : anchor === 'middle' ? -width / 2 : -width) - clear;
  const to = from + width + 2 * clear;
  const above = ABOVE * size + clear;
  const below = BELOW * size + clear;
  return label.turn === 0
    ? [x + from, y - above, x + to, y + below]
    : [x - above, y - to, x + below, y - from];
}

/** Boxes taken so far, in square cells so that only neighbors are compared. */
class Taken {
  private readonly cell: number;
  private readonly cells = new Map<string, Bounds[]>();

  constructor(cell: number) {
    this.cell = cell;
  }

  /** Takes boxes, unless one of them touches a box already taken. */
  take(boxes: readonly Bounds[]): boolean {
    const keys = boxes.map((box) => this.keysOf(box));
    for (const [i, box] of boxes.entries()) {
      for (const key of keys[i] ?? []) {
        for (const other of this.cells.get(key) ?? []) {
          if (box[0] < other[2] && other[0] < box[2] && box[1] < other[3] && other[1] < box[3]) return false;
        }
      }
    }
    for (const [i, box] of boxes.entries()) {
      for (const key of keys[i] ?? []) {
        const list = this.cells.get(key);
        if (list) list.push(box);
        else this.cells.set(key, [box]);
      }
    }
    return true;
  }

  private keysOf(box: Bounds): string[] {
    const keys: string[] = [];
    const last = Math.floor(box[3] / this.cell);
    const right = Math.floor(box[2] / this.cell);
    for (let row = Math.floor(box[1] / this.cell); row <= last; row++) {
      for (let column = Math.floor(box[0] / this.cell); column <= right; column++) {
        keys.push(`${column},${row}`);
      }
    }
    return keys;
  }
}
