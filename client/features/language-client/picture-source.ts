import type { Disposable } from 'vscode';
import type { ViewKind } from '../../../language/drawing/index.ts';
import type { Picture, Place } from '../../../server/protocol.ts';

/** What a preview needs of the language server. */
export interface PictureSource {
  /** Begins to follow these views of a document's picture; resolves to all of them. */
  follow(uri: string, kinds: readonly ViewKind[]): Promise<Picture>;
  /** The picture is no longer looked at. */
  leave(uri: string): void;
  /** Where a piece is written; undefined when nobody knows. */
  locate(uri: string, piece: string): Promise<Place | undefined>;
  /** Pieces made by the statement at a position. */
  piecesAt(uri: string, line: number, character: number): Promise<readonly string[]>;
  /** Hears of every change of a followed picture. */
  onChanged(listener: (picture: Picture) => void): Disposable;
  /** Hears when a server starts anew: everything followed must be followed again. */
  onRestarted(listener: () => void): Disposable;
}
