import {
  type BuildOptions,
  type Cancellation,
  DefaultDocumentBuilder,
  DefaultIndexManager,
  DocumentState,
  type LangiumDocument,
  type URI,
} from 'langium';
import type { SlatSharedServices } from './services.ts';
import type { UseGraph } from './use-graph.ts';
import { loadUsedFiles } from './use-loading.ts';

/** An index in which a change concerns the files that see the changed one through `use`, and no others. */
export class SlatIndexManager extends DefaultIndexManager {
  private readonly graph: UseGraph;
  private readonly concerned = new WeakMap<Set<string>, ReadonlySet<string>>();

  constructor(shared: SlatSharedServices) {
    super(shared);
    this.graph = shared.workspace.UseGraph;
  }

  override async updateContent(
    document: LangiumDocument,
    cancelToken?: Cancellation.CancellationToken,
  ): Promise<void> {
    this.graph.update(document);
    await super.updateContent(document, cancelToken);
  }

  override remove(uri: URI): void {
    super.remove(uri);
    this.graph.remove(uri.toString());
  }

  override isAffected(document: LangiumDocument, changedUris: Set<string>): boolean {
    let concerned = this.concerned.get(changedUris);
    if (!concerned) {
      concerned = this.graph.dependents(changedUris);
      this.concerned.set(changedUris, concerned);
    }
    return concerned.has(document.uri.toString());
  }
}

/** A builder that loads what files use, and relinks only what a change concerns. */
export class SlatDocumentBuilder extends DefaultDocumentBuilder {
  private readonly shared: SlatSharedServices;
  private readonly growing = new WeakMap<LangiumDocument[], BuildOptions>();

  constructor(shared: SlatSharedServices) {
    super(shared);
    this.shared = shared;
  }

  /**
   * Langium relinks every file with an unknown name at every change, since the name might exist by
   * now. Here a name can only come from the files seen through `use`, so those alone are asked.
   */
  protected override shouldRelink(document: LangiumDocument, changedUris: Set<string>): boolean {
    return this.indexManager.isAffected(document, changedUris);
  }

  protected override async buildDocuments(
    documents: LangiumDocument[],
    options: BuildOptions,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<void> {
    const all = [...documents];
    this.growing.set(all, options);
    await super.buildDocuments(all, options, cancelToken);
  }

  protected override async runCancelable(
    documents: LangiumDocument[],
    targetState: DocumentState,
    cancelToken: Cancellation.CancellationToken,
    callback: (document: LangiumDocument) => unknown,
  ): Promise<void> {
    await super.runCancelable(documents, targetState, cancelToken, callback);
    const options = this.growing.get(documents);
    if (targetState !== DocumentState.Parsed || !options) return;
    const parsed = documents.filter((document) => document.state === DocumentState.Parsed);
    const added = await loadUsedFiles(this.shared, parsed, cancelToken);
    this.prepareBuild(added, options);
    documents.push(...added);
  }
}
