import { type Diagnostic, Uri } from 'vscode';
import { FINDING_SCHEME } from '../../../server/protocol.ts';

/**
 * Points the links of diagnostics at the command that shows a finding's page as it reads. The address
 * the server gives would open the page as plain text, and an outside address would need a network.
 */
export function linkFindingPages(diagnostics: Diagnostic[]): Diagnostic[] {
  for (const diagnostic of diagnostics) {
    const { code } = diagnostic;
    if (typeof code !== 'object' || code.target.scheme !== FINDING_SCHEME) continue;
    diagnostic.code = { value: code.value, target: showPageAddress(code.target) };
  }
  return diagnostics;
}

function showPageAddress(page: Uri): Uri {
  const code = page.path.replace(/^\//, '').replace(/\.md$/, '');
  return Uri.from({
    scheme: 'command',
    path: 'slatwright.showFindingPage',
    query: JSON.stringify([code]),
  });
}
