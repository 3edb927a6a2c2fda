import { EmptyFileSystem, type LangiumDocument, TextDocument, URI } from 'langium';
import type { Position } from 'vscode-languageserver-types';
import { lentParser } from '../../tests/lent-parser.ts';
import { createSlatServices, type SlatServerSharedServices, type SlatServices } from '../services.ts';

/** Documents that are open in an editor, the first of them with a cursor. */
export interface Opened {
  readonly shared: SlatServerSharedServices;
  readonly slat: SlatServices;
  readonly document: LangiumDocument;
  /** Where `<|>` stood in the first text; its start when there was none. */
  readonly position: Position;
  readonly params: { readonly textDocument: { readonly uri: string }; readonly position: Position };
  documentOf(name: string): LangiumDocument;
  /** Puts another text in place of an open one, as by typing, and builds what it concerns. */
  change(name: string, text: string): Promise<void>;
}

/**
 * Opens texts by name in a folder of their own, linked and checked. A `<|>` in the first is the cursor. `host`
 * replaces shared services.
 */
export async function openTexts(
  texts: Readonly<Record<string, string>>,
  host?: Parameters<typeof createSlatServices>[1],
): Promise<Opened> {
  const { shared, slat } = createSlatServices(EmptyFileSystem, host, lentParser);
  await shared.workspace.WorkspaceManager.initializeWorkspace([]);
  const uriOf = (name: string) => URI.parse(`file:///work/${name}`);
  const names = Object.keys(texts);
  const [first = ''] = names;
  const cursor = Math.max(0, (texts[first] ?? '').indexOf('<|>'));
  for (const name of names) {
    const text = (texts[name] ?? '').replace('<|>', '');
    // Registers the text as one that is open in the editor.
    shared.workspace.TextDocuments.set(TextDocument.create(uriOf(name).toString(), 'slat', 1, text));
  }
  await shared.workspace.DocumentBuilder.update(names.map(uriOf), []);
  const documentOf = (name: string) => {
    const document = shared.workspace.LangiumDocuments.getDocument(uriOf(name));
    if (!document) throw new Error(`${name} is not open`);
    return document;
  };
  const document = documentOf(first);
  const position = document.textDocument.positionAt(cursor);
  const params = { textDocument: { uri: document.uri.toString() }, position };
  const change = async (name: string, text: string): Promise<void> => {
    const uri = uriOf(name).toString();
    const version = (shared.workspace.TextDocuments.get(uri)?.version ?? 0) + 1;
    shared.workspace.TextDocuments.set(TextDocument.create(uri, 'slat', version, text));
    await shared.workspace.DocumentBuilder.update([uriOf(name)], []);
  };
  return { shared, slat, document, position, params, documentOf, change };
}
