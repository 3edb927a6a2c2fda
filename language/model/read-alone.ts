import type * as ast from '../grammar/index.ts';
import type { Measure } from '../units/index.ts';
import type { PatternSpec, Stock } from './job.ts';
import { readPattern } from './read-pattern.ts';
import { readStock } from './read-stock.ts';
import { type JobContext, makeReader } from './reader.ts';
import { NO_BINDINGS } from './resolve-parameter.ts';

/** A pattern by itself, its parameters at their defaults; undefined when it cannot be read. */
export function patternAlone(
  root: ast.SlatFile,
  context: JobContext,
  measure: Measure,
  pattern: ast.Pattern,
): PatternSpec | undefined {
  return readPattern({ ...makeReader(root, context), measure }, pattern, NO_BINDINGS)?.spec;
}

/** Stock by itself; undefined when it cannot be read. */
export function stockAlone(
  root: ast.SlatFile,
  context: JobContext,
  measure: Measure,
  stock: ast.Stock,
): Stock | undefined {
  return readStock({ ...makeReader(root, context), measure }, stock);
}
