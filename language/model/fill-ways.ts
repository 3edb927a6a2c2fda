import type * as ast from '../grammar/index.ts';
import { type Measure, spellLength, type Ticks } from '../units/index.ts';
import type { FitSpec, Origin, PatternSpec } from './job.ts';
import { readPattern } from './read-pattern.ts';
import { follow, type JobContext, makeReader, originOf } from './reader.ts';
import type { Bindings } from './resolve-parameter.ts';

/** A pattern as a fill statement would ask for it. */
export interface Filling {
  /** The statement: `fill even(space = 5/8")`. */
  readonly text: string;
  readonly pattern: PatternSpec;
  readonly fit?: FitSpec;
}

/** A pattern that a run may be filled with. */
export interface FillWay {
  readonly name: string;
  /** The one it is filled with. */
  readonly own: boolean;
  /** As it is, or at another gap; undefined where the gap is no parameter, or when it cannot be read. */
  filled(gap?: Ticks): Filling | undefined;
}

/** What a run may be filled with, its own pattern first; undefined when the text has no such fill. */
export interface FillWays {
  /** The fill statement. */
  readonly at: Origin;
  readonly ways: readonly FillWay[];
}

/**
 * Every pattern that a run's file sees, with the statement that would fill the run with it. The run's own keeps its
 * arguments; the others come with their defaults. Pure: nothing is told and nothing is remembered.
 */
export function fillWays(
  root: ast.SlatFile,
  context: JobContext,
  measure: Measure,
  run: string,
): FillWays | undefined {
  const node = (root.elements ?? []).find(
    (element): element is ast.Run => element.$type === 'Run' && element.name === run,
  );
  const fill = node?.statements?.find((one): one is ast.FillStatement => one.$type === 'FillStatement');
  const own = follow(fill?.pattern);
  if (!fill || !own) return undefined;
  const seen = new Set<string>([own.name]);
  const others = [root, ...(context.used ?? [])]
    .flatMap((file) => file.elements ?? [])
    .filter((element): element is ast.Pattern => {
      if (element.$type !== 'Pattern' || !element.name || seen.has(element.name)) return false;
      seen.add(element.name);
      return true;
    });
  const way = (pattern: ast.Pattern, given: readonly ast.Argument[], name: string): FillWay => ({
    name: pattern.name,
    own: pattern === own,
    filled: (gap) => filled({ root, context, measure }, pattern, given, name, gap),
  });
  return {
    at: originOf(makeReader(root, context), fill),
    ways: [
      way(own, fill.arguments ?? [], fill.pattern?.$refText ?? own.name),
      ...others.map((pattern) => way(pattern, [], spelled(pattern))),
    ],
  };
}

interface Setting {
  readonly root: ast.SlatFile;
  readonly context: JobContext;
  readonly measure: Measure;
}

function filled(
  { root, context, measure }: Setting,
  pattern: ast.Pattern,
  given: readonly ast.Argument[],
  name: string,
  gap: Ticks | undefined,
): Filling | undefined {
  const reader = { ...makeReader(root, context), measure };
  const bindings = new Map<ast.Parameter, ast.ParameterValue>();
  const texts = new Map<string, string>();
  for (const argument of given) {
    const parameter = follow(argument.parameter);
    const text = argument.value?.text ?? argument.value?.ref?.$refText;
    if (!parameter || !argument.value || text === undefined) return undefined;
    bindings.set(parameter, argument.value);
    texts.set(argument.parameter?.$refText ?? parameter.name, argument.value.$cstNode?.text ?? text);
  }
  if (gap !== undefined) {
    const parameter = gapParameter(pattern);
    if (!parameter?.default) return undefined;
    const text = spellLength(gap, measure);
    bindings.set(parameter, { ...parameter.default, ref: undefined, text });
    const written = given.find(({ parameter: one }) => follow(one) === parameter)?.parameter?.$refText;
    texts.set(written ?? spelledName(parameter), text);
  }
  const read = readPattern(reader, pattern, bindings as Bindings);
  if (!read || reader.problems.size > 0) return undefined;
  const list = [...texts].map(([parameter, text]) => `${parameter} = ${text}`).join(', ');
  return {
    text: `fill ${name}${list === '' ? '' : `(${list})`}`,
    pattern: read.spec,
    ...(read.fit ? { fit: read.fit } : {}),
  };
}

/** The parameter that the gap is, where it is one and nothing else. */
function gapParameter(pattern: ast.Pattern): ast.Parameter | undefined {
  const gap = pattern.statements?.find((one): one is ast.PatternGap => one.$type === 'PatternGap');
  return follow(gap?.value?.parameter);
}

/** A name as it stands where it is declared, so quoted where it must be. */
function spelledName({ name, $cstNode }: ast.Parameter): string {
  const text = $cstNode?.text ?? '';
  return text.slice(0, text.lastIndexOf('=') >= 0 ? text.indexOf('=') : undefined).trim() || name;
}

function spelled({ name, $cstNode }: ast.Pattern): string {
  const head = /^pattern\s+("[^"]*"|\u201C[^\u201D]*\u201D|[^\s({]+)/.exec($cstNode?.text ?? '')?.[1];
  return head ?? name;
}
