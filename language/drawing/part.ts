import type { Bounds } from './place-labels.ts';
import type { Group, Label } from './view.ts';

/** Something drawn: its groups and labels, and how far it reaches on the sheet. */
export interface Part {
  readonly groups: readonly Group[];
  readonly labels: readonly Label[];
  readonly bounds: Bounds;
}

/** The least bounds around all of `bounds`. */
export function around(...bounds: readonly Bounds[]): Bounds {
  return [
    Math.min(...bounds.map((b) => b[0])),
    Math.min(...bounds.map((b) => b[1])),
    Math.max(...bounds.map((b) => b[2])),
    Math.max(...bounds.map((b) => b[3])),
  ];
}
