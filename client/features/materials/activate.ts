import { commands, type Disposable, window, workspace } from 'vscode';
import { DisposableStore, type SourceReveal } from '../../infrastructure/index.ts';
import type { MaterialsSource } from '../language-client/index.ts';
import { MaterialTree } from './material-tree.ts';
import { WatchedDocument } from './watched-document.ts';

/** Id of the view, as in the manifest. */
const VIEW = 'slatwright.materials';

/** Registers the view, has it follow the active document while it is seen, and leads from its pieces to the text. */
export function activateMaterials(source: MaterialsSource, reveal: SourceReveal): Disposable {
  const store = new DisposableStore();
  const tree = store.add(new MaterialTree(source));
  const view = store.add(window.createTreeView(VIEW, { treeDataProvider: tree, showCollapseAll: true }));
  const watched = store.add(new WatchedDocument());

  const title = (stale: boolean): void => {
    const { name } = watched;
    // Alone in its container a view shows its title and not its description.
    view.title = `Materials${stale && name !== undefined ? ' …' : ''}`;
    view.description = name ?? '';
  };
  const show = (): void => {
    void commands.executeCommand('setContext', 'slatwright.materials.watched', watched.uri !== undefined);
    title(false);
    void tree.show(view.visible ? watched.uri : undefined).catch(() => undefined);
  };
  store.add(watched.onChanged(show));
  store.add(view.onDidChangeVisibility(show));
  store.add(source.onRestarted(show));
  store.add(tree.onStale(title));
  store.add(
    workspace.onDidChangeTextDocument(({ document, contentChanges }) => {
      if (contentChanges.length > 0 && document.uri.toString() === watched.uri) title(true);
    }),
  );
  store.add(
    commands.registerCommand('slatwright.showMaterials', () => commands.executeCommand(`${VIEW}.focus`)),
  );
  store.add(
    commands.registerCommand('slatwright.showPieceSource', async (uri?: unknown, piece?: unknown) => {
      if (typeof uri !== 'string' || typeof piece !== 'string') return;
      const place = await source.locate(uri, piece);
      if (place) await reveal.show(place, false);
    }),
  );
  show();
  return store;
}
