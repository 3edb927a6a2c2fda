import { registerWindow } from '@svgdotjs/svg.js';
import { createSVGWindow } from 'svgdom';
import { beforeEach, expect, it } from 'vitest';
import {
  applyDelta,
  arrangeSheet,
  diffViews,
  type Group,
  type Label,
  type View,
} from '../../../language/drawing/index.ts';
import type { PictureState } from '../picture/index.ts';
import { Drawing } from './drawing.ts';

beforeEach(() => {
  const window = createSVGWindow();
  registerWindow(window as unknown as Window, window.document as Document);
});

const group = (key: string, path: string, depth: number): Group => ({
  key,
  hash: path,
  style: 'slat',
  path,
  hits: [{ piece: `${key}/c01`, box: [0, 0, 10, 10] }],
  depth,
});

const label = (key: string, text: string, x: number): Label => ({
  key,
  text,
  x,
  y: 0,
  anchor: 'start',
  turn: 0,
  shift: [0, 0],
  kind: 'dimension',
  priority: 1,
  room: 0,
  roomFor: 'length',
});

const view = (over: Partial<View> = {}): View => ({
  key: 'bank',
  run: 'bank',
  part: 'run',
  title: 'Elevation of bank',
  side: 'garden',
  kind: 'front',
  box: [0, 0, 1000, 500],
  letter: 20,
  groups: [group('bank/b1', 'M0 0H10', 2), group('bank/b2', 'M20 0H30', 1)],
  labels: [label('bank/1', '6\' 8"', 0), label('bank/2', "7'", 500)],
  stale: false,
  ...over,
});

function stateOf(views: readonly View[], version = 1): PictureState {
  return { version, views, sheet: arrangeSheet(views) };
}

const all = (drawing: Drawing, selector: string): Element[] => [
  ...(drawing.svg.node.querySelectorAll(selector) as unknown as Element[]),
];
const texts = (drawing: Drawing): (string | null)[] => all(drawing, 'text').map((node) => node.textContent);

it('keeps the identity of every element an edit does not touch, and touches no attribute of theirs', () => {
  const drawing = new Drawing();
  const first = [view()];
  drawing.show(stateOf(first));
  const before = all(drawing, '.view, .view path, .view text');
  const writes: string[] = [];
  for (const node of before) {
    const set = node.setAttribute.bind(node);
    node.setAttribute = (name: string, value: string) => {
      writes.push(name);
      set(name, value);
    };
  }

  // What an edit makes of it, by way of a delta as it is sent.
  const edited = [view({ groups: [group('bank/b1', 'M0 0H10', 2), group('bank/b2', 'M20 0H35', 1)] })];
  const delta = JSON.parse(JSON.stringify(diffViews(first, edited, 1, 2)));
  drawing.show(stateOf(applyDelta(first, delta), 2));

  const after = all(drawing, '.view, .view path, .view text');
  expect(after).toHaveLength(before.length);
  after.forEach((node, i) => {
    expect(node).toBe(before[i]);
  });
  expect(writes).toEqual(['d']);
  expect(all(drawing, '.view path').map((node) => node.getAttribute('d'))).toEqual(['M0 0H10', 'M20 0H35']);
});

it('writes a changed text into the element it had', () => {
  const drawing = new Drawing();
  drawing.show(stateOf([view()]));
  const [node] = all(drawing, 'text');
  drawing.show(stateOf([view({ labels: [label('bank/1', '6\' 9"', 0), label('bank/2', "7'", 500)] })]));
  expect(all(drawing, 'text')[0]).toBe(node);
  expect(texts(drawing)).toEqual(['6\' 9"', "7'"]);
});

it('puts what is new in the order of depth and takes away what is gone', () => {
  const drawing = new Drawing();
  drawing.show(stateOf([view()]));
  const [b1] = all(drawing, '.view path');
  const between = group('bank/b3', 'M40 0H50', 1.5);
  drawing.show(stateOf([view({ groups: [group('bank/b1', 'M0 0H10', 2), between] })]));
  expect(all(drawing, '.view path').map((node) => node.getAttribute('d'))).toEqual(['M0 0H10', 'M40 0H50']);
  expect(all(drawing, '.view path')[0]).toBe(b1);
});

it('keeps views by key when their order changes or one goes', () => {
  const drawing = new Drawing();
  const [bank, foot] = [view(), view({ key: 'foot', run: 'foot' })];
  drawing.show(stateOf([bank, foot]));
  const [one, two] = all(drawing, '.view');
  drawing.show(stateOf([foot, bank]));
  expect(all(drawing, '.view')).toEqual([two, one]);
  drawing.show(stateOf([bank]));
  expect(all(drawing, '.view')).toEqual([one]);
});

it('takes texts as texts, whatever they hold', () => {
  const drawing = new Drawing();
  const nasty = '<script>alert(1)</script>&amp;"]]>';
  drawing.show(stateOf([view({ labels: [label('bank/1', nasty, 0)] })]));
  expect(texts(drawing)).toEqual([nasty]);
  expect(all(drawing, 'script')).toEqual([]);
});

it('marks a stale view and takes the mark away again', () => {
  const drawing = new Drawing();
  drawing.show(stateOf([view({ stale: true })]));
  expect(all(drawing, '.view.stale')).toHaveLength(1);
  expect(texts(drawing)).toContain('last good picture');
  drawing.show(stateOf([view()]));
  expect(all(drawing, '.view.stale')).toHaveLength(0);
  expect(texts(drawing)).not.toContain('last good picture');
});

it('has room for more labels from near, and keeps those it had', () => {
  const drawing = new Drawing();
  const labels = [label('bank/1', '1332 mm', 0), { ...label('bank/2', '90 mm', 30), priority: 2 }];
  drawing.show(stateOf([view({ labels })]));
  expect(texts(drawing)).toEqual(['1332 mm']);
  const [kept] = all(drawing, 'text');
  drawing.look({ x: 0, y: 0, scale: 8 });
  expect(texts(drawing)).toEqual(['1332 mm', '90 mm']);
  expect(all(drawing, 'text')[0]).toBe(kept);
});

it('lights all places of pieces, in the place of their view on the sheet', () => {
  const drawing = new Drawing();
  const foot = view({ key: 'foot', run: 'foot', groups: [group('foot/b1', 'M0 0', 1)] });
  drawing.show(stateOf([view(), foot]));
  drawing.light(new Set(['foot/b1/c01']));
  const place = stateOf([view(), foot]).sheet.places.find(({ key }) => key === 'foot');
  expect(place?.y).toBeGreaterThan(500);
  const y = place?.y ?? 0;
  expect(all(drawing, '.lit')[0]?.getAttribute('d')).toBe(`M0 ${y}H10V${y + 10}H0Z`);
  drawing.light(new Set());
  expect(all(drawing, '.lit')[0]?.getAttribute('d')).toBeNull();
});
