import type { Exposure, SoilClass, Species, WindEdition } from '../standards/index.ts';
import type { Measure, Money, Ticks } from '../units/index.ts';
import type { TaskCount } from './read-quote.ts';

export type { TextChange } from '../grammar/index.ts';

/**
 * Where a value comes from. `path` names a node of the syntax tree by names, never by positions in
 * the file (see `nodePath` in grammar/), so that a line inserted above disturbs nothing; it is
 * resolved to a range only when something is published.
 */
export interface Origin {
  readonly uri: string;
  readonly path: string;
  readonly why: 'stated' | 'default' | 'derived' | 'measured';
}

/** A value that remembers where it is stated, or why it is what it is. */
export interface Sourced<T> {
  readonly value: T;
  readonly origin: Origin;
}

/** A length with a least and a greatest allowed value; both the same when one length is stated. */
export interface Band {
  readonly low: Ticks;
  readonly high: Ticks;
}

export type MaterialKind = 'wood' | 'composite' | 'pvc' | 'aluminum' | 'steel';

export interface Material {
  readonly name: string;
  readonly kind: Sourced<MaterialKind>;
  /** Of the library of species; of wood alone. */
  readonly species?: Sourced<Species>;
  readonly grade?: Sourced<'No.1' | 'No.2'>;
  /** The builder's own values, before those of any table: psi, psi, lb/ft3. */
  readonly bending?: Sourced<number>;
  readonly stiffness?: Sourced<number>;
  readonly density?: Sourced<number>;
  /** With preservative: its cut ends want sealing. */
  readonly treated?: Sourced<true>;
  readonly origin: Origin;
}

interface StockBase {
  readonly name: string;
  readonly origin: Origin;
  readonly material?: Material;
  /** Of a tube; what states none is full. */
  readonly wall?: Sourced<Ticks>;
  /** Prices of those lengths that have one, in minor units, by length. */
  readonly prices?: ReadonlyMap<Ticks, Sourced<Money>>;
  /** Lengths it is sold in, shortest first. Empty when none is stated. */
  readonly lengths: readonly Sourced<Ticks>[];
}

/** What slats, rails, cleats and trim are made of: by `width` (the face seen) and `thickness`. */
export interface FlatStock extends StockBase {
  readonly kind: 'board' | 'rip' | 'rail' | 'cleat';
  readonly width: Sourced<Ticks>;
  readonly thickness: Sourced<Ticks>;
  /** The longest clear span the builder allows this stock. */
  readonly spanLimit?: Sourced<Ticks>;
  /** For a rip: the board it is ripped from. */
  readonly parent?: FlatStock;
}

/** Posts: by `along` the run and `through` it. */
export interface PostStock extends StockBase {
  readonly kind: 'post';
  readonly along: Sourced<Ticks>;
  readonly through: Sourced<Ticks>;
}

export type Stock = FlatStock | PostStock;

/** What a post wears on its top. */
export interface CapStock {
  readonly name: string;
  readonly origin: Origin;
  readonly material?: Material;
  readonly shape: Sourced<'flat' | 'hipped'>;
  /** At its highest. */
  readonly thickness: Sourced<Ticks>;
  /** Thickness at the rim of a hipped one, where its four slopes begin. */
  readonly edge: Sourced<Ticks>;
  /** Past the post on every side; not for a size of its own. */
  readonly overhang: Sourced<Ticks>;
  readonly along?: Sourced<Ticks>;
  readonly through?: Sourced<Ticks>;
}

/** Strips across the slats of every bay of a run. */
export interface StiffenerSpec {
  readonly stock: Sourced<FlatStock>;
  /** Greatest clear span they leave; one at the middle of each bay when left out. */
  readonly apart?: Sourced<Ticks>;
  readonly faces: readonly ('front' | 'back')[];
  readonly origin: Origin;
}

/** Four mitered pieces round each post. */
export interface CollarSpec {
  readonly stock: Sourced<FlatStock>;
  readonly ends: readonly ('bottom' | 'top')[];
  readonly origin: Origin;
}

/** The closing rule: which slat may be the last. */
export type EndRule =
  | { readonly kind: 'whole' }
  | { readonly kind: 'anywhere' }
  | { readonly kind: 'on'; readonly slat: string };

/** What may be done so that the pattern fills its height; tried in the order written. */
export type Remedy =
  | { readonly kind: 'move-ends' }
  | { readonly kind: 'gaps'; readonly low: Ticks; readonly high: Ticks }
  | { readonly kind: 'short-repeat' }
  | { readonly kind: 'rip-last'; readonly least?: Ticks }
  | { readonly kind: 'change-width'; readonly slat: string; readonly width: Ticks }
  | { readonly kind: 'trim'; readonly board?: FlatStock; readonly edge: 'top' | 'bottom' };

/** A pattern with its parameters filled in. Reads top to bottom; upright, left to right from the front. */
export interface PatternSpec {
  readonly name: string;
  readonly origin: Origin;
  /** One whole repeat; `2 of strip` stands as two items with the same origin. */
  readonly repeat: readonly Sourced<FlatStock>[];
  readonly gap: Sourced<Ticks>;
  /** Outside the first and last slat. */
  readonly edgeGap: Sourced<Ticks>;
  /** The edge gap is stated as half the gap, so that it follows when a fit changes the gaps. */
  readonly edgeHalf?: boolean;
  readonly end: Sourced<EndRule>;
}

/** Remedies asked for, and where: in the run or gate itself, else in its pattern. */
export interface FitSpec {
  readonly remedies: readonly Sourced<Remedy>[];
  readonly origin: Origin;
}

/** How the pattern is turned before it is built. */
export interface FlipSpec {
  readonly upright: boolean;
  /** Where the pattern's top edge goes when upright, as seen from the front. */
  readonly topEdge: 'left' | 'right';
  /** Top to bottom. */
  readonly over: boolean;
  readonly endForEnd: boolean;
  readonly origin: Origin;
}

export type PostSpacing =
  | { readonly kind: 'at-most'; readonly limit: Ticks; readonly measured: 'clear' | 'on-center' }
  | { readonly kind: 'bays'; readonly count: number }
  | { readonly kind: 'posts'; readonly count: number }
  /** Faces nearest station 0 of the posts; the end posts are there whether listed or not. */
  | { readonly kind: 'stations'; readonly stations: readonly Sourced<Ticks>[] };

/** How slats meet what holds them. */
export type Mounting =
  | { readonly kind: 'between' }
  | { readonly kind: 'face'; readonly face: 'front' | 'back' }
  /** The same lines on the front and on the back. */
  | { readonly kind: 'both' }
  /** One board by turns on both faces: the front begins with a slat, the back with a space. */
  | { readonly kind: 'alternate' };

/** What a run and a gate leaf have in common: slats of a pattern in a frame. */
export interface InfillSpec {
  readonly pattern: PatternSpec;
  /** The statement that asks for the pattern, here or, for a gate that states none, in its run. */
  readonly fill: Origin;
  readonly flip: FlipSpec;
  readonly fit: FitSpec;
  readonly mounting: Sourced<Mounting>;
  /** Holds slats that stand between posts, rails or stiles; needed for `between` only. */
  readonly cleat?: Sourced<FlatStock>;
  readonly endGap: Sourced<Ticks>;
}

/** Two leaves: the one used every day, on the side the hinges are named for, and the other. */
export interface PairSpec {
  /** Between the leaves where they meet. */
  readonly meetingGap: Sourced<Ticks>;
  /** Width of the active leaf; half of what there is when left out. */
  readonly active?: Sourced<Ticks>;
  readonly origin: Origin;
}

/** Which leaf of a pair a gate spec is, and of which gate. */
export interface HalfSpec {
  readonly of: string;
  readonly side: 'left' | 'right';
  readonly active: boolean;
  /** A passive leaf that is the mirror image of the active one. */
  readonly mirrors: boolean;
}

/**
 * Rails of a leaf between the top one and the bottom one: so many rails in all, evenly spaced; or where their middles
 * are, above ground; or on the middles of which courses of the run, so that its lines run on.
 */
export type LeafRails =
  | { readonly kind: 'count'; readonly count: number }
  | { readonly kind: 'at'; readonly heights: readonly Sourced<Ticks>[] }
  | { readonly kind: 'courses'; readonly courses: readonly number[] };

export interface GateSpec {
  readonly name: string;
  readonly origin: Origin;
  /** Clear between gate posts. */
  readonly opening: Sourced<Ticks>;
  /** Where the opening begins: the face of the left gate post that looks into it. */
  readonly station: Sourced<Ticks>;
  readonly hinges: Sourced<'left' | 'right'>;
  /** How many; as many as the leaf needs where nothing is said. */
  readonly hingeCount?: Sourced<number>;
  readonly opensTo?: Sourced<string>;
  /** Where it is asked to be wide enough for a wheelchair. */
  readonly accessible?: Origin;
  readonly hingeGap: Sourced<Ticks>;
  readonly latchGap: Sourced<Ticks>;
  /** The post it hangs on, and the other too where `latchPost` is left out. */
  readonly post: Sourced<PostStock>;
  readonly latchPost?: Sourced<PostStock>;
  /** Stiles and rails: `width` is the face seen. */
  readonly frame: Sourced<FlatStock>;
  /** Two leaves that meet in the opening; one when left out. */
  readonly pair?: PairSpec;
  /** Set for each leaf of a pair, which is laid out as a gate of its own. */
  readonly half?: HalfSpec;
  /** Two, at the top and at the bottom, when left out. */
  readonly rails?: Sourced<LeafRails>;
  readonly brace?: Sourced<FlatStock>;
  /** Above ground; the run's own when not stated. */
  readonly bottom?: Sourced<Band>;
  readonly height?: Sourced<Band>;
  readonly infill: InfillSpec;
}

/** How two runs meet: at a post that slats die into; this run's slats past the first's, against them, or mitered with them. */
export type CornerKind = 'post' | 'lap' | 'butt' | 'miter';

/**
 * Where station 0 of a run is on the plan: at a point, going in a direction, or at the end of another run.
 * Bearings are degrees clockwise from north, as on a compass. A turn is in degrees, positive to the left of
 * one who walks the first run from its station 0 (that is toward its back), 0 straight on.
 */
export type Placement =
  | {
      readonly kind: 'at';
      readonly east: Sourced<Ticks>;
      readonly north: Sourced<Ticks>;
      readonly bearing: Sourced<number>;
      readonly origin: Origin;
    }
  | {
      /** Straight on with a space between, from face to face of the posts. */
      readonly kind: 'on';
      readonly run: string;
      readonly gap: Sourced<Ticks>;
      /** Of the middle line of its posts from that of the first run's, positive toward the back. */
      readonly step?: Sourced<Ticks>;
      readonly origin: Origin;
    }
  | {
      readonly kind: 'after';
      readonly run: string;
      readonly turn: Sourced<number>;
      readonly corner: Sourced<CornerKind>;
      readonly origin: Origin;
    };

/** Ground at a station of a run, from the datum. */
export interface GroundLevel {
  readonly station: Ticks;
  readonly level: Ticks;
  readonly origin: Origin;
}

/**
 * One top line and the same course lines for all of the run, more courses below where the ground falls away; or
 * bays that step down with the ground, by whole pitches of the pattern.
 */
export type Slope = 'level-top' | 'in-steps';

/** A stretch of the run where no hole may be: a pipe, a root, a tap. */
export interface NoHole {
  readonly from: Ticks;
  readonly to: Ticks;
  readonly reason?: string;
  /** A buried line that feeds others: work near it is by hand. */
  readonly utility?: true;
  readonly origin: Origin;
}

/** What the hole of each post is like. */
export interface HoleSpec {
  readonly diameter: Sourced<Ticks>;
  /** Below the post. */
  readonly gravel: Sourced<Ticks>;
}

/** Wind as the job states it: by speed (mph) and a standard, or as a pressure (psf) at the level of allowable stress. */
export type WindSpec =
  | {
      readonly kind: 'speed';
      readonly speed: number;
      readonly exposure: Exposure;
      readonly edition: WindEdition;
      readonly origin: Origin;
    }
  | { readonly kind: 'pressure'; readonly pressure: number; readonly origin: Origin };

/** What holds at the place of the job. Nothing is guessed: what is missing is not stated. */
export interface Site {
  readonly wind?: WindSpec;
  readonly soil?: Sourced<SoilClass>;
  readonly frost?: Sourced<Ticks>;
  /** The day of fitting: moisture in percent, temperature in degrees Fahrenheit. */
  readonly fitted?: { readonly moisture?: Sourced<number>; readonly temperature?: Sourced<number> };
}

/** How posts are held at the edge of a deck. */
export type DeckHold = 'outside-rim' | 'inside-frame' | 'footing';

/** A deck edge that a run stands on. Stations are those of the run; joists and blocking by their middles. */
export interface DeckSpec {
  readonly name: string;
  readonly origin: Origin;
  readonly statement: Origin;
  readonly hold: Sourced<DeckHold>;
  /** From the datum. */
  readonly surface: Sourced<Ticks>;
  readonly boards: Sourced<Ticks>;
  readonly joist: { readonly thickness: Ticks; readonly depth: Ticks; readonly origin: Origin };
  /** Square to the edge, from station 0 to the end of the run. Empty where they lie along it. */
  readonly joists: readonly Ticks[];
  /** All layers together. */
  readonly rim: Sourced<Ticks>;
  readonly blocking: readonly Ticks[];
  /** The statement that says where blocking is. */
  readonly blockingAt?: Origin;
  /** From the datum, where it is stated. */
  readonly ground?: Sourced<Ticks>;
}

/** A bay measured between its posts, at three heights of what fills it. */
export interface MeasuredBay {
  readonly number: number;
  /** Clear planned when it was measured. Where the plan says otherwise now, the measure is of another bay. */
  readonly planned?: Sourced<Ticks>;
  readonly middle: Ticks;
  /** Missing where it was measured at the middle only. */
  readonly ends?: { readonly top: Ticks; readonly bottom: Ticks };
  readonly origin: Origin;
}

/** A post measured to be out of plumb: along the run for one tick up, positive to the right. */
export interface MeasuredPost {
  readonly number: number;
  readonly slope: number;
  readonly origin: Origin;
}

/** Slats of a bay that are cut: all, or those of some courses; to the plan, or to a length. */
export interface CutSlats {
  readonly bay: number;
  readonly courses?: { readonly first: number; readonly last: number };
  readonly length?: Sourced<Ticks>;
  readonly origin: Origin;
}

/** What stands and what is cut already. */
export interface Measured {
  readonly bays: readonly MeasuredBay[];
  readonly posts: readonly MeasuredPost[];
  readonly cuts: readonly CutSlats[];
  readonly origin: Origin;
}

/** A corner to be looked across: its point on the plan, and the ends of its legs. */
export interface SightTriangle {
  readonly corners: readonly (readonly [east: number, north: number])[];
  readonly origin: Origin;
}

/** The notice of digging; days counted from 1970-01-01. */
export interface DigTicket {
  readonly number: string;
  readonly called: number;
  readonly digging: number;
  readonly until?: number;
  readonly origin: Origin;
}

/** A property line parallel to a run: how far off the middle of its posts, positive toward the back. */
export interface PropertyLine {
  readonly y: Ticks;
  readonly origin: Origin;
}

/** Everything needed to lay out one run, and nothing else: the unit of remembering. */
export interface RunSpec {
  readonly name: string;
  readonly origin: Origin;
  readonly seenFrom: Sourced<string>;
  /** Outside face to outside face of the end posts. */
  readonly length: Sourced<Ticks>;
  readonly post: Sourced<PostStock>;
  readonly spacing: Sourced<PostSpacing>;
  /** Below ground; half the height above ground when not stated (common practice). */
  readonly embed?: Sourced<Ticks>;
  readonly hole?: HoleSpec;
  /** The run's own, or the job's. */
  readonly soil?: Sourced<SoilClass>;
  readonly frost?: Sourced<Ticks>;
  /** Post tops above the top edge of the highest slat. */
  readonly tops: Sourced<Ticks>;
  /** Top edge of the highest slat above ground. */
  readonly height: Sourced<Band>;
  /** Lowest edge above ground. */
  readonly bottom: Sourced<Band>;
  /** Ground from the datum; up is positive. Where it is not level, its highest within the run: heights are above that. */
  readonly ground: Sourced<Ticks>;
  /** Levels of ground that is not level, in the order stated; between them it is straight, beyond them level. */
  readonly levels?: readonly GroundLevel[];
  /**
   * Rise of the ground across the run for one tick toward its back; negative where it falls that way. Level when left
   * out. The levels along the run are those at the middle of its posts.
   */
  readonly across?: Sourced<number>;
  /** How the screen follows ground that is not level; to one level top when left out. */
  readonly slope?: Sourced<Slope>;
  /** Carries upright slats, at top and bottom of each bay. */
  readonly rail?: Sourced<FlatStock>;
  readonly stiffeners?: StiffenerSpec;
  /** Over level slats on a face, at each post. */
  readonly battens?: Sourced<FlatStock>;
  readonly caps?: Sourced<CapStock>;
  readonly collars?: CollarSpec;
  readonly infill: InfillSpec;
  readonly gates: readonly GateSpec[];
  readonly placement?: Placement;
  /** The run of the same file whose slat lines it goes on with. */
  readonly linesAs?: Sourced<string>;
  /** The deck it stands on: `ground` is its surface then, and `embed` how far posts go down from that. */
  readonly deck?: DeckSpec;
  /** How far the ground falls away beside it, and on which side. */
  readonly drop?: Sourced<Ticks> & { readonly side: 'front' | 'back' };
  /** The side of the pool whose barrier it is part of. */
  readonly pool?: Sourced<'front' | 'back'>;
  /** Where no part of a post's width may stand; how wide its hole is dug does not count. None when left out. */
  readonly noHoles?: readonly NoHole[];
  readonly measured?: Measured;
  /** Property lines that the job says lie along it. */
  readonly propertyLines?: readonly PropertyLine[];
  readonly measure: Measure;
}

/** A run that parses but cannot be worked out; `problems` of the job say why. */
export interface BrokenRun {
  readonly name: string;
  readonly origin: Origin;
  readonly broken: true;
}

/** What is wrong with the text itself or with what it refers to, before any piece exists. */
export interface Problem {
  readonly code: string;
  readonly origin: Origin;
  /** Values for the message; texts and numbers only, so that messages can be made in any language. */
  readonly args: Readonly<Record<string, string | number>>;
  readonly related?: readonly { readonly origin: Origin; readonly note: string }[];
}

/** What a threshold may be: a length in ticks, a percentage, degrees, or so many times something. */
export type ThresholdMeasure = 'length' | 'percent' | 'degrees' | 'times';

/** Where a finding begins to be told. Which codes there are, and what each measures, checks/ knows. */
export interface StatedThreshold {
  readonly code: string;
  readonly is: ThresholdMeasure;
  readonly value: number;
  readonly origin: Origin;
  /** Where the code is written. */
  readonly named: Origin;
}

/** A finding to be shown as known: everywhere, or in one run. */
export interface Acceptance {
  readonly code: string;
  /** Name of the run. */
  readonly run?: string;
  readonly reason: string;
  readonly origin: Origin;
  /** Where the code is written. */
  readonly named: Origin;
}

/** A point beside a run: a station, and how far off the middle of its posts, positive toward the back. */
export interface Spot {
  /** Name of the run. */
  readonly run: string;
  readonly along: Ticks;
  readonly off: Ticks;
  readonly origin: Origin;
}

/** Someone who looks: standing at a spot, or walking from one to another. */
export interface Viewer {
  readonly name: string;
  readonly origin: Origin;
  readonly at: Spot;
  readonly to?: Spot;
  /** Above the floor. */
  readonly eye: Sourced<Ticks>;
  /** From the datum; the ground beside the run when left out. */
  readonly floor?: Sourced<Ticks>;
}

/** What is to be hidden: an upright area that lies along its run, its middle at a spot. */
export interface Place {
  readonly name: string;
  readonly origin: Origin;
  readonly at: Spot;
  readonly width: Sourced<Ticks>;
  /** Above the floor. */
  readonly heights: Sourced<Band>;
  readonly floor?: Sourced<Ticks>;
}

/** So much of a place is to be hidden from a viewer. */
export interface HideDemand {
  readonly place: Place;
  readonly viewer: Viewer;
  /** 0 to 1. */
  readonly share: Sourced<number>;
  readonly origin: Origin;
}

/** One file's job: plain immutable data, units resolved, references followed, defaults filled. */
/** Money of one kind for a count of something. */
export interface Quote {
  readonly origin?: Origin;
  /** For an hour. */
  readonly labor?: Sourced<Money>;
  readonly tasks: readonly {
    readonly name: string;
    readonly minutes: number;
    readonly per: TaskCount;
    readonly origin: Origin;
  }[];
  /** Of what is bought besides boards, by name; `unit` as written. */
  readonly prices: readonly {
    readonly item: string;
    readonly price: Money;
    readonly unit: string;
    readonly origin: Origin;
  }[];
  readonly extras: readonly {
    readonly what: string;
    readonly count: number;
    readonly price: Money;
    readonly origin: Origin;
  }[];
  /** Shares from 0 to 1: overhead and markup of what it costs, margin of what is asked, tax of that. */
  readonly overhead: Sourced<number> | undefined;
  readonly markup: Sourced<number> | undefined;
  readonly margin: Sourced<number> | undefined;
  readonly tax: Sourced<number> | undefined;
  readonly deposit?: { readonly share: Sourced<number>; readonly most?: Sourced<Money> };
}

/** Boards of a stock that are there already. */
export interface HandStock {
  readonly stock: string;
  readonly length: Ticks;
  readonly count: number;
  readonly origin: Origin;
}

export interface Job {
  readonly uri: string;
  /** Sets of rules it chooses, by their names as in standards/; others are told and left out. */
  readonly rules: readonly Sourced<string>[];
  readonly sightTriangles: readonly SightTriangle[];
  readonly ticket?: DigTicket;
  /** ISO 4217; what a dollar sign stands for too. */
  readonly currency?: string;
  readonly saw: { readonly kerf?: Sourced<Ticks>; readonly trim?: Sourced<Ticks> };
  /** Share of boards bought besides those that are cut, 0 to 1. */
  readonly spares?: Sourced<number>;
  /** No fewer spares than this of each section and length. */
  readonly leastSpares?: number;
  /** Length of all screws through slats. */
  readonly screws?: Sourced<Ticks>;
  readonly quote: Quote;
  readonly onHand: readonly HandStock[];
  /** Names of the options it lays beside itself, each with where it is stated. */
  readonly options: readonly Sourced<string>[];
  readonly name?: string;
  readonly origin: Origin;
  readonly measure: Sourced<Measure>;
  /** The job's own demand for privacy. */
  readonly privacy: {
    /** Greatest share of open area seen straight on, 0 to 1. */
    readonly seeThrough?: Sourced<number>;
    readonly gap?: Sourced<Ticks>;
  };
  /** Nothing may be higher above the lowest ground within its bay. */
  readonly heightLimit?: Sourced<Ticks>;
  readonly site: Site;
  /** Where the job demands that every run be alike from both sides; missing when it does not. */
  readonly alike?: Origin;
  /** Limits of findings that the job sets itself; the first of each code counts. */
  readonly thresholds: readonly StatedThreshold[];
  /** Findings that are known of and left as they are. */
  readonly accepted: readonly Acceptance[];
  readonly viewers: readonly Viewer[];
  readonly places: readonly Place[];
  readonly hides: readonly HideDemand[];
  /** Stock stated in this file. */
  readonly stock: readonly Stock[];
  readonly runs: readonly (RunSpec | BrokenRun)[];
  readonly problems: readonly Problem[];
}
