import { type FileSystemProvider, type TextDocument, URI } from 'langium';
import { DefaultDocumentUpdateHandler, type LangiumSharedServices } from 'langium/lsp';
import type { Connection, TextDocumentChangeEvent } from 'vscode-languageserver';

/**
 * What happens when a file is closed: its findings go, and the file on the disk counts again, so that
 * edits which were not saved leave no trace in the files that use it.
 */
export class OpenFileUpdates extends DefaultDocumentUpdateHandler {
  private readonly connection: Connection | undefined;
  private readonly files: FileSystemProvider;

  constructor(shared: LangiumSharedServices) {
    super(shared);
    this.connection = shared.lsp.Connection;
    this.files = shared.workspace.FileSystemProvider;
  }

  async didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): Promise<void> {
    const uri = URI.parse(document.uri);
    this.connection?.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    const saved = await this.files.exists(uri).catch(() => false);
    if (saved) this.fireDocumentUpdate([uri], []);
    else this.fireDocumentUpdate([], [uri]);
  }
}
