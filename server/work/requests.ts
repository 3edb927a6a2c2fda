import { type LangiumDocument, URI } from 'langium';
import type { Connection } from 'vscode-languageserver';
import { pathHeadRange } from '../../language/grammar/index.ts';
import {
  type DocumentParams,
  type FollowParams,
  FollowPicture,
  LeavePicture,
  LocatePiece,
  type LocatePieceParams,
  type Picture,
  PiecesAt,
  type PiecesAtParams,
  type Place,
} from '../protocol.ts';
import type { SlatServerSharedServices } from '../services.ts';
import { originOfPiece, piecesAtOffset } from './piece-places.ts';

/** Answers what clients ask about pictures and pieces. */
export function answerPictureRequests(connection: Connection, shared: SlatServerSharedServices): void {
  const { Keeper } = shared.work;
  connection.onRequest(FollowPicture, ({ uri, kinds }: FollowParams, token): Promise<Picture> => {
    return Keeper.follow(normal(uri), token, kinds);
  });
  connection.onNotification(LeavePicture, ({ uri }: DocumentParams) => Keeper.leave(normal(uri)));
  connection.onRequest(LocatePiece, ({ uri, piece }: LocatePieceParams): Place | null => {
    const origin = originOfPiece(Keeper.of(normal(uri))?.runs ?? [], piece, normal(uri));
    const document = origin && documentOf(shared, origin.uri);
    return document ? { uri: origin.uri, ...pathHeadRange(document, origin.path) } : null;
  });
  connection.onRequest(
    PiecesAt,
    async ({ uri, line, character }: PiecesAtParams, token): Promise<readonly string[]> => {
      const address = normal(uri);
      if (!Keeper.of(address)) return [];
      await Keeper.untilLinked(address, token);
      const document = documentOf(shared, address);
      const kept = Keeper.of(address);
      if (!document || !kept) return [];
      return piecesAtOffset(document, document.textDocument.offsetAt({ line, character }), kept.runs);
    },
  );
}

function documentOf(shared: SlatServerSharedServices, uri: string): LangiumDocument | undefined {
  return shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
}

/** The spelling of an address that documents are kept under. */
function normal(uri: string): string {
  return URI.parse(uri).toString();
}
