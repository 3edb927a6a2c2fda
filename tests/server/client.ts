import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { PassThrough } from 'node:stream';
import { NodeFileSystem } from 'langium/node';
import {
  createConnection,
  createProtocolConnection,
  type Diagnostic,
  type InitializeResult,
  type ProtocolConnection,
  type Range,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { URI } from 'vscode-uri';
import { type Picture, PictureChanged } from '../../server/protocol.ts';
import type { SlatServerSharedServices, SlatServices } from '../../server/services.ts';
import { start } from '../../server/start.ts';
import { RealWorkspaceBounds } from '../../server/workspace/real-bounds.ts';

/** A client of a server that runs in this process, with a folder of files of its own. */
export interface Client {
  readonly folder: string;
  readonly capabilities: InitializeResult['capabilities'];
  readonly connection: ProtocolConnection;
  readonly server: { readonly shared: SlatServerSharedServices; readonly slat: SlatServices };
  /** Pictures as they were sent, and how often findings were. */
  readonly pictures: readonly Picture[];
  readonly published: readonly { readonly uri: string; readonly diagnostics: readonly Diagnostic[] }[];
  uri(name: string): string;
  text(name: string): string;
  open(name: string, text?: string): Promise<readonly Diagnostic[]>;
  /** Puts `text` in place of what stands at the first occurrence of `what`; waits for the findings that follow. */
  edit(name: string, what: string, text: string): Promise<readonly Diagnostic[]>;
  /** The same without waiting. */
  type(name: string, what: string, text: string): Promise<void>;
  close(name: string): Promise<void>;
  findings(name: string): readonly Diagnostic[];
  request<R>(method: string, params: unknown): Promise<R>;
  /** Parameters of a request about the place behind the first occurrence of `what`. */
  at(
    name: string,
    what: string,
    within?: number,
  ): { textDocument: { uri: string }; position: Range['start'] };
  /** What came from the server, in the order it came. */
  readonly arrivals: readonly ('picture' | 'findings')[];
  /** Waits until something that came from the server makes a condition true. */
  until(when: () => boolean, what: string): Promise<unknown>;
  /** Waits until a picture satisfies a condition. */
  picture(when: (picture: Picture) => boolean): Promise<Picture>;
  stop(): Promise<void>;
}

const PATIENCE = 10_000;

/** Starts a server on a folder with these files, and a client of it. */
export async function connect(files: Readonly<Record<string, string>>): Promise<Client> {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'slat-')));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, name)), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  const toServer = new PassThrough();
  const toClient = new PassThrough();
  const server = start({
    connection: createConnection(new StreamMessageReader(toServer), new StreamMessageWriter(toClient)),
    fileSystemProvider: NodeFileSystem.fileSystemProvider,
    module: { workspace: { WorkspaceBounds: (shared) => new RealWorkspaceBounds(shared) } },
  });
  const connection = createProtocolConnection(
    new StreamMessageReader(toClient),
    new StreamMessageWriter(toServer),
  );
  const pictures: Picture[] = [];
  const arrivals: ('picture' | 'findings')[] = [];
  const published: { uri: string; diagnostics: Diagnostic[] }[] = [];
  const listeners = new Set<() => void>();
  const news = () => {
    for (const listener of [...listeners]) listener();
  };
  connection.onNotification(PictureChanged, (picture: Picture) => {
    pictures.push(picture);
    arrivals.push('picture');
    news();
  });
  connection.onNotification(
    'textDocument/publishDiagnostics',
    (sent: { uri: string; diagnostics: Diagnostic[] }) => {
      published.push(sent);
      arrivals.push('findings');
      news();
    },
  );
  connection.listen();
  const { capabilities } = await connection.sendRequest<InitializeResult>('initialize', {
    processId: null,
    rootUri: null,
    capabilities: {},
    workspaceFolders: [{ uri: URI.file(folder).toString(), name: 'test' }],
  });
  await connection.sendNotification('initialized', {});

  const texts = new Map(Object.entries(files));
  const versions = new Map<string, number>();
  const uri = (name: string) => URI.file(join(folder, name)).toString();
  const text = (name: string) => texts.get(name) ?? '';
  const until = async <T>(read: () => T | undefined, what: string): Promise<T> => {
    const known = read();
    if (known !== undefined) return known;
    return new Promise<T>((resolve, reject) => {
      const timer = setTimeout(() => {
        listeners.delete(look);
        reject(new Error(`${what} did not come`));
      }, PATIENCE);
      const look = () => {
        const found = read();
        if (found === undefined) return;
        clearTimeout(timer);
        listeners.delete(look);
        resolve(found);
      };
      listeners.add(look);
    });
  };
  const findings = (name: string) =>
    published.filter((one) => one.uri === uri(name)).at(-1)?.diagnostics ?? [];
  const next = (name: string, from: number) =>
    until(
      () => published.slice(from).find((one) => one.uri === uri(name))?.diagnostics,
      `findings of ${name}`,
    );
  const positionOf = (name: string, offset: number) => {
    const lines = text(name).slice(0, offset).split('\n');
    return { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
  };
  const type = async (name: string, what: string, put: string) => {
    const from = text(name).indexOf(what);
    if (from < 0) throw new Error(`${name} has no ${what}`);
    const range = { start: positionOf(name, from), end: positionOf(name, from + what.length) };
    const version = (versions.get(name) ?? 1) + 1;
    versions.set(name, version);
    texts.set(name, text(name).slice(0, from) + put + text(name).slice(from + what.length));
    await connection.sendNotification('textDocument/didChange', {
      textDocument: { uri: uri(name), version },
      contentChanges: [{ range, text: put }],
    });
  };
  return {
    folder,
    capabilities,
    connection,
    server,
    pictures,
    published,
    arrivals,
    until: (when, what) => until(() => when() || undefined, what),
    uri,
    text,
    findings,
    type,
    async open(name, content = text(name)) {
      texts.set(name, content);
      versions.set(name, 1);
      const from = published.length;
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri: uri(name), languageId: 'slat', version: 1, text: content },
      });
      return next(name, from);
    },
    async edit(name, what, put) {
      const from = published.length;
      await type(name, what, put);
      return next(name, from);
    },
    async close(name) {
      const from = published.length;
      await connection.sendNotification('textDocument/didClose', { textDocument: { uri: uri(name) } });
      await next(name, from);
    },
    request: (method, params) => connection.sendRequest(method, params),
    at(name, what, within = what.length) {
      const from = text(name).indexOf(what);
      if (from < 0) throw new Error(`${name} has no ${what}`);
      return { textDocument: { uri: uri(name) }, position: positionOf(name, from + within) };
    },
    picture: (when) => until(() => pictures.find(when), 'the picture'),
    async stop() {
      await connection.sendRequest('shutdown');
      // What was begun is brought to an end, so that nothing is sent to a connection that is gone.
      await new Promise((resume) => setTimeout(resume, 20));
      await server.shared.workspace.WorkspaceLock.read(() => undefined);
      server.shared.lsp.Connection?.dispose();
      connection.dispose();
      toServer.destroy();
      toClient.destroy();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
