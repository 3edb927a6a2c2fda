import type { DeepPartial, FileSystemProvider, Module } from 'langium';
import { startLanguageServer } from 'langium/lsp';
import type { Connection } from 'vscode-languageserver';
import { answerReckoningRequests } from './reckoning/index.ts';
import {
  createSlatServices,
  REQUIREMENTS,
  type SlatServerSharedServices,
  type SlatServices,
} from './services.ts';
import { warmUp } from './warm-up.ts';
import { answerPictureRequests } from './work/index.ts';
import { askAllFiles } from './workspace/index.ts';

/** What differs between the places a server runs in. */
export interface Host {
  readonly connection: Connection;
  readonly fileSystemProvider: () => FileSystemProvider;
  /** Shared services that depend on the host. */
  readonly module?: Module<SlatServerSharedServices, DeepPartial<SlatServerSharedServices>>;
}

/** Starts the language server; an entry brings the connection and the files, and nothing else. */
export function start({ connection, fileSystemProvider, module }: Host): {
  shared: SlatServerSharedServices;
  slat: SlatServices;
} {
  const asked = askAllFiles(connection, () => shared.workspace.WorkspaceManager.complete);
  const services = createSlatServices({ connection: asked, fileSystemProvider }, module);
  const { shared } = services;
  answerPictureRequests(connection, shared);
  answerReckoningRequests(connection, shared);
  shared.lsp.LanguageServer.onInitialized(() => void warmUp(services.slat));
  startLanguageServer(shared, REQUIREMENTS);
  return services;
}
