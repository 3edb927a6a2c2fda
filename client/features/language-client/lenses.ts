import { type Disposable, type TextDocument, workspace } from 'vscode';
import type { LanguageClient } from 'vscode-languageclient/node';

/** Whether lenses are wanted over a document. */
export function wantsLenses(document: TextDocument): boolean {
  return workspace.getConfiguration('slatwright', document.uri).get<boolean>('lenses', true);
}

/** Has lenses asked for anew when someone turns them on or off. */
export function followLensSetting(client: LanguageClient): Disposable {
  return workspace.onDidChangeConfiguration((change) => {
    if (!change.affectsConfiguration('slatwright.lenses')) return;
    for (const document of workspace.textDocuments.filter(({ languageId }) => languageId === 'slat'))
      client.getFeature('textDocument/codeLens').getProvider(document)?.onDidChangeCodeLensEmitter.fire();
  });
}
