import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');

/**
 * Who may import whom. Every folder may import itself. A test file may import anything: it stands
 * beside its subject but belongs to the tests.
 */
const MAY_IMPORT: Readonly<Record<string, readonly string[]>> = {
  'language/units': [],
  'language/grammar': ['language/units', 'langium', 'vscode-uri'],
  'language/model': ['language/grammar', 'language/standards', 'language/units'],
  'language/layout': ['language/model', 'language/units', 'language/grammar types'],
  'language/standards': ['language/units'],
  'language/figures': ['language/layout', 'language/model', 'language/standards', 'language/units'],
  'language/checks': [
    'language/figures',
    'language/takeoff',
    'language/layout',
    'language/model',
    'language/grammar types',
    'language/standards',
    'language/units',
  ],
  'language/takeoff': [
    'language/figures',
    'language/layout',
    'language/model',
    'language/standards',
    'language/units',
  ],
  'language/drawing': ['language/figures', 'language/layout', 'language/model', 'language/units'],
  server: [
    'language/*',
    'langium',
    'langium/lsp',
    'langium/node',
    'vscode-languageserver',
    'vscode-languageserver-types',
    'vscode-uri',
    'node:*',
  ],
  client: ['server/protocol', 'language/drawing types', 'vscode', 'vscode-languageclient', 'node:*'],
  'client/webview': ['language/drawing', 'server/protocol types', 'client', '@svgdotjs/svg.js'],
};

/** What host and webview say to each other; both may read it. */
const WEBVIEW_SHARED = ['client/preview-protocol.ts'];

interface Import {
  readonly file: string;
  readonly target: string;
  readonly typeOnly: boolean;
}

it('imports only in the directions the design gives', () => {
  expect(
    allImports()
      .filter((found) => !isAllowed(found))
      .map(describe),
  ).toEqual([]);
});

it('reaches other folders of the language through their index alone', () => {
  const deep = allImports().filter(({ file, target }) => {
    const from = folderOf(file);
    const to = folderOf(target);
    return to.startsWith('language/') && to !== from && !target.endsWith('/index.ts');
  });
  expect(deep.map(describe)).toEqual([]);
});

it('keeps the language free of Node and of the language server', () => {
  const wrong = allImports().filter(
    ({ file, target }) =>
      file.startsWith('language/') &&
      /^(node:|langium\/lsp|langium\/node|vscode-languageserver)/.test(target),
  );
  expect(wrong.map(describe)).toEqual([]);
});

it('looks at every folder there is', () => {
  const folders = new Set(sources().map(folderOf));
  for (const folder of folders) expect(Object.keys(MAY_IMPORT), folder).toContain(folder);
  expect(sources().length).toBeGreaterThan(100);
});

function isAllowed({ file, target, typeOnly }: Import): boolean {
  const from = folderOf(file);
  const to = isOwn(target) ? folderOf(target) : target;
  if (to === from || WEBVIEW_SHARED.includes(target)) return true;
  return (MAY_IMPORT[from] ?? []).some((rule) => {
    const [name = '', types] = rule.split(' ');
    if (types && !typeOnly) return false;
    if (name.endsWith('*')) return to.startsWith(name.slice(0, -1));
    return to === name || target === `${name}.ts` || (!isOwn(target) && target.startsWith(`${name}/`));
  });
}

function allImports(): Import[] {
  return sources().flatMap((file) => {
    const text = readFileSync(join(root, file), 'utf8');
    const found = text.matchAll(/^(import|export)\s+(type\s+)?([^;'"]*?from\s+)?['"]([^'"]+)['"]/gms);
    return [...found].map(([, , type, what = '', target = '']) => ({
      file,
      target: target.startsWith('.') ? own(file, target) : target,
      typeOnly: type !== undefined || everyNameIsType(what),
    }));
  });
}

/** `{ type A, type B } from` brings in nothing at run time. */
function everyNameIsType(what: string): boolean {
  const names =
    /\{([^}]*)\}/
      .exec(what)?.[1]
      ?.split(',')
      .map((name) => name.trim())
      .filter(Boolean) ?? [];
  return names.length > 0 && names.every((name) => name.startsWith('type '));
}

function own(file: string, target: string): string {
  return relative(root, resolve(root, dirname(file), target))
    .split(sep)
    .join('/');
}

const isOwn = (target: string): boolean => /^(language|server|client|tests|package\.json)/.test(target);

/** The folder of a file as the table names it: parts of the language, the webview, the client, the server. */
function folderOf(file: string): string {
  const [top = '', second = ''] = file.split('/');
  if (top === 'language') return `language/${second}`;
  if (top === 'client' && second === 'webview') return 'client/webview';
  return top;
}

function sources(): string[] {
  return ['language', 'server', 'client'].flatMap((top) =>
    readdirSync(join(root, top), { recursive: true, encoding: 'utf8' })
      .map((name) => `${top}/${name.split(sep).join('/')}`)
      .filter(
        (name) =>
          name.endsWith('.ts') &&
          !/\.test\.ts$|\.d\.ts$|\/generated\/|\/testing\/|node_modules|stand-in/.test(name),
      ),
  );
}

const describe = ({ file, target }: Import): string => `${file} imports ${target}`;
