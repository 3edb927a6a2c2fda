import { type TextDocument, window } from 'vscode';
import type { ReckoningSource } from '../language-client/index.ts';

/** The run at the cursor; elsewhere the only one, or the one chosen from all. */
export async function chooseRun(
  document: TextDocument,
  source: ReckoningSource,
): Promise<string | undefined> {
  const editor = window.visibleTextEditors.find((one) => one.document === document);
  const { line, character } = editor?.selection.active ?? { line: 0, character: 0 };
  const { runs, here } = await source.runsAt(document.uri.toString(), line, character);
  if (here !== undefined) return here;
  if (runs.length > 1)
    return window.showQuickPick([...runs], { title: 'Better choices', placeHolder: 'For which run?' });
  if (runs.length === 0) void window.showInformationMessage('This file has no run yet.');
  return runs[0];
}
