import { readdirSync, realpathSync, statSync } from 'node:fs';
import { extname, resolve } from 'node:path';
import type { LangiumDocument } from 'langium';
import { NodeFileSystem } from 'langium/node';
import { URI } from 'vscode-uri';
import { createSlatCoreServices, type SlatCoreServices } from '../../language/grammar/index.ts';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { type Work, workOut } from '../work/work-out.ts';
import { RealWorkspaceBounds } from '../workspace/real-bounds.ts';
import { CannotRun } from './usage.ts';

/** A file worked out, with the path it was asked for by. */
export interface OpenFile {
  readonly path: string;
  readonly document: LangiumDocument;
  readonly work: Work;
}

/** Reads, links and works out the files asked for. `use` may reach what lies in `folder` or beside a file asked for. */
export async function openFiles(
  paths: readonly string[],
  folder: string,
): Promise<{ services: SlatCoreServices; files: readonly OpenFile[] }> {
  const { shared, slat } = createSlatCoreServices(
    NodeFileSystem,
    {},
    {
      workspace: { WorkspaceBounds: (services) => new RealWorkspaceBounds(services) },
    },
  );
  const found = paths.flatMap((path) => slatFiles(path, folder));
  shared.workspace.WorkspaceBounds.setRoots([
    URI.file(realpathSync(folder)),
    ...found.map(({ absolute }) => URI.file(resolve(absolute, '..'))),
  ]);
  const documents = await Promise.all(
    found.map(({ absolute }) => shared.workspace.LangiumDocuments.getOrCreateDocument(URI.file(absolute))),
  );
  await shared.workspace.DocumentBuilder.build(documents, { validation: false });
  const files = documents.map((document, at) => ({
    path: found[at]?.path ?? document.uri.fsPath,
    document,
    work: workOut(shared, document, createLayoutMemo()),
  }));
  return { services: slat, files };
}

interface Found {
  readonly path: string;
  readonly absolute: string;
}

function slatFiles(path: string, folder: string): Found[] {
  const absolute = resolve(folder, path);
  try {
    if (!statSync(absolute).isDirectory()) return [one(path, absolute)];
    const names = readdirSync(absolute)
      .filter((name) => extname(name) === '.slat')
      .sort();
    if (names.length === 0) throw new CannotRun(`There is no .slat file in ${path}.`);
    return names.map((name) => one(`${path.replace(/\/+$/, '')}/${name}`, resolve(absolute, name)));
  } catch (error) {
    if (error instanceof CannotRun) throw error;
    throw new CannotRun(`${path} cannot be read: there is no such file, or it may not be opened.`);
  }
}

function one(path: string, absolute: string): Found {
  if (extname(absolute) !== '.slat') throw new CannotRun(`${path} is not a .slat file.`);
  return { path, absolute: realpathSync(absolute) };
}
