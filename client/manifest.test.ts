import { existsSync, globSync, readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { COMMANDS } from '../server/protocol.ts';
import { PREVIEW_VIEW_TYPE } from './preview-protocol.ts';

const root = new URL('../', import.meta.url);
const read = (path: string): string => readFileSync(new URL(path, root), 'utf8');
const manifest = JSON.parse(read('package.json'));
const { contributes } = manifest;
const sources = globSync('client/**/*.ts', { cwd: root.pathname })
  .filter((path) => !/\.test\.ts$|webview\//.test(path))
  .map(read)
  .join('\n');

const contributed: string[] = contributes.commands.map(({ command }: { command: string }) => command);

it('wakes for every panel it can restore', () => {
  const viewTypes = [...sources.matchAll(/registerWebviewPanelSerializer\(\s*([\w.]+)/g)].map(
    ([, name]) => name,
  );
  expect(viewTypes).toEqual(['PREVIEW_VIEW_TYPE']);
  expect(manifest.activationEvents).toContain(`onWebviewPanel:${PREVIEW_VIEW_TYPE}`);
  expect(sources.match(/createWebviewPanel\(/g)).toHaveLength(1);
  expect(sources).toMatch(/createWebviewPanel\(PREVIEW_VIEW_TYPE/);
});

it('registers every command it contributes, and no other', () => {
  const registered = [...sources.matchAll(/registerCommand\(\s*'([^']+)'/g)].map(([, name]) => name);
  expect(registered.sort()).toEqual([...contributed].sort());
});

it('contributes every command that the server puts under lenses and actions', () => {
  expect(contributed).toEqual(expect.arrayContaining(Object.values(COMMANDS)));
});

it('shows every view it contributes, and says something where there is nothing to show', () => {
  const views = Object.values(contributes.views)
    .flat()
    .map((view) => (view as { id: string }).id);
  expect(views).toEqual(['slatwright.materials']);
  for (const id of views) {
    expect(sources).toContain(`'${id}'`);
    expect(contributes.viewsWelcome.map(({ view }: { view: string }) => view)).toContain(id);
  }
  expect(sources.match(/createTreeView\(/g)).toHaveLength(views.length);
});

it('puts only its own commands into menus and under keys', () => {
  const used = [...Object.values(contributes.menus).flat(), ...contributes.keybindings].map(
    (entry) => (entry as { command: string }).command,
  );
  expect(used.length).toBeGreaterThan(0);
  for (const command of used) expect(contributed).toContain(command);
});

it('declares every setting it reads, and reads every setting it declares', () => {
  const declared = Object.keys(contributes.configuration.properties);
  const readByUs = [...sources.matchAll(/\.get(?:<\w+>)?\(\s*'([^']+)'/g)].map(
    ([, name]) => `slatwright.${name}`,
  );
  // The library of the language client reads this one by the client's id.
  expect([...readByUs, 'slatwright.trace.server'].sort()).toEqual(declared.sort());
});

it('names files that are there, and ships them', () => {
  const files: string[] = [
    manifest.icon,
    ...contributes.viewsContainers.activitybar.map(({ icon }: { icon: string }) => icon),
    ...contributes.views.slatwright.map(({ icon }: { icon: string }) => icon),
    ...contributes.languages.flatMap((one: { configuration: string; icon: Record<string, string> }) => [
      one.configuration,
      ...Object.values(one.icon),
    ]),
    ...contributes.grammars.map(({ path }: { path: string }) => path),
    ...contributes.snippets.map(({ path }: { path: string }) => path),
  ].map((path: string) => path.replace(/^\.\//, ''));
  const shipped = read('.vscodeignore')
    .split('\n')
    .filter((line) => line.startsWith('!'))
    .map((line) => line.slice(1));
  for (const path of files) {
    expect(existsSync(new URL(path, root)), path).toBe(true);
    expect(
      shipped.some((pattern) => pattern === path || globSync(pattern, { cwd: root.pathname }).includes(path)),
      path,
    ).toBe(true);
  }
  for (const path of [manifest.main, manifest.bin.slatwright])
    expect(shipped).toContain(path.replace(/^\.\//, ''));
});

it('ships neither source maps nor tests', () => {
  const shipped = read('.vscodeignore').split('\n');
  expect(shipped[0]).toBe('**');
  expect(shipped.filter((line) => /\.map|\.test|stand-in/.test(line))).toEqual([]);
});

it('asks for no newer editor than its types describe', () => {
  const [, version] = /^\^(\d+\.\d+\.\d+)$/.exec(manifest.engines.vscode) ?? [];
  expect(manifest.devDependencies['@types/vscode']).toBe(version);
});

it('works in a workspace that is not trusted', () => {
  expect(manifest.capabilities.untrustedWorkspaces.supported).toBe(true);
});
