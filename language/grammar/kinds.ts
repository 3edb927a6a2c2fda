import type { AstNode } from 'langium';
import type { CutSlats, Measured, MeasuredBay, MeasuredBoard, MeasuredPost, Use } from './generated/ast.ts';

/** What a name can stand for. Each kind has names of its own; all stock shares one set. */
export type NameKind =
  | 'stock'
  | 'cap'
  | 'material'
  | 'pattern'
  | 'deck'
  | 'run'
  | 'gate'
  | 'viewer'
  | 'place'
  | 'option'
  | 'parameter';

const KIND_OF_TYPE: Readonly<Record<string, NameKind>> = {
  Board: 'stock',
  Rip: 'stock',
  Post: 'stock',
  Rail: 'stock',
  Cleat: 'stock',
  Channel: 'stock',
  Stock: 'stock',
  ParameterSource: 'stock',
  Cap: 'cap',
  Material: 'material',
  Pattern: 'pattern',
  Deck: 'deck',
  Run: 'run',
  Gate: 'gate',
  Viewer: 'viewer',
  Place: 'place',
  Option: 'option',
  Parameter: 'parameter',
};

/** The kind of name a node type declares or a reference to that type asks for. */
export function nameKindOf(type: string): NameKind | undefined {
  return KIND_OF_TYPE[type];
}

/** What tells a node from others of its type in the same block: a name, or what it refers to. */
export function distinguishingName(node: AstNode): string | undefined {
  switch (node.$type) {
    case 'Use':
      return (node as Use).path;
    case 'Job':
      // One job a file; its title may change without anything else changing.
      return undefined;
    case 'OptionRun':
      return (node as { run?: { $refText: string } }).run?.$refText;
    case 'OptionGate':
      return (node as { gate?: { $refText: string } }).gate?.$refText;
    case 'OptionPattern':
      return (node as { pattern?: { $refText: string } }).pattern?.$refText;
    case 'Argument':
      return (node as { parameter?: { $refText: string } }).parameter?.$refText;
    case 'Measured':
      return (node as Measured).run?.$refText;
    case 'MeasuredBoard':
      return (node as MeasuredBoard).stock?.$refText;
    case 'MeasuredBay':
    case 'MeasuredPost':
    case 'CutSlats':
      return (node as MeasuredBay | MeasuredPost | CutSlats).number;
    default: {
      const { name } = node as { name?: unknown };
      return typeof name === 'string' ? name : undefined;
    }
  }
}
