import { mkdtempSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setInterruptionPeriod } from 'langium';
import { afterEach, expect, it } from 'vitest';
import type { CodeAction, TextEdit, WorkspaceEdit } from 'vscode-languageserver-types';
import type { SlatValidator } from '../../server/findings/validator.ts';
import { FollowPicture, LocatePiece, type Picture, PiecesAt, type Place } from '../../server/protocol.ts';
import { type Client, connect } from './index.ts';
import { JOB, LIBRARY } from './sample.ts';

let client: Client;
afterEach(() => client.stop());

const FILES = { 'library.slat': LIBRARY, 'job.slat': JOB };

const errors = (found: readonly { severity?: number }[]) => found.filter(({ severity }) => severity === 1);

it('tells findings with code, page and exact place, and takes them back when they are mended', async () => {
  client = await connect(FILES);
  const atFirst = await client.open('job.slat');
  expect(errors(atFirst)).toEqual([]);
  const found = await client.edit('job.slat', `length 18'`, 'length 18');
  const told = found.find(({ code }) => code === 'unit-missing');
  expect(told).toMatchObject({
    severity: 1,
    source: 'slatwright',
    codeDescription: { href: 'slatwright-finding:/unit-missing.md' },
    range: { start: { line: 8, character: 9 }, end: { line: 8, character: 11 } },
  });
  const mended = await client.edit('job.slat', 'length 18 ', `length 18' `);
  expect(mended).toEqual(atFirst);
});

it('gives every finding a code, a page and a place', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const found = await client.edit(
    'job.slat',
    'fill weave\n}\n\nrun north',
    'fil weave\n  height 7\n}\n\nrun north',
  );
  expect(found.length).toBeGreaterThan(1);
  for (const { code, codeDescription, source } of found) {
    expect(source).toBe('slatwright');
    expect(codeDescription?.href).toBe(`slatwright-finding:/${code}.md`);
  }
});

it('mends a length by its quick fix', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const found = await client.edit('job.slat', `length 18'`, 'length 18');
  const told = found.filter(({ code }) => code === 'unit-missing');
  const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri: client.uri('job.slat') },
    range: told[0]?.range,
    context: { diagnostics: told },
  });
  const edits = actions.flatMap(({ edit }) => edit?.changes?.[client.uri('job.slat')] ?? []);
  expect(edits.map(({ newText }) => newText)).toContain('18"');
  for (const { range } of edits) expect(range).toEqual(told[0]?.range);
});

it('proposes what an unknown name was probably meant to be', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const found = await client.edit('job.slat', 'fill weave', 'fill weav');
  const told = found.filter(({ code }) => code === 'unknown-name');
  const actions = await client.request<CodeAction[]>('textDocument/codeAction', {
    textDocument: { uri: client.uri('job.slat') },
    range: told[0]?.range,
    context: { diagnostics: told },
  });
  expect(actions.map(({ title }) => title)).toContain('Change to weave');
});

it('sends the whole picture first, then what changed in it', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const whole = await client.request<Picture>(FollowPicture, { uri: client.uri('job.slat') });
  expect(whole.delta).toMatchObject({ base: 0, order: ['west', 'north'] });
  await client.type('job.slat', `height 5'`, `height 4'`);
  const { delta } = await client.picture(({ textVersion }) => textVersion === 2);
  expect(delta).toMatchObject({ base: whole.delta.version, version: whole.delta.version + 1 });
  // The run that was not edited is not sent again.
  expect([...delta.put, ...delta.drop].map(({ view }) => view)).not.toContain('west');
  expect(delta.put.map(({ view }) => view)).toContain('north');
});

it('sends the picture before the findings', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  await client.request(FollowPicture, { uri: client.uri('job.slat') });
  const before = client.arrivals.length;
  await client.edit('job.slat', `height 5'`, `height 4'`);
  expect(client.arrivals.slice(before)).toEqual(['picture', 'findings']);
});

it('sends nothing of a picture that an edit does not change', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  await client.request(FollowPicture, { uri: client.uri('job.slat') });
  await client.edit('job.slat', 'job "Terrace"', '// a comment\njob "Terrace"');
  expect(client.pictures).toEqual([]);
});

it('keeps the last good picture of a run that cannot be worked out, marked stale', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  await client.request(FollowPicture, { uri: client.uri('job.slat') });
  await client.edit('job.slat', `length 18'`, 'length ');
  const broken = await client.picture(({ textVersion }) => textVersion === 2);
  expect(broken.delta.order).toEqual(['west', 'north']);
  expect(broken.delta.views.map(({ key, stale }) => [key, stale])).toEqual([['west', true]]);
  expect(broken.delta.put).toEqual([]);
  await client.edit('job.slat', 'length  over', `length 18' over`);
  const mended = await client.picture(({ textVersion }) => textVersion === 3);
  expect(mended.delta.views.map(({ key, stale }) => [key, stale])).toEqual([['west', false]]);
});

it('follows a change of the library in the pictures and findings of the job', async () => {
  client = await connect(FILES);
  await client.open('library.slat');
  await client.open('job.slat');
  await client.request(FollowPicture, { uri: client.uri('job.slat') });
  await client.type('library.slat', `width 5-1/2"`, `width 4-1/2"`);
  const { delta, uri } = await client.picture(() => true);
  expect(uri).toBe(client.uri('job.slat'));
  expect(delta.put.map(({ view }) => view)).toEqual(['west', 'north']);
});

it('finds the statement of a piece and the pieces of a statement', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const uri = client.uri('job.slat');
  const place = await client.request<Place>(LocatePiece, { uri, piece: 'north/p2' });
  expect(place).toMatchObject({ uri, start: { line: 19 } });
  const { position } = client.at('job.slat', `length 12'`);
  const pieces = await client.request<string[]>(PiecesAt, { uri, ...position });
  expect(pieces.length).toBeGreaterThan(0);
  expect(pieces.every((key) => key.startsWith('north/'))).toBe(true);
  const posts = await client.request<string[]>(PiecesAt, {
    uri,
    ...client.at('job.slat', 'posts pole, 2').position,
  });
  expect(posts).toContain('north/p2');
});

it('renames across files, in quotes where the name needs them', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
    ...client.at('job.slat', 'fill weave'),
    newName: 'long weave',
  });
  const changes = edit.changes ?? {};
  const texts = (edits: TextEdit[] | undefined) => edits?.map(({ newText }) => newText);
  expect(texts(changes[client.uri('library.slat')])).toEqual(['"long weave"']);
  expect(texts(changes[client.uri('job.slat')])).toEqual(['"long weave"', '"long weave"']);
});

it('shows the first picture before all other files are read, and renames only after', async () => {
  const others = Object.fromEntries(Array.from({ length: 40 }, (_, at) => [`other${at}.slat`, JOB]));
  client = await connect({ ...FILES, ...others });
  await client.open('job.slat');
  const { LangiumDocuments } = client.server.shared.workspace;
  expect(LangiumDocuments.all.count()).toBeLessThan(40);
  const edit = await client.request<WorkspaceEdit>('textDocument/rename', {
    ...client.at('job.slat', 'fill weave'),
    newName: 'braid',
  });
  expect(Object.keys(edit.changes ?? {})).toHaveLength(42);
});

it('answers every keystroke with findings while other files are still being read', async () => {
  const others = Object.fromEntries(
    Array.from({ length: 60 }, (_, n) => [`other-${n}.slat`, LIBRARY.replaceAll('plank', `plank-${n}`)]),
  );
  client = await connect({ 'library.slat': LIBRARY, 'job.slat': JOB, ...others });
  await client.open('job.slat');
  for (let key = 0; key < 12; key++) {
    // Each edit waits for its own findings: a build that the reading of files cancels would never answer.
    const wrong = key % 2 === 0;
    const found = await client.edit(
      'job.slat',
      wrong ? "height 6'" : 'height 6',
      wrong ? 'height 6' : "height 6'",
    );
    expect(found.map(({ code }) => code).includes('unit-missing'), `key ${key}`).toBe(wrong);
  }
  // Answered when every file has been read, so that none is read after its folder is gone.
  await client.request('workspace/symbol', { query: 'west' });
});

it('neither relinks nor checks a file with an unknown name when another is edited', async () => {
  const faulty = 'run lost {\n  fill nothing\n}\n';
  client = await connect({ ...FILES, 'faulty.slat': faulty, 'far/faulty.slat': faulty });
  await client.open('job.slat');
  const linked = new Map<string, number>();
  const { shared, slat } = client.server;
  await shared.workspace.WorkspaceManager.complete;
  shared.workspace.DocumentBuilder.onDocumentPhase(4, ({ uri }) => {
    linked.set(uri.toString(), (linked.get(uri.toString()) ?? 0) + 1);
  });
  const edits = 5;
  for (let at = 0; at < edits; at++) await client.edit('job.slat', 'seen from', 'seen from ');
  expect(Object.fromEntries(linked)).toEqual({ [client.uri('job.slat')]: edits });
  const { counts } = slat.validation.DocumentValidator as SlatValidator;
  expect([...counts.keys()]).toEqual([client.uri('job.slat')]);
});

it('lays out only the run that is edited', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const { Keeper } = client.server.shared.work;
  const uri = client.uri('job.slat');
  const before = Keeper.of(uri)?.runs ?? [];
  await client.edit('job.slat', `height 5'`, `height 4'`);
  const after = Keeper.of(uri)?.runs ?? [];
  expect(after[0]).toBe(before[0]);
  expect(after[1]).not.toBe(before[1]);
});

it('drops texts that are superseded before they are worked out', async () => {
  client = await connect(FILES);
  await client.open('job.slat');
  const { counts } = client.server.shared.work.Keeper;
  const uri = client.uri('job.slat');
  const before = counts.get(uri) ?? 0;
  // As on a text so long that the builder makes room for other messages between its steps.
  setInterruptionPeriod(0);
  for (const digit of '123456789') await client.type('job.slat', ' over posts', `${digit} over posts`);
  await client.type('job.slat', '123456789', '');
  await client.until(() => errors(client.findings('job.slat')).length === 0, 'the last findings');
  setInterruptionPeriod(10);
  expect((counts.get(uri) ?? 0) - before).toBeLessThan(10);
});

it('keeps nothing of a closed file, and takes its findings back', async () => {
  client = await connect(FILES);
  await client.open('job.slat', JOB.replace(`length 18'`, 'length 18'));
  const { Keeper } = client.server.shared.work;
  expect(Keeper.keptUris()).toEqual([client.uri('job.slat')]);
  await client.close('job.slat');
  expect(Keeper.keptUris()).toEqual([]);
  expect(client.findings('job.slat')).toEqual([]);
});

it('lets no link lead out of the workspace', async () => {
  const outside = mkdtempSync(join(tmpdir(), 'slat-outside-'));
  writeFileSync(join(outside, 'secret.slat'), 'board hidden { width 5"; thickness 1" }\n');
  client = await connect({ 'job.slat': 'use "link/secret.slat"\nuse "../x.slat"\n' });
  symlinkSync(outside, join(client.folder, 'link'));
  const found = await client.open('job.slat');
  rmSync(outside, { recursive: true });
  expect(found.map(({ code }) => code)).toEqual(['use-outside', 'use-outside']);
  expect(client.server.shared.workspace.LangiumDocuments.all.count()).toBe(1);
});
