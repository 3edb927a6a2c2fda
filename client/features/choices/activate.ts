import { commands, type Disposable } from 'vscode';
import { askedDocument, DisposableStore } from '../../infrastructure/index.ts';
import type { ReckoningSource } from '../language-client/index.ts';
import { chooseBetter } from './choose-better.ts';
import { chooseRun } from './choose-run.ts';
import { showPile } from './show-pile.ts';

/** Registers the commands. From a lens they get the document's address and the run; from the palette, the cursor's. */
export function activateChoices(source: ReckoningSource): Disposable {
  const store = new DisposableStore();
  store.add(
    commands.registerCommand('slatwright.findBetter', async (asked?: unknown, named?: unknown) => {
      const document = await askedDocument(asked);
      if (!document) return;
      const run = typeof named === 'string' ? named : await chooseRun(document, source);
      if (run !== undefined) await chooseBetter(document, run, source);
    }),
  );
  store.add(
    commands.registerCommand('slatwright.showPile', async (asked?: unknown) => {
      const document = await askedDocument(asked);
      if (document) await showPile(document, source);
    }),
  );
  return store;
}
