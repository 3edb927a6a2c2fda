import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterEach, beforeEach, expect, it } from 'vitest';
import {
  CancellationTokenSource,
  type CodeLens,
  createProtocolConnection,
  ProgressType,
  type ProtocolConnection,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver/node';
import {
  type BetterFound,
  FindBetter,
  FollowMaterials,
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
} from '../protocol.ts';
import { BANK, LONG } from './testing/bank.ts';

// The server as an entry of Node starts it, its worker included, spoken to over its streams.
const SERVER = resolve(import.meta.dirname, '../main-node.ts');

let folder: string;
let server: ChildProcess;
let client: ProtocolConnection;
let uri: string;
let refreshes = 0;
let said: string[] = [];

beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'slatwright-server-'));
  uri = pathToFileURL(join(folder, 'bank.slat')).toString();
  server = spawn(process.execPath, [SERVER, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
  if (!server.stdin || !server.stdout) throw new Error('the server has no streams');
  client = createProtocolConnection(
    new StreamMessageReader(server.stdout),
    new StreamMessageWriter(server.stdin),
  );
  refreshes = 0;
  said = [];
  client.onNotification('window/logMessage', ({ message }: { message: string }) => void said.push(message));
  client.onRequest('workspace/codeLens/refresh', () => {
    refreshes++;
    return null;
  });
  client.onRequest('client/registerCapability', () => null);
  client.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => null));
  client.onError(() => undefined);
  client.listen();
  await client.sendRequest('initialize', {
    processId: process.pid,
    rootUri: null,
    capabilities: { workspace: { codeLens: { refreshSupport: true } } },
    workspaceFolders: [{ uri: pathToFileURL(folder).toString(), name: 'work' }],
  });
  await client.sendNotification('initialized', {});
});

afterEach(() => {
  client.dispose();
  server.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

const open = (text: string) =>
  client.sendNotification('textDocument/didOpen', {
    textDocument: { uri, languageId: 'slat', version: 1, text },
  });

async function titles(): Promise<string[]> {
  const lenses: CodeLens[] = await client.sendRequest('textDocument/codeLens', { textDocument: { uri } });
  return lenses.map(({ command }) => command?.title ?? '');
}

it('tells totals, materials, choices, the pile and sheets, worked out in its worker', async () => {
  await open(BANK);
  expect((await titles())[0]).toBe('being worked out …');
  await expect.poll(async () => (await titles())[0], { timeout: 30_000 }).toMatch(/proven cheapest$/);
  expect(refreshes).toBeGreaterThan(0);

  const changed: Materials[] = [];
  client.onNotification(MaterialsChanged, (materials: Materials) => void changed.push(materials));
  const first: Materials = await client.sendRequest(FollowMaterials, { uri });
  expect(first.lines?.map(({ label }) => label)).toEqual(['Boards and posts', 'Hardware', 'Finish', 'Price']);
  const plank = first.lines?.[0]?.under?.find(({ label }) => label === 'plank');
  const cut = plank?.under?.[0]?.under?.[0];
  const pieces: Material[] = await client.sendRequest(MaterialPieces, { uri, id: cut?.id });
  expect(pieces).toHaveLength(cut?.pieces ?? -1);
  expect(pieces[0]).toMatchObject({ kind: 'piece', piece: expect.stringMatching(/^bank\/b1\/c\d\d$/) });
  expect(pieces[0]?.label).toMatch(/^bank, bay 1, slat \d+$/);
  await client.sendNotification('textDocument/didChange', {
    textDocument: { uri, version: 2 },
    contentChanges: [{ text: BANK.replace("length 16'", "length 12'") }],
  });
  await expect
    .poll(() => changed.some(({ stale, lines }) => !stale && lines), { timeout: 30_000 })
    .toBe(true);

  const here: RunsAnswer = await client.sendRequest(RunsAt, { uri, line: 7, character: 4 });
  expect(here).toEqual({ runs: ['bank'], here: 'bank' });
  const found: BetterFound | null = await client.sendRequest(FindBetter, { uri, run: 'bank' });
  expect(found).toMatchObject({ run: 'bank', textVersion: 2, done: true });
  const pile: PileTold = await client.sendRequest(TellPile, { uri });
  expect(pile.runs[0]?.ways[0]?.pattern).toBe('even, as it stands');
  const sheets: TakeoffFiles = await client.sendRequest(TakeoffSheets, { uri });
  expect(sheets.csv.text).toMatch(/^stock,width,/);
  expect(sheets.sheets.map(({ name }) => name)).toEqual(
    expect.arrayContaining(['cut-plank.svg', 'labels.svg']),
  );
});

it('leaves a search that is canceled, and ends with its worker in the midst of one', async () => {
  await open(LONG);
  const search = (progress: string, told: (tried: Tried) => void) => {
    const source = new CancellationTokenSource();
    client.onProgress(new ProgressType<Tried>(), progress, told);
    const answer = client.sendRequest(FindBetter, { uri, run: 'bank', progress }, source.token);
    return { source, answer };
  };
  let tried = 0;
  await new Promise<void>((heard, fail) => {
    const { source, answer } = search('one', (told) => {
      tried = told.tried;
      source.cancel();
    });
    answer.then((found) => expect(found).toBeNull()).then(heard, fail);
  });
  expect(tried).toBeGreaterThan(0);

  await new Promise<void>((begun) => {
    const { answer } = search('two', () => begun());
    answer.catch(() => undefined);
  });
  const ended = once(server, 'exit');
  await client.sendRequest('shutdown');
  await client.sendNotification('exit');
  const [code] = await ended;
  expect(code).toBe(0);
});
