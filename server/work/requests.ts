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
import { normalUri, workedOut } from './worked-out.ts';

/** Answers what clients ask about pictures and pieces. */
export function answerPictureRequests(connection: Connection, shared: SlatServerSharedServices): void {
  const { Keeper } = shared.work;
  connection.onRequest(FollowPicture, ({ uri, kinds }: FollowParams, token): Promise<Picture> => {
    return Keeper.follow(normalUri(uri), token, kinds);
  });
  connection.onNotification(LeavePicture, ({ uri }: DocumentParams) => Keeper.leave(normalUri(uri)));
  connection.onRequest(LocatePiece, ({ uri, piece }: LocatePieceParams): Place | null => {
    const origin = originOfPiece(Keeper.of(normalUri(uri))?.runs ?? [], piece, normalUri(uri));
    const document = origin && documentOf(shared, origin.uri);
    return document ? { uri: origin.uri, ...pathHeadRange(document, origin.path) } : null;
  });
  connection.onRequest(
    PiecesAt,
    async ({ uri, line, character }: PiecesAtParams, token): Promise<readonly string[] | null> => {
      if (!Keeper.of(normalUri(uri))) return [];
      return workedOut(Keeper, uri, token, (address) => {
        const document = documentOf(shared, address);
        const kept = Keeper.of(address);
        if (!document || !kept) return [];
        return piecesAtOffset(document, document.textDocument.offsetAt({ line, character }), kept.runs);
      });
    },
  );
}

function documentOf(shared: SlatServerSharedServices, uri: string): LangiumDocument | undefined {
  return shared.workspace.LangiumDocuments.getDocument(URI.parse(uri));
}
