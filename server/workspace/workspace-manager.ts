import {
  type Cancellation,
  DefaultWorkspaceManager,
  type LangiumDocument,
  type Stream,
  type TextDocumentProvider,
  type URI,
} from 'langium';
import type { LangiumSharedServices } from 'langium/lsp';
import type { WorkspaceFolder } from 'vscode-languageserver-types';

/** Files read at a time; a keystroke waits for no more than that. */
const BATCH = 2;

/**
 * Reads the files of the workspace: those that are open at once, the others little by little, so that
 * the first picture does not wait for them. What an open file uses is read along with it. A file that
 * cannot be read does not keep the others from being read.
 */
export class GradualWorkspaceManager extends DefaultWorkspaceManager {
  /** Settled when every file has been read. */
  readonly complete: Promise<void>;
  private settle: () => void = () => undefined;
  private readonly open: TextDocumentProvider | undefined;
  private later: URI[] = [];

  constructor(shared: LangiumSharedServices) {
    super(shared);
    this.open = shared.workspace.TextDocuments;
    this.complete = new Promise((resolve) => {
      this.settle = resolve;
    });
  }

  override async initializeWorkspace(
    folders: WorkspaceFolder[],
    cancelToken?: Cancellation.CancellationToken,
  ): Promise<void> {
    try {
      await super.initializeWorkspace(folders, cancelToken);
    } finally {
      // Not awaited: it takes the lock again and again, which whoever called this still holds.
      void this.readLater().finally(this.settle);
    }
  }

  protected override async loadWorkspaceDocuments(
    uris: Stream<URI>,
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    for (const uri of uris) {
      const document = this.open?.get(uri) ? await this.load(uri) : undefined;
      if (document) collector(document);
      else this.later.push(uri);
    }
  }

  private async readLater(): Promise<void> {
    while (this.later.length > 0) {
      // What the client asks for comes first.
      await new Promise((resume) => setTimeout(resume));
      await this.mutex.read(() => undefined);
      const batch = this.later.splice(0, BATCH);
      try {
        await this.mutex.write(async (token) => {
          // Here and not before, for a build that goes on may be loading one of them itself.
          for (const uri of batch) if (!this.langiumDocuments.hasDocument(uri)) await this.load(uri);
          // Builds whatever is not built yet: these files, and a change that this has cut short.
          await this.documentBuilder.update([], [], token);
        });
      } catch (error) {
        console.error('files cannot be read:', error);
      }
    }
  }

  private async load(uri: URI): Promise<LangiumDocument | undefined> {
    try {
      return await this.langiumDocuments.getOrCreateDocument(uri);
    } catch (error) {
      console.error(`${uri.toString(true)} cannot be read:`, error);
      return undefined;
    }
  }
}
