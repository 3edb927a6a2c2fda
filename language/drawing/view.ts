/** Lengths on a sheet are millimeters of the real thing, x right, y down; rounded to a hundredth. */

/** How a group is drawn; the client and the paper theme give each style its pen and fill. */
export type Style =
  | 'ground'
  | 'slat'
  | 'slat-cut'
  | 'post'
  | 'post-buried'
  | 'cleat'
  | 'rail'
  | 'frame'
  | 'brace'
  | 'trim'
  | 'hidden'
  | 'leftover'
  | 'dimension'
  | 'leader'
  | 'swing';

/** Where a piece lies in a group, so that a click or a cursor can find it: x, y, width, height. */
export interface Hit {
  readonly piece: string;
  readonly box: readonly [number, number, number, number];
}

/** Alike pieces of a bay are one path: few elements, cheap to move. */
export interface Group {
  readonly key: string;
  /** Changes whenever anything drawn in it changes. */
  readonly hash: string;
  readonly style: Style;
  /** SVG path data. */
  readonly path: string;
  readonly hits: readonly Hit[];
  /** Painted in order of depth, far things first. */
  readonly depth: number;
}

export interface Label {
  readonly key: string;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Degrees, counterclockwise; 0 or 90. */
  readonly turn: 0 | 90;
  readonly kind: 'title' | 'dimension' | 'mark' | 'note';
  /** When two collide, the lower number stays. */
  readonly priority: number;
  /** Room along the text before it touches its neighbors; wider text gives way. 0 for none. */
  readonly room: number;
}

/** One drawing: an elevation of a run with its gates, or of a gate leaf. */
export interface View {
  readonly key: string;
  readonly run: string;
  readonly title: string;
  /** The side it is seen from, named. */
  readonly side: string;
  readonly projection: 'elevation';
  /** x, y, width, height of everything in it. */
  readonly box: readonly [number, number, number, number];
  /** Height of a letter, in sheet millimeters, at which labels were laid out. */
  readonly letter: number;
  readonly groups: readonly Group[];
  readonly labels: readonly Label[];
  /** True when it shows the last good picture of a run that cannot be worked out now. */
  readonly stale: boolean;
}

/** What changed between two states of the picture. */
export interface Delta {
  readonly base: number;
  readonly version: number;
  /** Views in the order they are shown, by key. */
  readonly order: readonly string[];
  /** Views that are new or whose frame (title, box, side, stale, letter) changed, without their parts. */
  readonly views: readonly Omit<View, 'groups' | 'labels'>[];
  readonly put: readonly { readonly view: string; readonly groups: readonly Group[]; readonly labels: readonly Label[] }[];
  readonly drop: readonly { readonly view: string; readonly groups: readonly string[]; readonly labels: readonly string[] }[];
}
