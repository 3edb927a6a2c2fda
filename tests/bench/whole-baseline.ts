import { DocumentState, EmptyFileSystem, URI } from 'langium';
import { diffViews, viewsOf } from '../../language/drawing/index.ts';
import { createSlatCoreServices } from '../../language/grammar/index.ts';
import { createLayoutMemo } from '../../language/layout/index.ts';
import { workOut } from '../../server/work/work-out.ts';

/**
 * Times of the plain way, for comparison: at each key the whole text is parsed and linked anew, every
 * run laid out, every view drawn and the whole picture written as JSON. No connection, nothing remembered.
 */
export async function wholeTimes(texts: readonly string[]): Promise<number[]> {
  const { shared } = createSlatCoreServices(EmptyFileSystem);
  const { LangiumDocuments, LangiumDocumentFactory, DocumentBuilder } = shared.workspace;
  const uri = URI.parse('memory:/job.slat');
  const times: number[] = [];
  for (const text of texts) {
    const began = performance.now();
    if (LangiumDocuments.hasDocument(uri)) LangiumDocuments.deleteDocument(uri);
    const document = LangiumDocumentFactory.fromString(text, uri);
    LangiumDocuments.addDocument(document);
    await DocumentBuilder.build([document], { validation: false });
    if (document.state < DocumentState.Linked) throw new Error('the text was not linked');
    const { job, layout } = workOut(shared, document, createLayoutMemo());
    const views = viewsOf(layout.runs, job.measure.value, ['front']);
    JSON.stringify(diffViews([], views, 0, 1));
    times.push(performance.now() - began);
  }
  return times;
}
