import { type CancellationToken, EventEmitter } from 'vscode';
import { type LanguageClient, ProgressType } from 'vscode-languageclient/node';
import {
  type BetterFound,
  FindBetter,
  FollowMaterials,
  LeaveMaterials,
  type Material,
  MaterialPieces,
  type Materials,
  MaterialsChanged,
  type PileTold,
  type RunsAnswer,
  RunsAt,
  type TakeoffFiles,
  TakeoffSheets,
  TellPile,
  type Tried,
} from '../../../server/protocol.ts';
import type { DisposableStore } from '../../infrastructure/index.ts';
import type { MaterialsSource, ReckoningSource } from './reckoning-source.ts';

/** Sends a request once the server runs. */
export type SendRequest = <T>(method: string, params: object, token?: CancellationToken) => Promise<T>;

type Asked = ReckoningSource & Omit<MaterialsSource, 'locate' | 'onRestarted'>;

/** The requests about what a job comes to. */
export function reckoningRequests(
  client: LanguageClient,
  request: SendRequest,
  store: DisposableStore,
): Asked {
  const changed = store.add(new EventEmitter<Materials>());
  store.add(client.onNotification(MaterialsChanged, (materials: Materials) => changed.fire(materials)));
  let searches = 0;
  /** What takes a while: undefined where there is no answer, or it was canceled before there was one. */
  const asked = async <T>(method: string, params: object, token: CancellationToken) => {
    try {
      return (await request<T | null>(method, params, token)) ?? undefined;
    } catch (error) {
      if (token.isCancellationRequested) return undefined;
      throw error;
    }
  };
  return {
    followMaterials: (uri) => request<Materials>(FollowMaterials, { uri }),
    leaveMaterials: (uri) => {
      if (client.isRunning()) void client.sendNotification(LeaveMaterials, { uri });
    },
    materialPieces: async (uri, id) =>
      (await request<readonly Material[] | null>(MaterialPieces, { uri, id })) ?? [],
    onMaterialsChanged: changed.event,
    findBetter: async (uri, run, told, token) => {
      const progress = `slatwright-better-${++searches}`;
      const hearing = client.onProgress(new ProgressType<Tried>(), progress, told);
      try {
        return await asked<BetterFound>(FindBetter, { uri, run, progress }, token);
      } finally {
        hearing.dispose();
      }
    },
    tellPile: (uri, token) => asked<PileTold>(TellPile, { uri }, token),
    takeoffSheets: (uri, token) => asked<TakeoffFiles>(TakeoffSheets, { uri }, token),
    runsAt: (uri, line, character) => request<RunsAnswer>(RunsAt, { uri, line, character }),
  };
}
