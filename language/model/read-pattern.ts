import type * as ast from '../grammar/index.ts';
import { MOST_REPEAT } from './bounds.ts';
import { DEFAULT_END } from './defaults.ts';
import type { EndRule, FitSpec, FlatStock, Origin, PatternSpec, Sourced } from './job.ts';
import { statementsOf } from './option-statements.ts';
import { pickStatements, tellMissing } from './pick-statements.ts';
import { readCount } from './read-count.ts';
import { readFit } from './read-fit.ts';
import { readLength } from './read-length.ts';
import { readSlat } from './read-slat.ts';
import { assumed, assumedLength, isOwn, originOf, type Reader, tell } from './reader.ts';
import type { Bindings } from './resolve-parameter.ts';

export interface ReadPattern {
  readonly spec: PatternSpec;
  readonly fit?: FitSpec;
}

/**
 * A pattern with its parameters filled in; undefined when something it needs is missing or cannot be.
 *
 * @param told where to tell what only comes out in use, when the pattern stands in another file
 */
export function readPattern(
  reader: Reader,
  node: ast.Pattern,
  bindings: Bindings,
  told?: Origin,
): ReadPattern | undefined {
  const name = node.name ?? '';
  const pick = pickStatements(reader, 'pattern', statementsOf(reader, node));
  const repeat = readRepeat(reader, node, pick('RepeatStatement'), bindings);
  const gapStatement = pick('PatternGap');
  const gap = gapStatement
    ? readLength(reader, gapStatement.value, { what: 'gap', zero: true }, bindings)
    : assumedLength(reader, node, 'gap');
  const edge = gap && readEdgeGap(reader, node, pick('EdgeGap'), gap.value, bindings);
  const end = readEnd(reader, node, pick('EndRule'), repeat, bindings, told);
  const fitNode = pick('Fit');
  const fit = fitNode && readFit(reader, fitNode, bindings, repeat && { name, repeat, told });
  if (!repeat || !gap || !edge || !end) return undefined;
  const spec = { name, origin: originOf(reader, node), repeat, gap, ...edge, end };
  return { spec, ...(fit ? { fit } : {}) };
}

/** One whole repeat, every `N of` written out. */
function readRepeat(
  reader: Reader,
  pattern: ast.Pattern,
  statement: ast.RepeatStatement | undefined,
  bindings: Bindings,
): readonly Sourced<FlatStock>[] | undefined {
  if (!statement) return tellMissing(reader, pattern, 'repeat');
  const repeat: Sourced<FlatStock>[] = [];
  let whole = (statement.items ?? []).length > 0;
  let asked = 0;
  for (const item of statement.items ?? []) {
    const slat = readSlat(reader, item, 'repeat', bindings);
    const times =
      item.count === undefined ? 1 : readCount(reader, item, 'slats', { least: 1, most: MOST_REPEAT });
    whole &&= slat !== undefined && times !== undefined;
    asked += times ?? 0;
    if (slat && times !== undefined && asked <= MOST_REPEAT)
      for (let n = 0; n < times; n++) repeat.push(slat);
  }
  if (asked > MOST_REPEAT) {
    const bound = { reason: 'too-many' as const, least: 1, most: MOST_REPEAT };
    tell(reader, 'absurd-count', originOf(reader, statement), {
      what: 'slats',
      count: String(asked),
      ...bound,
    });
    return undefined;
  }
  return whole ? repeat : undefined;
}

function readEdgeGap(
  reader: Reader,
  pattern: ast.Pattern,
  statement: ast.EdgeGap | undefined,
  gap: number,
  bindings: Bindings,
): Pick<PatternSpec, 'edgeGap' | 'edgeHalf'> | undefined {
  if (!statement) return { edgeGap: assumedLength(reader, pattern, 'edgeGap') };
  // Rounded down, so that two edges never take more than the gap they share.
  if (statement.half)
    return { edgeGap: { value: Math.floor(gap / 2), origin: originOf(reader, statement) }, edgeHalf: true };
  const edgeGap = readLength(reader, statement.value, { what: 'edge gap', zero: true }, bindings);
  return edgeGap && { edgeGap };
}

function readEnd(
  reader: Reader,
  pattern: ast.Pattern,
  statement: ast.EndRule | undefined,
  repeat: readonly Sourced<FlatStock>[] | undefined,
  bindings: Bindings,
  told: Origin | undefined,
): Sourced<EndRule> | undefined {
  if (!statement) return assumed(reader, pattern, DEFAULT_END);
  const origin = originOf(reader, statement);
  if (statement.rule) return { value: { kind: statement.rule }, origin };
  const slat = readSlat(reader, statement, 'end on', bindings)?.value.name;
  if (slat === undefined) return undefined;
  if (repeat && !repeat.some(({ value }) => value.name === slat)) {
    const at = isOwn(reader, statement) || !told ? origin : told;
    const args = { slat, pattern: pattern.name ?? '', place: 'end on' };
    tell(reader, 'not-in-repeat', at, args);
    return undefined;
  }
  return { value: { kind: 'on', slat }, origin };
}
