import { commands, type Disposable, Uri, window } from 'vscode';
import { DisposableStore, type SourceReveal } from '../../infrastructure/index.ts';
import type { Shown } from '../../preview-protocol.ts';
import type { PanelManager } from './panel-manager.ts';

/** Commands that open a picture, show other views of it, fit it, or lead from it to its text. */
export function registerPreviewCommands(panels: PanelManager, reveal: SourceReveal): Disposable {
  const store = new DisposableStore();
  store.add(
    commands.registerCommand('slatwright.openPreview', (asked?: unknown) => {
      const uri = asked instanceof Uri ? asked : activeSlat();
      if (uri) panels.open(uri);
      else void window.showInformationMessage('Open a .slat file first: the picture is drawn from it.');
    }),
  );
  store.add(
    commands.registerCommand('slatwright.fitPicture', () => {
      const uri = activeSlat();
      const panel = panels.active ?? (uri && panels.of(uri.toString()));
      panel?.fit();
    }),
  );
  const show = (shown: Shown) => () => {
    const uri = panels.active?.uri ?? activeSlat();
    if (!uri) return;
    panels.open(uri);
    panels.of(uri.toString())?.showViews(shown);
  };
  store.add(commands.registerCommand('slatwright.showFront', show('front')));
  store.add(commands.registerCommand('slatwright.showBack', show('back')));
  store.add(commands.registerCommand('slatwright.showPlan', show('plan')));
  store.add(commands.registerCommand('slatwright.showSection', show('section')));
  store.add(commands.registerCommand('slatwright.showViewersView', show('eye')));
  store.add(commands.registerCommand('slatwright.showAllViews', show('all')));
  store.add(
    commands.registerCommand('slatwright.showSource', async () => {
      const uri = panels.active?.uri;
      if (uri) await reveal.showDocument(uri);
    }),
  );
  return store;
}

function activeSlat(): Uri | undefined {
  const document = window.activeTextEditor?.document;
  return document?.languageId === 'slat' ? document.uri : undefined;
}
