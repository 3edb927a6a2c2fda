import type { ExtensionContext } from 'vscode';
import { activateFindingPages } from './features/finding-pages/index.ts';
import { activateLanguageClient } from './features/language-client/index.ts';
import { activatePreview } from './features/preview/index.ts';
import { createLog } from './infrastructure/index.ts';

/** Wires the features together. Waits for nothing: the server starts beside it. */
export function activate(context: ExtensionContext): void {
  const log = createLog();
  const pictures = activateLanguageClient(context, log);
  context.subscriptions.push(
    log,
    pictures,
    activateFindingPages(context),
    activatePreview(context, pictures, log),
  );
}
