import {
  type AstNodeDescription,
  DefaultScopeComputation,
  EMPTY_STREAM,
  type LangiumDocument,
  type LocalSymbols,
} from 'langium';
import type { SlatFile } from './generated/ast.ts';
import { nameKindOf } from './kinds.ts';

const NO_SYMBOLS: LocalSymbols = { has: () => false, getStream: () => EMPTY_STREAM };

/** Everything named at the top of a file is visible to the files that use it. */
export class SlatScopeComputation extends DefaultScopeComputation {
  override async collectExportedSymbols(document: LangiumDocument): Promise<AstNodeDescription[]> {
    const file = document.parseResult.value as SlatFile;
    const exported: AstNodeDescription[] = [];
    for (const element of file.elements ?? []) {
      if (nameKindOf(element.$type)) this.addExportedSymbol(element, exported, document);
    }
    return exported;
  }

  /** The scope provider asks the file's exports and the enclosing pattern; no other table is needed. */
  override async collectLocalSymbols(): Promise<LocalSymbols> {
    return NO_SYMBOLS;
  }
}
