import { spawn } from 'node:child_process';
import { resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  createProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';
import type { ViewKind } from '../../../language/drawing/index.ts';
import {
  FollowPicture,
  LocatePiece,
  type Picture,
  PictureChanged,
  PiecesAt,
  type Place,
} from '../../../server/protocol.ts';

/** The built language server with one file open in it. */
export interface OpenedFile {
  readonly text: string;
  follow(kinds: readonly ViewKind[]): Promise<Picture>;
  /** Changes the text; resolves to what changed in the picture, if it does so within half a second. */
  change(text: string): Promise<Picture | undefined>;
  piecesAt(offset: number): Promise<readonly string[]>;
  locate(piece: string): Promise<number | undefined>;
}

/** Starts dist/server.cjs for the working directory and opens a file in it. */
export async function openInServer(path: string, source: string): Promise<OpenedFile> {
  const server = spawn(process.execPath, ['dist/server.cjs', '--stdio'], {
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  process.on('exit', () => server.kill());
  const connection = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  connection.listen();
  const folder = pathToFileURL(process.cwd()).toString();
  await connection.sendRequest('initialize', {
    processId: process.pid,
    rootUri: folder,
    workspaceFolders: [{ uri: folder, name: 'stand-in' }],
    capabilities: {},
  });
  await connection.sendNotification('initialized', {});
  const uri = pathToFileURL(resolve(path)).toString();
  let version = 1;
  let text = source;
  await connection.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'slat', version, text },
  });
  const waiting = new Set<(picture: Picture) => void>();
  connection.onNotification(PictureChanged, (picture: Picture) => {
    for (const done of waiting) done(picture);
    waiting.clear();
  });
  return {
    get text() {
      return text;
    },
    follow: (kinds) => connection.sendRequest(FollowPicture, { uri, kinds }),
    change: (next) =>
      new Promise((done) => {
        text = next;
        waiting.add(done);
        setTimeout(() => done(undefined), 500);
        const contentChanges = [{ text: next }];
        void connection.sendNotification('textDocument/didChange', {
          textDocument: { uri, version: ++version },
          contentChanges,
        });
      }),
    piecesAt: (offset) => {
      const lines = text.slice(0, offset).split('\n');
      const position = { line: lines.length - 1, character: lines.at(-1)?.length ?? 0 };
      return connection.sendRequest(PiecesAt, { uri, ...position });
    },
    locate: async (piece) => {
      const place = await connection.sendRequest<Place | null>(LocatePiece, { uri, piece });
      if (place?.uri !== uri) return undefined;
      const before = text.split('\n').slice(0, place.start.line);
      return before.reduce((sum, line) => sum + line.length + 1, 0) + place.start.character;
    },
  };
}
