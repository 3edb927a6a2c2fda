import type { Group, Label } from './view.ts';

/** Far things first; things equally far by key, so that the order follows from the parts alone. */
export function byDepth(a: Group, b: Group): number {
  return b.depth - a.depth || byKey(a, b);
}

/** What must be read first; then by key. */
export function byPriority(a: Label, b: Label): number {
  return a.priority - b.priority || byKey(a, b);
}

function byKey(a: { readonly key: string }, b: { readonly key: string }): number {
  return a.key < b.key ? -1 : a.key > b.key ? 1 : 0;
}

/** Groups and labels in the one order every view keeps, so that a patched picture equals a fresh one. */
export function sheetOrder(groups: Group[], labels: Label[]): { groups: Group[]; labels: Label[] } {
  return { groups: groups.sort(byDepth), labels: labels.sort(byPriority) };
}
