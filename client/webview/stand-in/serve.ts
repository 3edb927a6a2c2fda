/**
 * Serves the preview's page to a plain browser, with pictures from the built language server.
 * Run by `npm run stand-in` after a build; the port may be given as an argument, 0 for a free one. Bound to loopback only.
 */
import { existsSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { ViewKind } from '../../../language/drawing/index.ts';
import { type OpenedFile, openInServer } from './language-server.ts';

const port = Number(process.argv[2] ?? 4600);

const FILES: Readonly<Record<string, readonly [path: string, type: string]>> = {
  '/': ['client/webview/stand-in/index.html', 'text/html'],
  '/stand-in.css': ['client/webview/stand-in/stand-in.css', 'text/css'],
  '/stand-in.js': ['dist/stand-in/stand-in.js', 'text/javascript'],
  '/webview.css': ['dist/webview.css', 'text/css'],
};

const opened = new Map<string, Promise<OpenedFile>>();

function open(path: string): Promise<OpenedFile> {
  let file = opened.get(path);
  if (!file) {
    file = openInServer(path, readFileSync(path, 'utf8'));
    opened.set(path, file);
  }
  return file;
}

async function answer(what: string, path: string, body: Record<string, unknown>): Promise<object> {
  if (!path.endsWith('.slat') || !existsSync(path)) throw new Error(`no file ${path}`);
  const file = await open(path);
  switch (what) {
    case '/picture':
      return {
        picture: await file.follow((body.kinds ?? ['front']) as readonly ViewKind[]),
        text: file.text,
      };
    case '/text':
      return { picture: await file.change(String(body.text)) };
    case '/cursor':
      return { pieces: await file.piecesAt(Number(body.offset)) };
    case '/pick':
      return { offset: await file.locate(String(body.piece)) };
    default:
      throw new Error(`no ${what}`);
  }
}

async function bodyOf(request: IncomingMessage): Promise<Record<string, unknown>> {
  let text = '';
  for await (const chunk of request) text += chunk;
  return JSON.parse(text || '{}');
}

const server = createServer(async (request, response) => {
  const { pathname, searchParams } = new URL(request.url ?? '/', 'http://localhost');
  try {
    const [path, type] = FILES[pathname] ?? [];
    if (path !== undefined && type !== undefined && request.method === 'GET') {
      response.setHeader('content-type', type).end(readFileSync(path));
      return;
    }
    const result = await answer(pathname, searchParams.get('file') ?? '', await bodyOf(request));
    response.setHeader('content-type', 'application/json').end(JSON.stringify(result));
  } catch (error) {
    response.writeHead(400).end(String(error));
  }
});
server.listen(port, '127.0.0.1', () => {
  const { port: taken } = server.address() as AddressInfo;
  console.log(`http://localhost:${taken}/?file=examples/bicycle-court.slat`);
});
