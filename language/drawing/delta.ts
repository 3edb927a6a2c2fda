import { sheetOrder } from './sheet-order.ts';
import type { Delta, Group, Label, View, ViewFrame } from './view.ts';

/**
 * What must be put and dropped to make `next` of `prev`. Keys are unique among views, and among the
 * groups and among the labels of a view. With `base` 0 it holds all of `next`.
 */
export function diffViews(
  prev: readonly View[],
  next: readonly View[],
  base: number,
  version: number,
): Delta {
  const before = new Map(base === 0 ? [] : prev.map((view) => [view.key, view]));
  const views: ViewFrame[] = [];
  const put: Delta['put'][number][] = [];
  const drop: Delta['drop'][number][] = [];
  for (const view of next) {
    const old = before.get(view.key);
    if (old === view) continue;
    if (!old || !sameFrame(old, view)) views.push(frameOf(view));
    const groups = changed(old?.groups ?? [], view.groups, (a, b) => a.hash === b.hash);
    const labels = changed(old?.labels ?? [], view.labels, sameLabel);
    if (groups.put.length > 0 || labels.put.length > 0) {
      put.push({ view: view.key, groups: groups.put, labels: labels.put });
    }
    if (groups.drop.length > 0 || labels.drop.length > 0) {
      drop.push({ view: view.key, groups: groups.drop, labels: labels.drop });
    }
  }
  return { base, version, order: next.map((view) => view.key), views, put, drop };
}

/** The views a delta makes of those it is based on; views and parts it does not name are kept as they are. */
export function applyDelta(views: readonly View[], delta: Delta): View[] {
  const before = new Map(delta.base === 0 ? [] : views.map((view) => [view.key, view]));
  const frames = new Map(delta.views.map((frame) => [frame.key, frame]));
  const put = new Map(delta.put.map((one) => [one.view, one]));
  const drop = new Map(delta.drop.map((one) => [one.view, one]));
  return delta.order.flatMap((key) => {
    const old = before.get(key);
    const frame = frames.get(key) ?? old;
    // A view that is neither known nor sent cannot be shown; asking for the whole picture mends it.
    if (!frame) return [];
    const added = put.get(key);
    const gone = drop.get(key);
    if (old && !frames.has(key) && !added && !gone) return [old];
    const { groups, labels } = sheetOrder(
      patched(old?.groups ?? [], added?.groups ?? [], gone?.groups ?? []),
      patched(old?.labels ?? [], added?.labels ?? [], gone?.labels ?? []),
    );
    return [{ ...frameOf(frame), groups, labels }];
  });
}

function frameOf(view: ViewFrame): ViewFrame {
  const { key, run, part, title, side, kind, box, letter, stale } = view;
  return { key, run, part, title, side, kind, box, letter, stale };
}

function sameFrame(a: ViewFrame, b: ViewFrame): boolean {
  return (
    a.run === b.run &&
    a.part === b.part &&
    a.title === b.title &&
    a.side === b.side &&
    a.kind === b.kind &&
    a.letter === b.letter &&
    a.stale === b.stale &&
    a.box.every((n, i) => n === b.box[i])
  );
}

function sameLabel(a: Label, b: Label): boolean {
  return (
    a.text === b.text &&
    a.x === b.x &&
    a.y === b.y &&
    a.anchor === b.anchor &&
    a.turn === b.turn &&
    a.kind === b.kind &&
    a.priority === b.priority &&
    a.room === b.room &&
    a.roomFor === b.roomFor &&
    sameShift(a, b) &&
    (a.led === undefined || b.led === undefined
      ? a.led === b.led
      : a.led.anchor === b.led.anchor && sameShift(a.led, b.led))
  );
}

function sameShift(a: Pick<Label, 'shift'>, b: Pick<Label, 'shift'>): boolean {
  return a.shift[0] === b.shift[0] && a.shift[1] === b.shift[1];
}

function changed<T extends Group | Label>(
  prev: readonly T[],
  next: readonly T[],
  same: (a: T, b: T) => boolean,
): { put: T[]; drop: string[] } {
  if (prev === next) return { put: [], drop: [] };
  const before = new Map(prev.map((part) => [part.key, part]));
  const put: T[] = [];
  for (const part of next) {
    const old = before.get(part.key);
    if (!old || (old !== part && !same(old, part))) put.push(part);
    before.delete(part.key);
  }
  return { put, drop: [...before.keys()] };
}

function patched<T extends Group | Label>(
  parts: readonly T[],
  put: readonly T[],
  drop: readonly string[],
): T[] {
  const result = new Map(parts.map((part) => [part.key, part]));
  for (const key of drop) result.delete(key);
  for (const part of put) result.set(part.key, part);
  return [...result.values()];
}
