import type * as ast from '../grammar/index.ts';
import { follow, originOf, type Reader, tell } from './reader.ts';

/** What a pattern's parameters stand for in one place where it is used. */
export type Bindings = ReadonlyMap<ast.Parameter, ast.ParameterValue>;

export const NO_BINDINGS: Bindings = new Map();

/** What a parameter comes to, and the argument or default where that stands. */
export type ParameterMeaning =
  | { readonly kind: 'length'; readonly text: string; readonly at: ast.ParameterValue }
  | { readonly kind: 'stock'; readonly stock: ast.Stock; readonly at: ast.ParameterValue };

/**
 * Follows a parameter to its argument, else its default, and on through parameters named there.
 * Undefined when a name leads nowhere, or when a default comes back to itself, which is told.
 */
export function resolveParameter(
  reader: Reader,
  parameter: ast.Parameter,
  bindings: Bindings,
): ParameterMeaning | undefined {
  const passed = new Set<ast.Parameter>();
  let next = parameter;
  for (;;) {
    if (passed.has(next)) {
      tell(reader, 'circular', originOf(reader, next), { name: next.name, kind: 'parameter' });
      return undefined;
    }
    passed.add(next);
    const at = bindings.get(next) ?? next.default;
    if (!at) return undefined;
    if (at.text !== undefined) return { kind: 'length', text: at.text, at };
    const source = follow(at.ref);
    if (!source) return undefined;
    if (source.$type !== 'Parameter') return { kind: 'stock', stock: source, at };
    next = source;
  }
}

/** The word stock is declared with. */
export function wordForStock({ $type }: { readonly $type: string }): string {
  return $type.toLowerCase();
}
