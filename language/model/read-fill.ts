import type * as ast from '../grammar/index.ts';
import { type ReadPattern, readPattern } from './read-pattern.ts';
import { follow, isOwn, originOf, type Reader, tell } from './reader.ts';
import { type Bindings, NO_BINDINGS } from './resolve-parameter.ts';

/** A pattern as a fill asks for it, and what its parameters stand for there. */
export interface ReadFill extends ReadPattern {
  readonly statement: ast.FillStatement;
  readonly bindings: Bindings;
}

/** The pattern of a fill with its arguments; undefined when it cannot be worked out, which is told. */
export function readFill(reader: Reader, statement: ast.FillStatement): ReadFill | undefined {
  const pattern = follow(statement.pattern);
  if (!pattern) return undefined;
  const bindings = readArguments(reader, statement, pattern);
  const told = originOf(reader, statement);
  const read = readPattern(reader, pattern, bindings, told);
  if (read) return { ...read, statement, bindings };
  // Broken by its own file, not by the arguments given here.
  if (!isOwn(reader, pattern) && !readPattern(reader, pattern, NO_BINDINGS)) {
    const args = { name: pattern.name ?? '', kind: 'pattern' };
    const related = [{ origin: originOf(reader, pattern), note: 'pattern' }];
    tell(reader, 'used-broken', originOf(reader, statement, 'pattern'), args, related);
  }
  return undefined;
}

function readArguments(reader: Reader, fill: ast.FillStatement, pattern: ast.Pattern): Bindings {
  const bindings = new Map<ast.Parameter, ast.ParameterValue>();
  const first = new Map<ast.Parameter, ast.Argument>();
  for (const argument of fill.arguments ?? []) {
    const parameter = follow(argument.parameter);
    if (!parameter || !argument.value || parameter.$container !== pattern) continue;
    const earlier = first.get(parameter);
    if (earlier) {
      const what = parameter.name;
      const related = [{ origin: originOf(reader, earlier), note: what }];
      tell(reader, 'stated-twice', originOf(reader, argument), { what, block: 'fill' }, related);
      continue;
    }
    first.set(parameter, argument);
    bindings.set(parameter, argument.value);
  }
  return bindings;
}
