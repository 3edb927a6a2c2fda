import { DefaultWorkspaceManager, type LangiumDocument, type Stream, type URI } from 'langium';

/** Reads the files of the workspace; one that cannot be read does not keep the others from being read. */
export class ForgivingWorkspaceManager extends DefaultWorkspaceManager {
  protected override async loadWorkspaceDocuments(
    uris: Stream<URI>,
    collector: (document: LangiumDocument) => void,
  ): Promise<void> {
    await Promise.all(
      uris.map(async (uri) => {
        try {
          collector(await this.langiumDocuments.getOrCreateDocument(uri));
        } catch (error) {
          console.error(`${uri.toString(true)} cannot be read:`, error);
        }
      }),
    );
  }
}
