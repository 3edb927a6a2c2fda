import { URI } from 'langium';
import { expect, it } from 'vitest';
import { createTestServices } from '../../tests/memory-files.ts';
import { DEEPEST_CHAIN, MOST_FILES, type UseResult } from './index.ts';

async function results(files: Readonly<Record<string, string>>, opened: string, roots?: string[]) {
  const services = createTestServices(files);
  if (roots) services.shared.workspace.WorkspaceBounds.setRoots(roots.map((root) => URI.file(root)));
  const document = await services.open(opened);
  return { results: services.shared.workspace.UseGraph.results(document.uri.toString()), services };
}

const problems = (found: readonly UseResult[]) =>
  found.map(({ path, problem }) => `${path}: ${problem ?? 'fine'}`);

it('tells what became of each use', async () => {
  const files = {
    '/w/job/a.slat': [
      'use "b.slat"',
      'use "gone.slat"',
      'use "notes.txt"',
      'use "folder.slat"',
      'use "../shared.slat"',
      'use "../../etc/passwd.slat"',
      'use "/etc/secret.slat"',
      'use "file:///w/job/b.slat"',
      'use "./lib/../b.slat"',
      'use ""',
      'use "b.slat',
    ].join('\n'),
    '/w/job/b.slat': 'material m',
    '/w/job/notes.txt': '',
    '/w/job/folder.slat/x.slat': '',
    '/w/shared.slat': 'material n',
    '/etc/passwd.slat': '',
    '/etc/secret.slat': '',
  };
  const within = await results(files, '/w/job/a.slat', ['/w']);
  expect(problems(within.results)).toEqual([
    'b.slat: fine',
    'gone.slat: missing',
    'notes.txt: not-slat',
    'folder.slat: directory',
    '../shared.slat: fine',
    '../../etc/passwd.slat: outside',
    '/etc/secret.slat: outside',
    'file:///w/job/b.slat: missing',
    './lib/../b.slat: fine',
    ': empty',
    'b.slat: fine',
  ]);
  expect(within.services.files.reads.filter((path) => path.startsWith('/etc'))).toEqual([]);
  expect(within.results[1]).toMatchObject({ at: 'Use:gone%2eslat', uri: 'file:///w/job/gone.slat' });
});

it('stays in the folder of the using file when nobody has set a root', async () => {
  const files = {
    '/w/job/a.slat': 'use "../shared.slat"\nuse "lib/b.slat"',
    '/w/shared.slat': '',
    '/w/job/lib/b.slat': '',
    '/w/jobless/c.slat': '',
  };
  expect(problems((await results(files, '/w/job/a.slat')).results)).toEqual([
    '../shared.slat: outside',
    'lib/b.slat: fine',
  ]);
});

it('holds to the folders the editor has opened', async () => {
  const services = createTestServices({
    '/w/a.slat': 'use "../v/b.slat"\nuse "../u/c.slat"',
    '/v/b.slat': '',
    '/u/c.slat': '',
  });
  const folders = ['/w', '/v'].map((name) => ({ name, uri: URI.file(name).toString() }));
  services.shared.workspace.WorkspaceManager.initialize({ workspaceFolders: folders } as never);
  const document = await services.open('/w/a.slat');
  expect(problems(services.shared.workspace.UseGraph.results(document.uri.toString()))).toEqual([
    '../v/b.slat: fine',
    '../u/c.slat: outside',
  ]);
});

it('finds the way round a circle, and is not caught in it', async () => {
  const files = {
    '/a.slat': 'use "b.slat"\nuse "a.slat"',
    '/b.slat': 'use "c.slat"',
    '/c.slat': 'use "a.slat"\nuse "d.slat"',
    '/d.slat': '',
  };
  const { results: found, services } = await results(files, '/a.slat', ['/']);
  const names = (cycle: readonly string[] | undefined) => cycle?.map((uri) => URI.parse(uri).path);
  expect(found.map(({ cycle }) => names(cycle))).toEqual([['/a.slat', '/b.slat', '/c.slat'], ['/a.slat']]);
  const ofC = services.shared.workspace.UseGraph.results('file:///c.slat');
  expect(ofC.map(({ cycle }) => names(cycle))).toEqual([['/c.slat', '/a.slat', '/b.slat'], undefined]);
});

it('reads no more files than it may, and says where it stopped', async () => {
  const files: Record<string, string> = { '/a.slat': 'use "few.slat"\nuse "many.slat"', '/few.slat': '' };
  files['/many.slat'] = Array.from({ length: MOST_FILES + 50 }, (_, n) => `use "n${n}.slat"`).join('\n');
  for (let n = 0; n < MOST_FILES + 50; n++) files[`/n${n}.slat`] = '';
  const { results: found, services } = await results(files, '/a.slat', ['/']);
  expect(problems(found)).toEqual(['few.slat: fine', 'many.slat: too-many']);
  expect(services.files.reads.length).toBeLessThanOrEqual(MOST_FILES);
});

it('follows no longer chain than it may', async () => {
  const chain = (length: number) =>
    Object.fromEntries(
      Array.from({ length: length + 1 }, (_, n) => [`/n${n}.slat`, n < length ? `use "n${n + 1}.slat"` : '']),
    );
  expect(problems((await results(chain(DEEPEST_CHAIN), '/n0.slat', ['/'])).results)).toEqual([
    'n1.slat: fine',
  ]);
  const deeper = await results(chain(DEEPEST_CHAIN + 5), '/n0.slat', ['/']);
  expect(problems(deeper.results)).toEqual(['n1.slat: too-deep']);
  expect(deeper.services.files.reads).toHaveLength(DEEPEST_CHAIN + 1);
});

it('tells of a file that cannot be read', async () => {
  const services = createTestServices({ '/a.slat': 'use "b.slat"', '/b.slat': '' });
  services.files.readFile = async (uri) => {
    if (uri.path === '/b.slat') throw new Error('no permission');
    return services.files.readFileSync(uri);
  };
  const document = await services.open('/a.slat');
  expect(problems(services.shared.workspace.UseGraph.results(document.uri.toString()))).toEqual([
    'b.slat: unreadable',
  ]);
});
