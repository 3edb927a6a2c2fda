import { type Disposable, type TextEditor, window, workspace } from 'vscode';
import { DisposableStore, type SourceReveal } from '../../infrastructure/index.ts';
import type { PictureSource } from '../language-client/index.ts';
import type { PanelManager } from './panel-manager.ts';

/** While typing, the cursor moves with every key: pieces are lit once it rests this long. */
const REST_MS = 80;

/** Lights in the picture what the statement under the cursor makes. One way: the picture never moves. */
export function lightPiecesAtCursor(
  panels: PanelManager,
  source: PictureSource,
  reveal: SourceReveal,
): Disposable {
  const store = new DisposableStore();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let asked = 0;

  const light = async (editor: TextEditor): Promise<void> => {
    const { document, selection } = editor;
    const uri = document.uri.toString();
    const panel = panels.of(uri);
    if (!panel?.panel.visible) return;
    const mine = ++asked;
    const { line, character } = selection.active;
    const pieces = await source.piecesAt(uri, line, character).catch(() => []);
    if (mine === asked) panel.light(pieces);
  };

  store.add(
    window.onDidChangeTextEditorSelection(({ textEditor }) => {
      if (textEditor.document.languageId !== 'slat') return;
      clearTimeout(timer);
      // A click in the picture put the cursor here: the piece clicked is lit already.
      if (reveal.isEcho(textEditor)) return;
      reveal.forget();
      if (!wanted(textEditor)) return;
      timer = setTimeout(() => void light(textEditor), REST_MS);
    }),
  );
  store.add({ dispose: () => clearTimeout(timer) });
  return store;
}

function wanted({ document }: TextEditor): boolean {
  return workspace
    .getConfiguration('slatwright', document.uri)
    .get<boolean>('preview.lightPiecesAtCursor', true);
}
