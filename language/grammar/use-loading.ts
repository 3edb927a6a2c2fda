import { type Cancellation, type LangiumDocument, URI } from 'langium';
import type { SlatSharedServices } from './services.ts';
import { MOST_FILES, type UseProblem } from './use-graph.ts';

/**
 * Loads what freshly parsed documents use, and what those use in turn. A file that cannot be had is
 * remembered in the graph and told by `UseGraph.results`; nothing is thrown.
 *
 * @returns documents that were not there before, parsed
 */
export async function loadUsedFiles(
  shared: SlatSharedServices,
  parsed: readonly LangiumDocument[],
  cancelToken?: Cancellation.CancellationToken,
): Promise<LangiumDocument[]> {
  const { UseGraph: graph, LangiumDocuments: documents } = shared.workspace;
  for (const document of parsed) graph.update(document);
  const added: LangiumDocument[] = [];
  for (const document of parsed) {
    const tried = new Set<string>();
    // The closure grows as files are read; it is bounded, so this ends.
    for (let more = true; more; ) {
      more = false;
      for (const address of graph.closure(document.uri.toString()).files) {
        const uri = URI.parse(address);
        if (tried.has(address) || documents.hasDocument(uri)) continue;
        if (tried.size >= MOST_FILES) break;
        tried.add(address);
        const loaded = await load(shared, uri, cancelToken);
        graph.fail(address, typeof loaded === 'string' ? loaded : undefined);
        if (typeof loaded === 'string') continue;
        graph.update(loaded);
        added.push(loaded);
        more = true;
      }
    }
  }
  return added;
}

async function load(
  shared: SlatSharedServices,
  uri: URI,
  cancelToken?: Cancellation.CancellationToken,
): Promise<LangiumDocument | UseProblem> {
  const { FileSystemProvider: files, LangiumDocuments: documents } = shared.workspace;
  try {
    const node = await files.stat(uri);
    if (node.isDirectory) return 'directory';
  } catch {
    return 'missing';
  }
  try {
    return await documents.getOrCreateDocument(uri, cancelToken);
  } catch {
    return 'unreadable';
  }
}
