import { commands, type Disposable, type ExtensionContext, languages, Uri, window, workspace } from 'vscode';
import { FINDING_SCHEME } from '../../../server/protocol.ts';
import { DisposableStore } from '../../infrastructure/index.ts';
import { codeOf, isFindingCode } from './finding-code.ts';

/** Serves `slatwright-finding:/<code>.md` and the command that shows a page as it reads. */
export function activateFindingPages(context: ExtensionContext): Disposable {
  const store = new DisposableStore();
  const folder = Uri.joinPath(context.extensionUri, 'dist', 'findings');
  store.add(
    workspace.registerTextDocumentContentProvider(FINDING_SCHEME, {
      provideTextDocumentContent: async ({ path }) => {
        const code = codeOf(path);
        return code === undefined ? unknownPage(path) : readPage(folder, code);
      },
    }),
  );
  store.add(
    commands.registerCommand('slatwright.showFindingPage', async (asked?: unknown) => {
      const code = isFindingCode(asked) ? asked : await chooseCode(folder);
      if (code !== undefined) await showPage(Uri.from({ scheme: FINDING_SCHEME, path: `/${code}.md` }));
    }),
  );
  return store;
}

async function readPage(folder: Uri, code: string): Promise<string> {
  try {
    return new TextDecoder().decode(await workspace.fs.readFile(Uri.joinPath(folder, `${code}.md`)));
  } catch {
    return unknownPage(code);
  }
}

function unknownPage(name: string): string {
  return `# No page\n\nThere is no page named \`${name.replaceAll('`', '')}\` in this version.\n`;
}

/** The finding at the cursor, if there is one, else one picked from all there are. */
async function chooseCode(folder: Uri): Promise<string | undefined> {
  const pages = await workspace.fs.readDirectory(folder);
  const codes = pages.map(([name]) => codeOf(name)).filter(isFindingCode);
  const here = codesAtCursor();
  const items = codes
    .map((code) => ({ label: code, description: here.has(code) ? 'at the cursor' : '' }))
    .sort((a, b) => b.description.length - a.description.length || a.label.localeCompare(b.label));
  const chosen = await window.showQuickPick(items, { placeHolder: 'Which finding?' });
  return chosen?.label;
}

function codesAtCursor(): ReadonlySet<string> {
  const editor = window.activeTextEditor;
  if (!editor) return new Set();
  const line = editor.selection.active.line;
  const found = languages
    .getDiagnostics(editor.document.uri)
    .filter(({ range }) => range.start.line <= line && line <= range.end.line)
    .map(({ code }) => (typeof code === 'object' ? String(code.value) : String(code)));
  return new Set(found);
}

/** As it reads where the editor can show Markdown so, else as text. */
async function showPage(page: Uri): Promise<void> {
  try {
    await commands.executeCommand('markdown.showPreview', page);
  } catch {
    await window.showTextDocument(page, { preview: true });
  }
}
