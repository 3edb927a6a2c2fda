import { type LangiumDocument, URI } from 'langium';
import type { View } from '../../language/drawing/index.ts';
import { viewsOf } from '../../language/drawing/index.ts';
import type { SlatCoreServices, TextRange } from '../../language/grammar/index.ts';
import {
  createLayoutMemo,
  type Layout,
  type LayoutMemo,
  type RunLayout,
} from '../../language/layout/index.ts';
import type { Job } from '../../language/model/index.ts';
import { type PlacedFinding, placeFindings } from '../../server/work/place-findings.ts';
import { workOut } from '../../server/work/work-out.ts';
import { createTestServices } from '../memory-files.ts';

/** A file worked out. */
export interface OpenJob {
  readonly services: SlatCoreServices;
  readonly document: LangiumDocument;
  readonly job: Job;
  readonly layout: Layout;
  readonly findings: readonly PlacedFinding[];
  views(): View[];
  /** The only run, or the one of that name. */
  run(name?: string): RunLayout;
}

/** Files that stay open: texts may be changed, and opening one again works it out anew. */
export function openJobs(files: Readonly<Record<string, string>>) {
  const { shared, slat, files: memory } = createTestServices(files);
  return {
    services: slat,
    /** Works a file out, with a new text when there is one. */
    async open(path: string, text?: string, memo: LayoutMemo = createLayoutMemo()): Promise<OpenJob> {
      const uri = URI.file(path);
      const { LangiumDocuments, DocumentBuilder } = shared.workspace;
      if (text !== undefined && memory.contents.get(path) !== text) {
        memory.contents.set(path, text);
        if (LangiumDocuments.hasDocument(uri)) LangiumDocuments.deleteDocument(uri);
      }
      const document = await LangiumDocuments.getOrCreateDocument(uri);
      await DocumentBuilder.build([document], { validation: false });
      return opened(slat, document, memo);
    },
  };
}

/** Works one text out, with the files it uses. */
export function openJob(text: string, files: Readonly<Record<string, string>> = {}): Promise<OpenJob> {
  const path = '/examples/job.slat';
  return openJobs({ ...files, [path]: text }).open(path);
}

function opened(services: SlatCoreServices, document: LangiumDocument, memo: LayoutMemo): OpenJob {
  const work = workOut(services.shared, document, memo);
  return {
    services,
    document,
    ...work,
    findings: placeFindings(services, document, work),
    views: () => viewsOf(work.layout.runs, work.job.measure.value, undefined, work.job),
    run: (name) => {
      const runs = work.layout.runs.filter((run) => name === undefined || run.spec.name === name);
      const [run] = runs;
      if (!run || runs.length > 1) throw new Error(`${runs.length} runs ${name ?? ''} could be worked out`);
      return run;
    },
  };
}

/** What a range of a document underlines. */
export function textOfFinding(document: LangiumDocument, range: TextRange): string {
  return document.textDocument.getText(range);
}
