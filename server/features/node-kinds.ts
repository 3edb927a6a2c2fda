import type { AstNode, AstNodeDescription } from 'langium';
import type { NodeKindProvider } from 'langium/lsp';
import { CompletionItemKind, SymbolKind } from 'vscode-languageserver-types';
import { nameKindOf } from '../../language/grammar/index.ts';

/** The signs editors show beside names of the language. */
export class SlatNodeKinds implements NodeKindProvider {
  getSymbolKind(node: AstNode | AstNodeDescription): SymbolKind {
    switch (nameKindOf(typeOf(node)) ?? typeOf(node)) {
      case 'stock':
      case 'cap':
        return SymbolKind.Struct;
      case 'material':
        return SymbolKind.Constant;
      case 'pattern':
        return SymbolKind.Class;
      case 'run':
        return SymbolKind.Module;
      case 'gate':
        return SymbolKind.Interface;
      case 'parameter':
        return SymbolKind.Variable;
      case 'Job':
        return SymbolKind.Package;
      default:
        return SymbolKind.Field;
    }
  }

  getCompletionItemKind(node: AstNode | AstNodeDescription): CompletionItemKind {
    switch (nameKindOf(typeOf(node))) {
      case 'stock':
      case 'cap':
        return CompletionItemKind.Struct;
      case 'material':
        return CompletionItemKind.Constant;
      case 'pattern':
        return CompletionItemKind.Class;
      case 'run':
        return CompletionItemKind.Module;
      case 'parameter':
        return CompletionItemKind.Variable;
      default:
        return CompletionItemKind.Reference;
    }
  }
}

function typeOf(node: AstNode | AstNodeDescription): string {
  return '$type' in node ? node.$type : node.type;
}
