import { type LangiumDocument, URI } from 'langium';
import type { SlatFile, SlatSharedServices } from '../../language/grammar/index.ts';
import { type Layout, type LayoutMemo, layOutJob } from '../../language/layout/index.ts';
import { buildJob, type Job } from '../../language/model/index.ts';

/** A document worked out as far as it goes. */
export interface Work {
  readonly job: Job;
  readonly layout: Layout;
}

/** Text to job to layout, for a linked document. Runs that did not change come from the memo. */
export function workOut(shared: SlatSharedServices, document: LangiumDocument, memo: LayoutMemo): Work {
  const job = buildJob(rootOf(document), { uri: document.uri.toString(), used: usedRoots(shared, document) });
  return { job, layout: layOutJob(job, memo) };
}

/** Everything the document sees through `use`, itself left out, nearest first. */
function usedRoots(shared: SlatSharedServices, document: LangiumDocument): SlatFile[] {
  const { UseGraph, LangiumDocuments } = shared.workspace;
  const own = document.uri.toString();
  return [...UseGraph.closure(own).files]
    .filter((uri) => uri !== own)
    .flatMap((uri) => LangiumDocuments.getDocument(URI.parse(uri)) ?? [])
    .map(rootOf);
}

const rootOf = (document: LangiumDocument): SlatFile => document.parseResult.value as SlatFile;
