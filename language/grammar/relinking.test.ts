import { DocumentState, URI } from 'langium';
import { expect, it } from 'vitest';
import { createTestServices, type TestServices } from '../../tests/memory-files.ts';
import { textFindings } from './index.ts';

/** Builds all files, then changes one and returns which files were linked again for it. */
async function relinked(services: TestServices, path: string, text: string): Promise<string[]> {
  const linked: string[] = [];
  const { DocumentBuilder } = services.shared.workspace;
  const listener = DocumentBuilder.onDocumentPhase(DocumentState.Linked, (document) => {
    linked.push(document.uri.path);
  });
  services.files.contents.set(path, text);
  await DocumentBuilder.update([URI.file(path)], []);
  listener.dispose();
  return linked.sort();
}

async function built(files: Readonly<Record<string, string>>): Promise<TestServices> {
  const services = createTestServices(files);
  const { LangiumDocuments, DocumentBuilder, WorkspaceBounds } = services.shared.workspace;
  WorkspaceBounds.setRoots([URI.file('/')]);
  const documents = await Promise.all(
    Object.keys(files).map((path) => LangiumDocuments.getOrCreateDocument(URI.file(path))),
  );
  await DocumentBuilder.build(documents, { validation: true });
  return services;
}

const FILES = {
  '/top.slat': 'use "middle.slat"\nrun r { posts p }',
  '/middle.slat': 'use "base.slat"\nrip t from b to 1"',
  '/base.slat': 'board b { width 5" }\npost p { along 3" }',
  '/alone.slat': 'board c { width 5" }',
  '/faulty.slat': 'run r { posts nowhere }',
};

it('relinks the files that see the changed one, at any distance, and no others', async () => {
  const services = await built(FILES);
  expect(await relinked(services, '/base.slat', 'board b { width 6" }')).toEqual([
    '/base.slat',
    '/middle.slat',
    '/top.slat',
  ]);
  expect(await relinked(services, '/top.slat', 'use "middle.slat"')).toEqual(['/top.slat']);
});

it('leaves a file with an unknown name alone while another is edited', async () => {
  const services = await built(FILES);
  expect(await relinked(services, '/alone.slat', 'board c { width 6" }')).toEqual(['/alone.slat']);
});

it('links at most the edited file in a workspace where half the files have an unknown name', async () => {
  const files: Record<string, string> = {};
  for (let n = 0; n < 100; n++)
    files[`/n${n}.slat`] = n % 2 ? `run r { posts nowhere${n} }` : `board b${n} { width 5" }`;
  const services = await built(files);
  expect(await relinked(services, '/n0.slat', 'board b0 { width 6" }')).toEqual(['/n0.slat']);
});

it('finds a name as soon as a file it sees has it', async () => {
  const services = await built({ '/a.slat': 'use "b.slat"\nrun r { posts p }', '/b.slat': '' });
  const unknown = () => {
    const document = services.shared.workspace.LangiumDocuments.getDocument(URI.file('/a.slat'));
    return document && textFindings(services.slat, document).map(({ code }) => code);
  };
  expect(unknown()).toEqual(['unknown-name']);
  expect(await relinked(services, '/b.slat', 'post p { along 3" }')).toEqual(['/a.slat', '/b.slat']);
  expect(unknown()).toEqual([]);
  expect(await relinked(services, '/b.slat', '')).toEqual(['/a.slat', '/b.slat']);
  expect(unknown()).toEqual(['unknown-name']);
});

it('relinks when a missing file comes into being, and when one is deleted', async () => {
  const services = await built({ '/a.slat': 'use "b.slat"\nrun r { posts p }' });
  const graph = services.shared.workspace.UseGraph;
  expect(graph.results('file:///a.slat')[0]?.problem).toBe('missing');
  expect(await relinked(services, '/b.slat', 'post p { along 3" }')).toEqual(['/a.slat', '/b.slat']);
  expect(graph.results('file:///a.slat')[0]?.problem).toBeUndefined();
  services.files.contents.delete('/b.slat');
  await services.shared.workspace.DocumentBuilder.update([], [URI.file('/b.slat')]);
  expect(graph.results('file:///a.slat')[0]?.problem).toBe('missing');
  const document = services.shared.workspace.LangiumDocuments.getDocument(URI.file('/a.slat'));
  expect(document?.references.map((reference) => reference.error !== undefined)).toEqual([true]);
});

it('loads what a file begins to use, and links and validates it in the same build', async () => {
  const services = await built({ '/a.slat': 'run r { posts p }' });
  services.files.contents.set('/b.slat', 'use "c.slat"');
  services.files.contents.set('/c.slat', 'post p { along 3" }');
  expect(await relinked(services, '/a.slat', 'use "b.slat"\nrun r { posts p }')).toEqual([
    '/a.slat',
    '/b.slat',
    '/c.slat',
  ]);
  for (const document of services.shared.workspace.LangiumDocuments.all) {
    expect(document.state).toBe(DocumentState.Validated);
    expect(document.references.every((reference) => reference.error === undefined)).toBe(true);
  }
});
