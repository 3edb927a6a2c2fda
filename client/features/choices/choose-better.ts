import { ProgressLocation, type QuickPickItem, QuickPickItemKind, type TextDocument, window } from 'vscode';
import type { BetterFound } from '../../../server/protocol.ts';
import { toldWhenItFails } from '../../infrastructure/index.ts';
import type { ReckoningSource } from '../language-client/index.ts';
import { insertChoice } from './insert-choice.ts';

type Choice = BetterFound['choices'][number];

/** Searches, beside typing and to be canceled; shows what nothing else beats; puts the one chosen into the text. */
export async function chooseBetter(
  document: TextDocument,
  run: string,
  source: ReckoningSource,
): Promise<void> {
  const { found, canceled } = await search(document, run, source);
  if (canceled) return;
  if (!found) {
    void window.showInformationMessage(
      `Run ${run} cannot be worked out as it stands, or has no pattern to choose for; Problems says what it lacks.`,
    );
    return;
  }
  if (found.choices.length === 0) {
    void window.showInformationMessage(
      `${found.verdict} ${found.tried} ways for ${run} were laid out, ${found.kept} kept the limits.`,
    );
    return;
  }
  const chosen = await window.showQuickPick(itemsOf(found), {
    title: `Better choices for ${run}: ${found.tried} ways were laid out, ${found.kept} kept the limits${found.done ? '' : '; there are more'}`,
    placeHolder: found.verdict,
    matchOnDescription: true,
    matchOnDetail: true,
  });
  if (chosen?.choice) await insertChoice(document, found, chosen.choice);
}

async function search(document: TextDocument, run: string, source: ReckoningSource) {
  let canceled = false;
  const found = await toldWhenItFails(`choices for ${run}`, () =>
    window.withProgress(
      { location: ProgressLocation.Notification, title: `Better choices for ${run}`, cancellable: true },
      async (progress, token) => {
        token.onCancellationRequested(() => {
          canceled = true;
        });
        const told = ({ tried, kept }: { tried: number; kept: number }) =>
          progress.report({ message: `${tried} ways laid out, ${kept} keep the limits` });
        return source.findBetter(document.uri.toString(), run, told, token);
      },
    ),
  );
  return { found, canceled };
}

type Item = QuickPickItem & { readonly choice?: Choice };

function itemsOf({ now, choices }: BetterFound): Item[] {
  return [
    ...choices.map((choice) => ({
      label: choice.title,
      description: choice.cost,
      detail: choice.figures,
      choice,
    })),
    { label: 'As it stands', kind: QuickPickItemKind.Separator },
    { label: 'Leave it as it is', detail: now },
  ];
}
