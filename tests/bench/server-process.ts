import { type ChildProcess, spawn } from 'node:child_process';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import {
  createProtocolConnection,
  type Diagnostic,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import { URI } from 'vscode-uri';
import { FollowPicture, type Picture, PictureChanged } from '../../server/protocol.ts';

const SERVER = resolve(import.meta.dirname, '../../dist/server.cjs');
const COMPILED = join(tmpdir(), 'slatwright-bench-compiled');
const PATIENCE = 20_000;

/** The built server in a process of its own, spoken to over its standard streams. */
export interface ServerProcess {
  /** From spawning to the answer of `initialize`, in milliseconds. */
  readonly initialized: number;
  readonly connection: ProtocolConnection;
  open(name: string, text: string): Promise<void>;
  follow(name: string): Promise<Picture>;
  /** Sends one keystroke; answers with the times to the picture's change and to all findings. */
  key(
    name: string,
    range: LspRange,
    text: string,
  ): Promise<{ picture?: number; findings: number; bytes: number }>;
  stop(): void;
}

interface LspRange {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

/** Starts the server on a folder and waits until it can be asked. */
export async function startServer(folder: string): Promise<ServerProcess> {
  const began = performance.now();
  const child: ChildProcess = spawn(process.execPath, [SERVER, '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
    // As the extension starts it: compiled code is kept between starts.
    env: { ...process.env, NODE_COMPILE_CACHE: COMPILED },
  });
  if (!child.stdin || !child.stdout) throw new Error('the server has no streams');
  const connection = createProtocolConnection(
    new StreamMessageReader(child.stdout),
    new StreamMessageWriter(child.stdin),
  );
  const waiting = new Set<(at: number, uri: string, version: number, picture?: Picture) => void>();
  connection.onNotification(PictureChanged, (picture: Picture) => {
    const at = performance.now();
    for (const told of [...waiting]) told(at, picture.uri, picture.textVersion, picture);
  });
  connection.onNotification(
    'textDocument/publishDiagnostics',
    (sent: { uri: string; version?: number; diagnostics: Diagnostic[] }) => {
      const at = performance.now();
      for (const told of [...waiting]) told(at, sent.uri, sent.version ?? 0);
    },
  );
  connection.onUnhandledNotification(() => {});
  connection.onRequest('client/registerCapability', () => null);
  connection.onRequest('workspace/configuration', () => []);
  connection.listen();
  const root = URI.file(folder).toString();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: root,
    capabilities: { textDocument: { publishDiagnostics: { versionSupport: true } } },
    workspaceFolders: [{ uri: root, name: 'bench' }],
  });
  const initialized = performance.now() - began;
  await connection.sendNotification('initialized', {});
  const versions = new Map<string, number>();
  const uriOf = (name: string) => URI.file(join(folder, name)).toString();
  const settled = (uri: string, version: number): Promise<number> =>
    new Promise((done, fail) => {
      const timer = setTimeout(() => fail(new Error(`no findings for version ${version}`)), PATIENCE);
      const told = (at: number, about: string, ofVersion: number, picture?: Picture) => {
        // Findings bear no version; keys are sent one at a time, so the next findings are this key's.
        if (about !== uri || picture || (ofVersion > 0 && ofVersion < version)) return;
        clearTimeout(timer);
        waiting.delete(told);
        done(at);
      };
      waiting.add(told);
    });

  return {
    initialized,
    connection,
    async open(name, text) {
      const uri = uriOf(name);
      versions.set(uri, 1);
      const done = settled(uri, 1);
      await connection.sendNotification('textDocument/didOpen', {
        textDocument: { uri, languageId: 'slat', version: 1, text },
      });
      await done;
    },
    follow: (name) => connection.sendRequest(FollowPicture, { uri: uriOf(name) }),
    async key(name, range, text) {
      const uri = uriOf(name);
      const version = (versions.get(uri) ?? 1) + 1;
      versions.set(uri, version);
      let pictured: number | undefined;
      let bytes = 0;
      const told = (at: number, about: string, ofVersion: number, picture?: Picture) => {
        if (about !== uri || !picture || ofVersion < version) return;
        pictured = at;
        bytes = JSON.stringify(picture).length;
      };
      waiting.add(told);
      const done = settled(uri, version);
      const sent = performance.now();
      await connection.sendNotification('textDocument/didChange', {
        textDocument: { uri, version },
        contentChanges: [{ range, text }],
      });
      const findings = (await done) - sent;
      waiting.delete(told);
      return { picture: pictured === undefined ? undefined : pictured - sent, findings, bytes };
    },
    stop() {
      connection.dispose();
      child.kill();
    },
  };
}
