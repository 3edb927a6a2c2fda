import { ProgressLocation, type QuickPickItem, QuickPickItemKind, type TextDocument, window } from 'vscode';
import type { PileTold } from '../../../server/protocol.ts';
import { toldWhenItFails } from '../../infrastructure/index.ts';
import type { ReckoningSource } from '../language-client/index.ts';

/** Shows what the boards on hand still give of each run, by pattern, the one they give most of first. */
export async function showPile(document: TextDocument, source: ReckoningSource): Promise<void> {
  const told = await toldWhenItFails('what the pile gives', () =>
    window.withProgress(
      { location: ProgressLocation.Notification, title: 'What the pile still gives', cancellable: true },
      (_progress, token) => source.tellPile(document.uri.toString(), token),
    ),
  );
  if (!told) return;
  if (told.empty) {
    void window.showInformationMessage(
      'Nothing is stated to be on hand. Write `on hand { plank 6 of 5\' 10" }` with what lies in the yard.',
    );
    return;
  }
  await window.showQuickPick(itemsOf(told), {
    title: 'What the boards on hand still give, slats and trim only',
    placeHolder: 'By run, the pattern they give most of first',
    matchOnDetail: true,
  });
}

function itemsOf({ runs }: PileTold): QuickPickItem[] {
  return runs.flatMap(({ run, ways }): QuickPickItem[] => [
    { label: run, kind: QuickPickItemKind.Separator },
    ...ways.map(({ pattern, gives, missing }) => ({
      label: pattern,
      description: gives,
      detail: missing === '' ? 'nothing is missing' : `missing for all of it: ${missing}`,
    })),
    ...(ways.length === 0 ? [{ label: 'cannot be worked out', detail: 'Problems says what it lacks' }] : []),
  ]);
}
