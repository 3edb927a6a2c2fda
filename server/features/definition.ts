import { CstUtils, type LangiumDocument, URI } from 'langium';
import { DefaultDefinitionProvider } from 'langium/lsp';
import type { DefinitionParams } from 'vscode-languageserver';
import type { LocationLink } from 'vscode-languageserver-types';
import { isUse, nodePath } from '../../language/grammar/index.ts';
import type { SlatServices } from '../services.ts';

const TOP = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/** Where a name is given; and from a `use`, the file that is used. */
export class SlatDefinition extends DefaultDefinitionProvider {
  private readonly services: SlatServices;

  constructor(services: SlatServices) {
    super(services);
    this.services = services;
  }

  override getDefinition(
    document: LangiumDocument,
    params: DefinitionParams,
  ): Promise<LocationLink[] | undefined> | LocationLink[] | undefined {
    return (
      this.usedFile(document, params) ?? (super.getDefinition(document, params) as LocationLink[] | undefined)
    );
  }

  private usedFile(document: LangiumDocument, { position }: DefinitionParams): LocationLink[] | undefined {
    const root = document.parseResult.value.$cstNode;
    const leaf = root && CstUtils.findLeafNodeAtOffset(root, document.textDocument.offsetAt(position));
    if (!leaf || !isUse(leaf.astNode)) return undefined;
    const at = nodePath(leaf.astNode);
    const { UseGraph, LangiumDocuments } = this.services.shared.workspace;
    const use = UseGraph.results(document.uri.toString()).find((one) => one.at === at);
    if (!use?.uri || !LangiumDocuments.hasDocument(URI.parse(use.uri))) return undefined;
    return [
      {
        targetUri: use.uri,
        targetRange: TOP,
        targetSelectionRange: TOP,
        originSelectionRange: leaf.range,
      },
    ];
  }
}
