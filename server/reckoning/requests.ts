import { type Cancellation, URI } from 'langium';
import { CodeLensRefreshRequest, type Connection, ProgressType } from 'vscode-languageserver';
import {
  type BetterFound,
  type DocumentParams,
  FindBetter,
  type FindBetterParams,
  FollowMaterials,
  LeaveMaterials,
  type Material,
  MaterialPieces,
  type MaterialPiecesParams,
  type Materials,
  MaterialsChanged,
  type PiecesAtParams,
  type PileTold,
  type RunsAnswer,
  RunsAt,
  type TakeoffFiles,
  TakeoffSheets,
  TellPile,
  type Tried,
} from '../protocol.ts';
import type { SlatServerSharedServices } from '../services.ts';
import { normalUri, runAt, runsIn, workedOut } from '../work/index.ts';
import type { Answers, Ask } from './ask.ts';
import { pieceLines } from './piece-lines.ts';

/** Answers what clients ask about totals, materials and choices, and tells them when totals have changed. */
export function answerReckoningRequests(connection: Connection, shared: SlatServerSharedServices): void {
  const { Keeper, Totals } = shared.work;
  tellChanges(connection, shared);

  const materials = (uri: string): Materials => {
    const { totals, stale } = Totals.of(uri);
    return { uri, ...(totals ? { lines: totals.lines, summary: totals.job } : {}), stale };
  };
  connection.onRequest(FollowMaterials, ({ uri }: DocumentParams, token): Promise<Materials | null> => {
    return workedOut(Keeper, uri, token, (address) => {
      Totals.follow(address);
      return materials(address);
    });
  });
  connection.onNotification(LeaveMaterials, ({ uri }: DocumentParams) => Totals.leave(normalUri(uri)));
  Totals.onChanged((uri) => {
    if (Totals.isFollowed(uri)) void connection.sendNotification(MaterialsChanged, materials(uri));
  });
  connection.onRequest(MaterialPieces, ({ uri, id }: MaterialPiecesParams): readonly Material[] => {
    const keys = Totals.of(normalUri(uri)).totals?.pieces[id] ?? [];
    const kept = Keeper.of(normalUri(uri));
    return kept ? pieceLines(keys, id, kept.runs, kept.work.job) : [];
  });

  const reckon = async <A extends Ask>(
    address: string,
    ask: A,
    token: Cancellation.CancellationToken,
    told: (found: Answers[A['kind']]) => void = () => undefined,
  ): Promise<Answers[A['kind']] | null> =>
    (await shared.work.Reckoner.reckon(address, ask, told, token)) ?? null;
  connection.onRequest(
    FindBetter,
    ({ uri, run, progress }: FindBetterParams, token): Promise<BetterFound | null> => {
      const tried = new ProgressType<Tried>();
      const told = (found: Answers['better']) => {
        if (!found || progress === undefined) return;
        void connection.sendProgress(tried, progress, { tried: found.tried, kept: found.kept });
      };
      return workedOut(Keeper, uri, token, async (address) => {
        const textVersion = Keeper.of(address)?.textVersion ?? 0;
        const found = await reckon(address, { kind: 'better', run }, token, told);
        return found && { ...found, textVersion };
      });
    },
  );
  connection.onRequest(TellPile, ({ uri }: DocumentParams, token): Promise<PileTold | null> => {
    return workedOut(Keeper, uri, token, (address) => reckon(address, { kind: 'pile' }, token));
  });
  connection.onRequest(TakeoffSheets, ({ uri }: DocumentParams, token): Promise<TakeoffFiles | null> => {
    return workedOut(Keeper, uri, token, (address) => reckon(address, { kind: 'sheets' }, token));
  });
  connection.onRequest(
    RunsAt,
    ({ uri, line, character }: PiecesAtParams, token): Promise<RunsAnswer | null> =>
      workedOut(Keeper, uri, token, (address) => {
        const document = shared.workspace.LangiumDocuments.getDocument(URI.parse(address));
        if (!document) return { runs: [] };
        const runs = runsIn(document);
        const here = runAt(document, document.textDocument.offsetAt({ line, character }));
        return { runs: runs.map(({ name }) => name), ...(here ? { here: here.name } : {}) };
      }),
  );
}

/** Lenses are asked for anew when totals are there, or no longer those of the files as they stand. */
function tellChanges(connection: Connection, { lsp, work }: SlatServerSharedServices): void {
  let refreshes = false;
  lsp.LanguageServer.onInitialize(({ capabilities }) => {
    refreshes = capabilities.workspace?.codeLens?.refreshSupport ?? false;
  });
  work.Totals.onChanged(() => {
    if (refreshes) void connection.sendRequest(CodeLensRefreshRequest.type).catch(() => undefined);
  });
}
