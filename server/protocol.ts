/**
 * What client and server say to each other beyond the language server protocol: the only seam
 * between them. Plain data; no imports but types.
 */
import type { Delta, ViewKind } from '../language/drawing/index.ts';

/** Client to server, request: begin to follow the picture of a document, or look at other views of it; answers with all of it. */
export const FollowPicture = 'slatwright/followPicture';
/** Client to server, notification: the picture is no longer looked at. */
export const LeavePicture = 'slatwright/leavePicture';
/** Server to client, notification: what changed in a followed picture. */
export const PictureChanged = 'slatwright/pictureChanged';
/** Client to server, request: where a piece is written. */
export const LocatePiece = 'slatwright/locatePiece';
/** Client to server, request: which pieces the statement under the cursor makes. */
export const PiecesAt = 'slatwright/piecesAt';

/** Client to server, request: begin to follow what is bought for a document; answers with it as far as it is known. */
export const FollowMaterials = 'slatwright/followMaterials';
/** Client to server, notification: what is bought is no longer looked at. */
export const LeaveMaterials = 'slatwright/leaveMaterials';
/** Server to client, notification: followed materials are other than they were. */
export const MaterialsChanged = 'slatwright/materialsChanged';
/** Client to server, request: the lines under a line of materials that holds pieces. */
export const MaterialPieces = 'slatwright/materialPieces';
/** Client to server, request: choices for a run that nothing else beats; it takes a while, tells how far it is, and can be canceled. */
export const FindBetter = 'slatwright/findBetter';
/** Client to server, request: what the boards on hand still give of each run. */
export const TellPile = 'slatwright/tellPile';
/** Client to server, request: the sheets of the takeoff. */
export const TakeoffSheets = 'slatwright/takeoffSheets';
/** Client to server, request: runs of a document, and which of them stands at a place. */
export const RunsAt = 'slatwright/runsAt';

/** Commands of the client that the server puts under lenses and actions; each gets a document's address, the first also a run's name. */
export const COMMANDS = {
  findBetter: 'slatwright.findBetter',
  showMaterials: 'slatwright.showMaterials',
  showTakeoff: 'slatwright.showTakeoff',
} as const;

export interface DocumentParams {
  readonly uri: string;
}

export interface FollowParams extends DocumentParams {
  /** Which views are looked at: only these are drawn and sent. Without it, those from the front. */
  readonly kinds?: readonly ViewKind[];
}

/** A picture as shown: a delta on `base` 0 is the whole of it. */
export interface Picture {
  readonly uri: string;
  /** Version of the text it was drawn from. */
  readonly textVersion: number;
  readonly delta: Delta;
}

export interface LocatePieceParams {
  readonly uri: string;
  readonly piece: string;
}

export interface PiecesAtParams {
  readonly uri: string;
  readonly line: number;
  readonly character: number;
}

export interface Place {
  readonly uri: string;
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

/** A line of what is bought, with the lines under it. Texts are for people, in the job's measure. */
export interface Material {
  /** Stays the same while it is the same line, so that what is unfolded stays so. */
  readonly id: string;
  readonly label: string;
  readonly note?: string;
  readonly tip?: string;
  readonly kind: MaterialKind;
  readonly under?: readonly Material[];
  /** So many pieces are under it, to be asked for. */
  readonly pieces?: number;
  /** Made of the keys of those pieces: other than before when they are, so that what is unfolded is asked for anew. */
  readonly mark?: string;
  /** Key of the piece it is, for `LocatePiece`. */
  readonly piece?: string;
}

export type MaterialKind =
  | 'boards'
  | 'hardware'
  | 'concrete'
  | 'finish'
  | 'price'
  | 'stock'
  | 'length'
  | 'cut'
  | 'piece'
  | 'item'
  | 'line'
  | 'trouble';

/** What is bought for a job. */
export interface Materials {
  readonly uri: string;
  /** Missing while nothing is known. */
  readonly lines?: readonly Material[];
  /** In short: what is bought, and whether it is proven. */
  readonly summary?: string;
  /** Belongs to the text before the last change; what belongs to this one is being worked out. */
  readonly stale: boolean;
}

export interface MaterialPiecesParams extends DocumentParams {
  readonly id: string;
}

export interface FindBetterParams extends DocumentParams {
  readonly run: string;
  /** `Tried` comes as progress by this token. */
  readonly progress?: string;
}

/** How far a search has come. */
export interface Tried {
  readonly tried: number;
  readonly kept: number;
}

/** Choices for a run, each beside the run as it stands. */
export interface BetterFound extends Tried {
  readonly run: string;
  /** Version of the text that the edits are for. */
  readonly textVersion: number;
  /** The run as it stands, in words. */
  readonly now: string;
  readonly verdict: string;
  /** Whether all ways were tried. */
  readonly done: boolean;
  readonly choices: readonly {
    readonly title: string;
    /** What it costs, beside the run as it stands. */
    readonly cost: string;
    /** The other figures, each beside that of the run as it stands. */
    readonly figures: string;
    readonly edits: readonly (Place & { readonly text: string })[];
  }[];
}

/** What the boards on hand give of each run, the pattern they give most of first. */
export interface PileTold {
  /** Nothing is stated to be on hand. */
  readonly empty: boolean;
  readonly runs: readonly {
    readonly run: string;
    readonly ways: readonly { readonly pattern: string; readonly gives: string; readonly missing: string }[];
  }[];
}

/** A sheet as it is written to a file. */
export interface SheetFile {
  readonly name: string;
  readonly text: string;
}

/** The sheets of a takeoff. */
export interface TakeoffFiles {
  /** The order as rows of a table, heads first; and as comma-separated values. */
  readonly order: readonly (readonly string[])[];
  readonly csv: SheetFile;
  /** Tickets, labels and sheets for setting out, as SVG. */
  readonly sheets: readonly SheetFile[];
  /** Why a stock has no plan, and what is not proven. */
  readonly notes: readonly string[];
}

export interface RunsAnswer {
  readonly runs: readonly string[];
  /** The run that the place belongs to. */
  readonly here?: string;
}

/** Scheme of the addresses of finding pages: `slatwright-finding:/gap-too-wide.md`. */
export const FINDING_SCHEME = 'slatwright-finding';
