import { type LangiumDocument, URI } from 'langium';
import type { SlatFile, SlatSharedServices } from '../../language/grammar/index.ts';
import { type Layout, type LayoutMemo, layOutJob } from '../../language/layout/index.ts';
import { buildJob, type Job, type JobContext } from '../../language/model/index.ts';

/** A document worked out as far as it goes. */
export interface Work {
  readonly job: Job;
  readonly layout: Layout;
}

/** Text to job to layout, for a linked document. Runs that did not change come from the memo. */
export function workOut(shared: SlatSharedServices, document: LangiumDocument, memo: LayoutMemo): Work {
  const job = readJob(shared, document);
  return { job, layout: layOutJob(job, memo) };
}

/** The same as it would be with an option; without a name, as it stands. */
export function workOutOption(
  shared: SlatSharedServices,
  document: LangiumDocument,
  option: string | undefined,
  memo: LayoutMemo,
): Work {
  const context = { ...jobContext(shared, document), ...(option === undefined ? {} : { option }) };
  const job = buildJob(rootOf(document), context);
  return { job, layout: layOutJob(job, memo) };
}

/** What a linked document states, without working it out. */
export function readJob(shared: SlatSharedServices, document: LangiumDocument): Job {
  return buildJob(rootOf(document), jobContext(shared, document));
}

/** What a document is read in: its address, and the files it sees. */
export function jobContext(shared: SlatSharedServices, document: LangiumDocument): JobContext {
  return { uri: document.uri.toString(), used: usedRoots(shared, document) };
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
