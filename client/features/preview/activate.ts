import { type Disposable, type ExtensionContext, type TextEditor, type Uri, window, workspace } from 'vscode';
import { DisposableStore, type Log, type SourceReveal } from '../../infrastructure/index.ts';
import { PREVIEW_VIEW_TYPE } from '../../preview-protocol.ts';
import type { PictureSource } from '../language-client/index.ts';
import { registerPreviewCommands } from './commands.ts';
import { lightPiecesAtCursor } from './cursor-light.ts';
import { PanelManager } from './panel-manager.ts';

/** Registers panels, their restoring, their commands, and the link from cursor to picture. */
export function activatePreview(
  context: ExtensionContext,
  source: PictureSource,
  reveal: SourceReveal,
  log: Log,
): Disposable {
  const store = new DisposableStore();
  const panels = store.add(new PanelManager(context.extensionUri, source, reveal, log));
  store.add(window.registerWebviewPanelSerializer(PREVIEW_VIEW_TYPE, panels));
  store.add(registerPreviewCommands(panels, reveal));
  store.add(lightPiecesAtCursor(panels, source, reveal));
  const opened = new Set<string>();
  const openOnce = (editor: TextEditor | undefined): void => {
    const uri = editor && wantsPreview(editor);
    if (!uri || opened.has(uri.toString())) return;
    opened.add(uri.toString());
    panels.open(uri);
  };
  store.add(window.onDidChangeActiveTextEditor(openOnce));
  // Closed by hand, a preview stays closed until its document is opened again.
  store.add(workspace.onDidCloseTextDocument(({ uri }) => opened.delete(uri.toString())));
  openOnce(window.activeTextEditor);
  return store;
}

function wantsPreview({ document, viewColumn }: TextEditor): Uri | undefined {
  if (document.languageId !== 'slat' || viewColumn === undefined) return undefined;
  const wanted = workspace
    .getConfiguration('slatwright', document.uri)
    .get<boolean>('preview.openAutomatically', false);
  return wanted ? document.uri : undefined;
}
