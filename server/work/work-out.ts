import type { LangiumDocument } from 'langium';
import type { SlatFile } from '../../language/grammar/index.ts';
import { type Layout, type LayoutMemo, layOutJob } from '../../language/layout/index.ts';
import { buildJob, type Job } from '../../language/model/index.ts';

/** A document worked out as far as it goes. */
export interface Work {
  readonly job: Job;
  readonly layout: Layout;
}

/** Text to job to layout, for a linked document. Runs that did not change come from the memo. */
export function workOut(document: LangiumDocument, memo: LayoutMemo): Work {
  const job = buildJob(document.parseResult.value as SlatFile, { uri: document.uri.toString() });
  return { job, layout: layOutJob(job, memo) };
}
