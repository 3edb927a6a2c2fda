import type { LangiumDocument } from 'langium';
import { isRun, type Run, type SlatFile } from '../../language/grammar/index.ts';

/** Runs in the order of the text. */
export function runsIn(document: LangiumDocument): readonly Run[] {
  return (document.parseResult.value as SlatFile).elements.filter(isRun);
}

/** The run whose statement a place of the text stands in. */
export function runAt(document: LangiumDocument, offset: number): Run | undefined {
  return runsIn(document).find(({ $cstNode: cst }) => cst && cst.offset <= offset && offset <= cst.end);
}
