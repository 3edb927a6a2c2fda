import type {
  CornerKind,
  GateSpec,
  GroundPoint,
  NoHole,
  Origin,
  Problem,
  Remedy,
  RunSpec,
  Sourced,
  TextChange,
  WallSide,
  WallSpec,
} from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import type { Incline } from './incline.ts';
import type { Joints } from './joints.ts';
import type { Piece } from './piece.ts';

export type { TextChange } from '../model/index.ts';

/** Where the run's local coordinates stand in the job: only these are floats. */
export interface Frame {
  /** Ticks from the job's datum point. */
  readonly origin: readonly [x: number, y: number, z: number];
  /** Degrees clockwise from north; the run's back is at the left of one who walks it. */
  readonly bearing: number;
}

/** A post as marked on the tape. */
export interface PostMark {
  readonly number: number;
  readonly key: string;
  /** Station of the face nearest station 0; a multiple of the measure's step except where the length itself is not. */
  readonly from: Ticks;
  readonly to: Ticks;
  readonly gate?: string;
}

/** One way to divide a stretch of a run clear of obstacles. */
export interface PostChoice {
  readonly kind: 'equal' | 'wide' | 'pair';
  /** Faces nearest station 0 of the posts between the fixed ones. */
  readonly posts: readonly Ticks[];
  /** Clear widths of its bays, from station 0. */
  readonly clears: readonly Ticks[];
  /** Which of them, from 0, are unlike the rest: the wide one, or the pair. */
  readonly unlike: readonly number[];
  readonly widest: Ticks;
}

/** A stretch whose ordinary division put a post where no hole may be. */
export interface PostMove {
  /** Where that post would have stood. */
  readonly post: Ticks;
  readonly noHole: NoHole;
  /** What is built. */
  readonly chosen: PostChoice;
  /** The others, best first, each with the edits that build it. */
  readonly others: readonly { readonly choice: PostChoice; readonly changes: readonly TextChange[] }[];
}

/** How a post stands that is not plumb, or not straight. */
export interface PostLean {
  /** Along the run for one tick up. */
  readonly slope: number;
  /** Where its middle is as marked: station, and height from the datum. */
  readonly pivot: readonly [x: number, z: number];
  /** What its faces may be off a straight line square to its width, for it bends or for it leans. */
  readonly slack: number;
}

/** The space between two neighboring posts. */
export interface Bay {
  readonly number: number;
  readonly key: string;
  readonly from: Ticks;
  readonly to: Ticks;
  /** Clear, post face to post face; at the middle of the infill where posts lean. */
  readonly clear: Ticks;
  /** The rectangle within it, where posts lean. */
  readonly inner?: readonly [from: Ticks, to: Ticks];
  /** Set for the bay a gate hangs in. */
  readonly gate?: string;
}

/** Edges of what fills a bay, where they are not level: straight along it, through a height at a station. */
export interface BayEdges {
  readonly bottom?: Incline;
  readonly top?: Incline;
}

/** One slat line of an infill: heights from the datum for level slats, stations for upright ones. */
export interface Course {
  readonly number: number;
  /** Edge nearer the top (level) or the left (upright). */
  readonly start: Ticks;
  /** Edge nearer the bottom or the right. Level: start > end. Upright: start < end. */
  readonly end: Ticks;
  readonly stock: string;
  readonly ripped: boolean;
}

/** A clear gap one can look through, as a box in the run's frame. */
export interface Opening {
  readonly key: string;
  readonly bay?: number;
  readonly gate?: string;
  readonly x0: Ticks;
  readonly x1: Ticks;
  readonly z0: Ticks;
  readonly z1: Ticks;
  /** Of a racked bay, whose openings slope: for one tick along. Heights are those at the middle then. */
  readonly rise?: number;
  /** Between neighboring slats; the rest are spaces at the edges of the infill. */
  readonly between: boolean;
  /** Depth in the direction of view: the lesser thickness of the two slats; through both faces where both have slats. */
  readonly depth: Ticks;
}

export type ChoiceKind =
  | 'as-drawn'
  | 'move-ends'
  | 'gaps'
  | 'short-repeat'
  | 'rip-last'
  | 'change-width'
  | 'trim';

/** One way to make the pattern fill its height, with everything needed to build it. */
export interface FitChoice {
  readonly kind: ChoiceKind;
  /** Slats, trim left out; of one face where slats lie on both. */
  readonly count: number;
  /** Gap as laid out before the last tick is spread. */
  readonly gap: number;
  /** Space from the first edge to the first piece, trim or slat, and from the last piece to the last edge. */
  readonly lead: Ticks;
  readonly tail: Ticks;
  /** Ends of the infill as built, for level slats: bottom clearance and height above ground. */
  readonly bottom?: Ticks;
  readonly height?: Ticks;
  /** Width of the last slat when ripped, of the changed slat, or of the trim board. */
  readonly width?: Ticks;
  /** The stock of that slat or board. */
  readonly slat?: string;
  /** Where the trim goes; upright, `top` is the edge where the pattern begins. */
  readonly edge?: 'top' | 'bottom';
  /** What the eye sees: largest change of any gap from the nominal one. */
  readonly gapChange: Ticks;
  /** Edits which, applied, build exactly this. Empty for what is built already. */
  readonly changes: readonly TextChange[];
  /** What these edits state anew. Missing for what is built already. */
  readonly restated?: Restated;
}

/** What the text would state of a fit and its ends instead: in place of all remedies, and of either end. */
export interface Restated {
  readonly remedies?: readonly RestatedRemedy[];
  readonly bottom?: Ticks;
  readonly height?: Ticks;
}

/** A remedy, a trim board by its name and width. */
export type RestatedRemedy =
  | Exclude<Remedy, { kind: 'trim' }>
  | {
      readonly kind: 'trim';
      readonly board?: { readonly stock: string; readonly width: Ticks };
      readonly edge: 'top' | 'bottom';
    };

export interface FitResult {
  /** Gate name, or undefined for the run's own bays. */
  readonly gate?: string;
  /** Set for a passive leaf, whose lines are those of the active one, mirrored. */
  readonly mirrored?: true;
  /** Bays it holds for: upright runs are fitted for each clear width that occurs. */
  readonly bays: readonly number[];
  /** Space to fill, in the direction the pattern reads. */
  readonly space: Ticks;
  readonly upright: boolean;
  /** What is built. Undefined when nothing asked for closes: then the nominal pattern is drawn and `leftover` shown. */
  readonly chosen?: FitChoice;
  /** What is left of the space below the last slat of the nominal pattern. */
  readonly leftover: Ticks;
  /** Slats of the nominal pattern; 0 when none that may be the last goes in. */
  readonly nominalCount: number;
  /** The others, best first. */
  readonly choices: readonly FitChoice[];
  readonly origin: Origin;
}

/** A gate leaf as hung. */
export interface Leaf {
  readonly gate: string;
  readonly spec: GateSpec;
  /** Outer edges of the leaf. */
  readonly x0: Ticks;
  readonly x1: Ticks;
  readonly z0: Ticks;
  readonly z1: Ticks;
  readonly width: Ticks;
  readonly height: Ticks;
  readonly bay: number;
}

/** A wall past an end post, seen from the front; its line is worked out in walls.ts. */
export interface WallFace {
  readonly side: WallSide;
  readonly spec: WallSpec;
  /** Station of the plumb line it was measured from. */
  readonly plumb: Ticks;
  /** The way along the run in which the run lies: 1 with growing stations, -1 against them. */
  readonly inward: 1 | -1;
  /** Of the ground at the end post, from the datum: what its heights are above. */
  readonly ground: number;
}

/** What sets the posts and comes off again: no part of the screen, so that views and checks do not meet it among its pieces. */
export interface Temporary {
  readonly pieces: readonly Piece[];
  readonly braced: readonly BracedPost[];
  /** Feet of braces that stand where they may not, whichever way they go. */
  readonly blocked: readonly BlockedFoot[];
}

/** How far up its braces meet a post, and how far out their feet are. */
export interface BracedPost {
  readonly post: number;
  readonly up: Ticks;
  readonly out: Ticks;
}

/** A brace of a post whose foot has no place; `what` names what is in its way, where that has a name. */
export interface BlockedFoot extends BracedPost {
  readonly axis: 'along' | 'across';
  readonly why: 'no-hole' | 'wall' | 'hole' | 'piece' | 'property' | 'drop' | 'pool' | 'ground';
  readonly what: string;
}

/** A run laid out: everything later stages read. */
export interface RunLayout {
  readonly key: string;
  readonly hash: string;
  /** As stated; where it was measured, with its length and openings as they are. */
  readonly spec: RunSpec;
  /** The run as planned; set where it was measured, or slats are cut. */
  readonly planned?: RunLayout;
  /** False when impossible geometry keeps it from being built: then it has no posts, bays or pieces. */
  readonly sound: boolean;
  /** How it meets its neighbors; empty for a run that stands alone. */
  readonly joints: Joints;
  readonly posts: readonly PostMark[];
  readonly bays: readonly Bay[];
  /** Of posts that were measured to be out of plumb or bent, by key. */
  readonly leans: ReadonlyMap<string, PostLean>;
  /** How far posts were measured to stand off the line of the run, positive toward its back, by their keys. */
  readonly offs: ReadonlyMap<string, Sourced<Ticks>>;
  /** Stretches divided anew because of obstacles. */
  readonly postMoves: readonly PostMove[];
  /** Heights from the datum. Ground, bottom and top are those where the ground is highest; `reach` has those of each bay. */
  readonly ground: Ticks;
  readonly bottom: Ticks;
  readonly top: Ticks;
  readonly postTop: Ticks;
  readonly embed: Sourced<Ticks>;
  /** The ground as it is, from station 0 to the end. */
  readonly groundLine: readonly GroundPoint[];
  /** Where it begins or ends at a wall. */
  readonly walls: readonly WallFace[];
  /** Bottom and top of what fills each bay, a gate's leaf included. */
  readonly reach: ReadonlyMap<number, readonly [bottom: Ticks, top: Ticks]>;
  /** Of bays whose bottom or top slopes: there `reach` holds the lowest and highest of it between the posts. */
  readonly edges: ReadonlyMap<number, BayEdges>;
  /**
   * Slat lines by bay, a gate's leaf included; level bays share one list. Those of the front where both faces have
   * slats. A course that follows the ground is not among them: it has no one end.
   */
  readonly courses: ReadonlyMap<number, readonly Course[]>;
  readonly leaves: readonly Leaf[];
  readonly pieces: readonly Piece[];
  readonly temporary: Temporary;
  /** Posts that count in this run and are pieces of another, in this run's frame. */
  readonly borrowed: readonly Piece[];
  readonly openings: readonly Opening[];
  readonly fits: readonly FitResult[];
  /** Impossible geometry found while laying out; the run may still have pieces. */
  readonly problems: readonly Problem[];
}

/** Two runs that meet, by key. */
export interface Joint {
  readonly first: string;
  readonly second: string;
  readonly kind: CornerKind;
  /** Degrees, positive to the left of one who walks the first run. */
  readonly turn: number;
  /** The post they share. */
  readonly post: string;
}

export interface Layout {
  readonly runs: readonly RunLayout[];
  readonly joints: readonly Joint[];
  /** Where runs stand, by key; only those whose place is stated or follows from one that is. */
  readonly places: ReadonlyMap<string, Frame>;
}
