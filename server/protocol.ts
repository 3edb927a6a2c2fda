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

/** Scheme of the addresses of finding pages: `slatwright-finding:/gap-too-wide.md`. */
export const FINDING_SCHEME = 'slatwright-finding';
