import type { SoilClass } from '../standards/index.ts';
import type { Measure, Ticks } from '../units/index.ts';
import type { BracingSpec } from './job-bracing.ts';
import type { Acceptance, StatedThreshold } from './job-decisions.ts';
import type { GateSpec } from './job-gate.ts';
import type { InfillSpec } from './job-infill.ts';
import type { JointSpec } from './job-joints.ts';
import type { HideDemand, Place, Viewer } from './job-looks.ts';
import type { Measured } from './job-measured.ts';
import type { Band, Origin, Problem, Sourced } from './job-origin.ts';
import type { HandStock, Quote } from './job-quote.ts';
import type { DigTicket, Paperwork, PropertyLine, SightTriangle, Site } from './job-site.ts';
import type { DeckSpec, GroundLevel, HoleSpec, NoHole, Placement, PostSpacing, Slope } from './job-stand.ts';
import type {
  CapStock,
  CollarSpec,
  FlatStock,
  KickSpec,
  PostStock,
  StiffenerSpec,
  Stock,
} from './job-stock.ts';
import type { FillerSpec, WallsSpec } from './job-walls.ts';

export type * from './job-bracing.ts';
export type * from './job-decisions.ts';
export type * from './job-gate.ts';
export type * from './job-infill.ts';
export type * from './job-joints.ts';
export type * from './job-looks.ts';
export type * from './job-measured.ts';
export type * from './job-origin.ts';
export type * from './job-quote.ts';
export type * from './job-site.ts';
export type * from './job-stand.ts';
export type * from './job-stock.ts';
export type * from './job-walls.ts';

/** What boards are planned for: least cost, least length bought, or at little cost few settings of the saw. */
export type CutAim = 'cost' | 'waste' | 'settings';

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
  /**
   * One more course below in each bay, ripped so that it follows the ground; no narrower than this at either end,
   * or it is left out.
   */
  readonly lastFollows?: Sourced<Ticks>;
  readonly kick?: KickSpec;
  /** Carries upright slats, at top and bottom of each bay. */
  readonly rail?: Sourced<FlatStock>;
  readonly stiffeners?: StiffenerSpec;
  /** Over level slats on a face, at each post. */
  readonly battens?: Sourced<FlatStock>;
  /** Of level slats on a face; by the usual rule when left out. */
  readonly slatJoints?: JointSpec;
  readonly caps?: Sourced<CapStock>;
  readonly collars?: CollarSpec;
  readonly bracing?: BracingSpec;
  readonly infill: InfillSpec;
  readonly gates: readonly GateSpec[];
  readonly placement?: Placement;
  /** Walls of a house past its end posts, where it begins or ends at one. */
  readonly walls?: WallsSpec;
  readonly filler?: FillerSpec;
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

/** One file's job: plain immutable data, units resolved, references followed, defaults filled. */
export interface Job {
  readonly uri: string;
  /** Sets of rules it chooses, by their names as in standards/; others are told and left out. */
  readonly rules: readonly Sourced<string>[];
  readonly sightTriangles: readonly SightTriangle[];
  readonly ticket?: DigTicket;
  readonly paperwork: Paperwork;
  /** ISO 4217; what a dollar sign stands for too. */
  readonly currency?: string;
  readonly saw: {
    readonly kerf?: Sourced<Ticks>;
    readonly trim?: Sourced<Ticks>;
    /** Offcuts at least so long are kept. */
    readonly keep?: Sourced<Ticks>;
  };
  /** What boards are planned for; cost where it is not stated. */
  readonly cutFor?: Sourced<CutAim>;
  /** With fewest settings: what boards may cost more than the least, as a share; nothing where it is not stated. */
  readonly settingsWithin?: Sourced<number>;
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
  /** Stock whose boards were measured, stated here or in a file it uses. */
  readonly measuredStock: readonly FlatStock[];
  readonly runs: readonly (RunSpec | BrokenRun)[];
  readonly problems: readonly Problem[];
}
