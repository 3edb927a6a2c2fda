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

  /** Like Langium's, but what goes wrong in a build is told and never ends the server. */
  protected override fireDocumentUpdate(changed: URI[], deleted: URI[]): void {
    this.workspaceManager.ready
      .then(() => this.workspaceLock.write((token) => this.documentBuilder.update(changed, deleted, token)))
      .catch((error) => console.error('a change could not be followed:', error));
  }

  async didCloseDocument({ document }: TextDocumentChangeEvent<TextDocument>): Promise<void> {
    const uri = URI.parse(document.uri);
    this.connection?.sendDiagnostics({ uri: document.uri, diagnostics: [] });
    const saved = await this.files.exists(uri).catch(() => false);
    if (saved) this.fireDocumentUpdate([uri], []);
    else this.fireDocumentUpdate([], [uri]);
  }
}
