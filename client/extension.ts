import type { ExtensionContext } from 'vscode';
import { activateChoices } from './features/choices/index.ts';
import { activateFindingPages } from './features/finding-pages/index.ts';
import { activateLanguageClient } from './features/language-client/index.ts';
import { activateMaterials } from './features/materials/index.ts';
import { activatePreview } from './features/preview/index.ts';
import { activateTakeoff } from './features/takeoff/index.ts';
import { createLog, SourceReveal } from './infrastructure/index.ts';

/** Wires the features together. Waits for nothing: the server starts beside it. */
export function activate(context: ExtensionContext): void {
  const log = createLog();
  const server = activateLanguageClient(context, log);
  const reveal = new SourceReveal();
  context.subscriptions.push(
    log,
    server,
    reveal,
    activateFindingPages(context),
    activatePreview(context, server, reveal, log),
    activateMaterials(server, reveal),
    activateChoices(server),
    activateTakeoff(server),
  );
}
