import type * as ast from '../grammar/index.ts';
import { withAllElse } from './all-else.ts';
import { follow, type Reader } from './reader.ts';

/**
 * The statements of a block as they stand in the option that is read: those of the option, then the block's own of
 * the kinds that the option does not state. Without an option, the block's own.
 */
export function statementsOf(reader: Reader, node: ast.Run): readonly ast.RunStatement[];
export function statementsOf(reader: Reader, node: ast.Gate): readonly ast.GateStatement[];
export function statementsOf(reader: Reader, node: ast.Pattern): readonly ast.PatternStatement[];
export function statementsOf(
  reader: Reader,
  node: ast.Run | ast.Gate | ast.Pattern,
): readonly (ast.RunStatement | ast.GateStatement | ast.PatternStatement)[] {
  const stated = inOption(reader, node);
  return node.$type === 'Run' ? withAllElse(reader, node, stated as readonly ast.RunStatement[]) : stated;
}

/** Those of the block as the option has it. */
export function inOption(
  { option }: Reader,
  node: ast.Run | ast.Gate | ast.Pattern,
): readonly (ast.RunStatement | ast.GateStatement | ast.PatternStatement)[] {
  const own = node.statements ?? [];
  const changes = (option?.changes ?? []).filter((change) => targetOf(change) === node);
  const stated = changes.flatMap((change) => change.statement ?? []);
  if (stated.length === 0) return own;
  const kinds = new Set<string>(stated.map(({ $type }) => $type));
  return [...stated, ...own.filter(({ $type }) => !kinds.has($type))];
}

function targetOf(change: ast.OptionChange): ast.Run | ast.Gate | ast.Pattern | undefined {
  switch (change.$type) {
    case 'OptionRun':
      return follow(change.run);
    case 'OptionGate':
      return follow(change.gate);
    case 'OptionPattern':
      return follow(change.pattern);
  }
}
