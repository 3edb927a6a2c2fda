/**
 * What a picture is made of. Lengths on a sheet are millimeters of the real thing, x right, y down,
 * rounded to a hundredth.
 */

/** How a group is drawn; each theme gives every style its pen and fill (see `PENS`). */
export type Style =
  | 'ground'
  | 'hatch'
  | 'slat'
  | 'slat-cut'
  | 'slat-far'
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
  | 'tick'
  | 'scale-bar'
  | 'section'
  | 'place'
  | 'swing';

/** x, y, width, height. */
export type Box = readonly [x: number, y: number, width: number, height: number];

/** Where a piece lies in a group, so that a click or a cursor can find it. */
export interface Hit {
  readonly piece: string;
  readonly box: Box;
  /** Corners x, y, x, y ... of a piece that does not fill its box; a scribed board's need not be convex. */
  readonly outline?: readonly number[];
}

/** Alike pieces of a bay are one path: few elements, cheap to move. */
export interface Group {
  readonly key: string;
  /** Changes whenever anything drawn in it, or any piece a click finds in it, changes. */
  readonly hash: string;
  readonly style: Style;
  /** SVG path data. */
  readonly path: string;
  /** Hits of style `hidden` are for lighting a piece up; a click goes to what lies in front (see `pieceAt`). */
  readonly hits: readonly Hit[];
  /** Painted in order of depth, far things first. */
  readonly depth: number;
}

export type Anchor = 'start' | 'middle' | 'end';

/** Moves a text off its point, in letters: along the line of writing, and up from it. */
export type Shift = readonly [along: number, up: number];

export interface Label {
  readonly key: string;
  readonly text: string;
  /** The point it belongs to; the text itself stands off by `shift`, so that it keeps close at any size. */
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
  /** Degrees, counterclockwise; 0 or 90. */
  readonly turn: 0 | 90;
  readonly shift: Shift;
  /** A mark is written in a ring. */
  readonly kind: 'title' | 'dimension' | 'mark' | 'note';
  /** When two collide, the lower number stays. */
  readonly priority: number;
  /** Room before it touches its neighbors: for its length, or for its height. 0 for no limit. */
  readonly room: number;
  readonly roomFor: 'length' | 'height';
  /** Where it goes, with a leader to its point, when it has no room; without it, it is left out. */
  readonly led?: { readonly anchor: Anchor; readonly shift: Shift };
}

/** A label that is shown, and where, at a given size of letters. */
export interface PlacedLabel {
  readonly label: Label;
  /** Where its baseline is anchored. */
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
  /** Font size in sheet millimeters. */
  readonly size: number;
  /** From its point to the text: x, y, x, y. */
  readonly leader?: readonly [number, number, number, number];
}

/** From where things are seen: either side, above, along the run from a cut across it, or a viewer's eye. */
export type ViewKind = 'front' | 'back' | 'plan' | 'section' | 'eye';

/** One drawing: an elevation of a run with its gates or of a gate leaf, a plan, a section, or what a viewer sees. Groups and labels are in sheet order (see `sheetOrder`). */
export interface View {
  readonly key: string;
  /** Its run's key; empty for a plan of several and for what a viewer sees. */
  readonly run: string;
  /** All of a run, a gate leaf alone, runs from above, or a cut across a run. */
  readonly part: 'run' | 'leaf' | 'plan' | 'section' | 'eye';
  readonly title: string;
  /** The side it is seen from, named. */
  readonly side: string;
  readonly kind: ViewKind;
  /** Everything in it, labels too. */
  readonly box: Box;
  /** Font size, in sheet millimeters, for which it was laid out. */
  readonly letter: number;
  readonly groups: readonly Group[];
  readonly labels: readonly Label[];
  /** True when it shows the last good picture of a run that cannot be worked out now. */
  readonly stale: boolean;
}

/** A view without its parts. */
export type ViewFrame = Omit<View, 'groups' | 'labels'>;

/** What changed between two states of the picture. */
export interface Delta {
  /** Version of the state it is to be applied to; 0 for none: then it holds all of the picture. */
  readonly base: number;
  readonly version: number;
  /** Views in the order they are shown, by key. */
  readonly order: readonly string[];
  /** Views that are new or whose frame (title, box, side, stale, letter) changed, without their parts. */
  readonly views: readonly ViewFrame[];
  readonly put: readonly {
    readonly view: string;
    readonly groups: readonly Group[];
    readonly labels: readonly Label[];
  }[];
  readonly drop: readonly {
    readonly view: string;
    readonly groups: readonly string[];
    readonly labels: readonly string[];
  }[];
}
