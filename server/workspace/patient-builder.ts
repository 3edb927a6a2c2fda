import type { Cancellation, DocumentState, URI } from 'langium';
import { SlatDocumentBuilder, type SlatSharedServices } from '../../language/grammar/index.ts';

/**
 * A builder that lets requests wait for a document which the editor has opened while something else
 * was being built: it is known as soon as its turn comes.
 */
export class PatientDocumentBuilder extends SlatDocumentBuilder {
  private readonly services: SlatSharedServices;

  constructor(shared: SlatSharedServices) {
    super(shared);
    this.services = shared;
  }

  protected override async awaitDocumentState(
    state: DocumentState,
    uri: URI,
    cancelToken: Cancellation.CancellationToken,
  ): Promise<URI> {
    const { LangiumDocuments, TextDocuments, WorkspaceLock } = this.services.workspace;
    // A read comes after all changes that were asked for before it.
    if (!LangiumDocuments.hasDocument(uri) && TextDocuments?.get(uri))
      await WorkspaceLock.read(() => undefined);
    return super.awaitDocumentState(state, uri, cancelToken);
  }
}
