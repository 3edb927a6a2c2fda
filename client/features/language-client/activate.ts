import {
  type CancellationToken,
  commands,
  type Disposable,
  EventEmitter,
  type ExtensionContext,
  Uri,
  window,
} from 'vscode';
import { LanguageClient, type LanguageClientOptions, State, TransportKind } from 'vscode-languageclient/node';
import {
  FollowPicture,
  LeavePicture,
  LocatePiece,
  type Picture,
  PictureChanged,
  PiecesAt,
  type Place,
} from '../../../server/protocol.ts';
import { DisposableStore, type Log } from '../../infrastructure/index.ts';
import { followLensSetting, wantsLenses } from './lenses.ts';
import { linkFindingPages } from './link-finding-pages.ts';
import type { PictureSource } from './picture-source.ts';
import { reckoningRequests, type SendRequest } from './reckoning-requests.ts';
import type { MaterialsSource, ReckoningSource } from './reckoning-source.ts';

/** Everything features need of the language server. */
export type LanguageServer = PictureSource & MaterialsSource & ReckoningSource & Disposable;

/** Starts the language server, without waiting for it, and gives what features need of it. */
export function activateLanguageClient(context: ExtensionContext, log: Log): LanguageServer {
  const store = new DisposableStore();
  const changed = store.add(new EventEmitter<Picture>());
  const restarted = store.add(new EventEmitter<void>());
  const client = createClient(context, log);

  let runs = 0;
  store.add(
    client.onDidChangeState(({ newState }) => {
      if (newState === State.Running && ++runs > 1) restarted.fire();
    }),
  );
  store.add(client.onNotification(PictureChanged, (picture: Picture) => changed.fire(picture)));
  store.add(commands.registerCommand('slatwright.restartServer', () => client.restart()));

  let ready = client.start();
  ready.catch((error: unknown) => {
    log.error('the language server did not start', String(error));
    void window.showErrorMessage(`Slatwright: the language server did not start. ${String(error)}`);
  });
  const request: SendRequest = async <T>(method: string, params: object, token?: CancellationToken) => {
    await ready;
    return client.sendRequest<T>(method, params, token);
  };

  store.add(followLensSetting(client));
  return {
    ...reckoningRequests(client, request, store),
    follow: (uri, kinds) => request<Picture>(FollowPicture, { uri, kinds }),
    leave: (uri) => {
      if (client.isRunning()) void client.sendNotification(LeavePicture, { uri });
    },
    locate: async (uri, piece) => (await request<Place | null>(LocatePiece, { uri, piece })) ?? undefined,
    piecesAt: async (uri, line, character) =>
      (await request<readonly string[] | null>(PiecesAt, { uri, line, character })) ?? [],
    onChanged: changed.event,
    onRestarted: restarted.event,
    dispose: () => {
      store.dispose();
      ready = Promise.reject(new Error('the extension was stopped'));
      ready.catch(() => undefined);
      void client.dispose().catch(() => undefined);
    },
  };
}

function createClient(context: ExtensionContext, log: Log): LanguageClient {
  const module = context.asAbsolutePath('dist/server.cjs');
  const options: LanguageClientOptions = {
    documentSelector: [{ language: 'slat' }],
    outputChannel: log,
    middleware: {
      provideCodeLenses: (document, token, next) => (wantsLenses(document) ? next(document, token) : []),
      handleDiagnostics: (uri, diagnostics, next) => next(uri, linkFindingPages(diagnostics)),
    },
  };
  return new LanguageClient(
    'slatwright',
    'Slatwright',
    {
      run: { module, transport: TransportKind.ipc, options: { env: withCompiledCode(context) } },
      debug: { module, transport: TransportKind.ipc, options: { execArgv: ['--nolazy', '--inspect=6009'] } },
    },
    options,
  );
}

/** The server's environment: Node keeps its compiled code between starts, which saves a third of one. */
function withCompiledCode(context: ExtensionContext): NodeJS.ProcessEnv {
  const { fsPath } = Uri.joinPath(context.globalStorageUri, 'compiled');
  return { ...process.env, NODE_COMPILE_CACHE: fsPath };
}
