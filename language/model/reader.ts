import type * as ast from '../grammar/index.ts';
import { nodePath, propertyPath } from '../grammar/index.ts';
import type { Measure, ParsedLength } from '../units/index.ts';
import { DEFAULT_LENGTHS, DEFAULT_MEASURES, type DefaultName, isMetric } from './defaults.ts';
import type { Material, Origin, Problem, Sourced, Stock } from './job.ts';
import { makeProblem, type ProblemArgs, type ProblemCode, type Related } from './problems.ts';

/** What a file is read in: its own address and the files it reaches through `use`. */
export interface JobContext {
  readonly uri: string;
  /** Roots of all files reached through `use`, directly or not, each once and without the file itself. */
  readonly used?: readonly ast.SlatFile[];
  /** Name of the option whose statements stand in for the job's own; none for the job as it is. */
  readonly option?: string;
}

/** A node of the syntax tree. */
export type Node = Parameters<typeof nodePath>[0];

/** One reading of one file: what is remembered while it lasts, and what was found wrong. */
export interface Reader {
  readonly root: ast.SlatFile;
  readonly uri: string;
  readonly used: readonly ast.SlatFile[];
  /** Of the job; undefined before it is known, and where nothing states it. */
  readonly currency?: string;
  /** Its statements stand in for the job's own. */
  readonly option?: ast.Option;
  /** How lengths are shown and defaults chosen; known before anything else is read. */
  readonly measure: Measure;
  readonly parsed: Map<string, ParsedLength>;
  readonly stocks: Map<Node, Stock | undefined>;
  readonly materials: Map<Node, Material>;
  readonly problems: Map<string, Problem>;
}

export function makeReader(root: ast.SlatFile, context: JobContext): Reader {
  const option = root.elements?.find(
    (element): element is ast.Option => element.$type === 'Option' && element.name === context.option,
  );
  return {
    root,
    ...(option ? { option } : {}),
    uri: context.uri,
    used: context.used ?? [],
    measure: DEFAULT_MEASURES.imperial,
    parsed: new Map(),
    stocks: new Map(),
    materials: new Map(),
    problems: new Map(),
  };
}

/** The origin of a node, or of a word, number or reference of it. */
export function originOf(
  reader: Reader,
  node: Node,
  property?: string,
  why: Origin['why'] = 'stated',
): Origin {
  const path = property === undefined ? nodePath(node) : propertyPath(node, property);
  return { uri: uriOf(reader, node), path, why };
}

/** Whether the node stands in the file that is read, not in one it uses. */
export function isOwn(reader: Reader, node: Node): boolean {
  return rootOf(node) === reader.root;
}

function uriOf(reader: Reader, node: Node): string {
  const root = rootOf(node) as ast.SlatFile;
  return root === reader.root ? reader.uri : (root.$document?.uri.toString() ?? reader.uri);
}

function rootOf(node: Node): Node {
  let root = node;
  while (root.$container) root = root.$container;
  return root;
}

/**
 * Tells a problem once, however often its place is read. What is wrong in another file is told there
 * and not here.
 */
export function tell<C extends ProblemCode>(
  reader: Reader,
  code: C,
  origin: Origin,
  args: ProblemArgs[C],
  related?: Related,
): void {
  if (origin.uri !== reader.uri) return;
  const key = `${code} ${origin.path} ${JSON.stringify(args)}`;
  if (!reader.problems.has(key)) reader.problems.set(key, makeProblem(code, origin, args, related));
}

/** What a reference leads to; undefined when it leads nowhere, of which linking tells. */
export function follow<T>(reference: { readonly ref?: T } | undefined): T | undefined {
  try {
    return reference?.ref;
  } catch {
    return undefined;
  }
}

/** A value taken for granted, at home in the block that does not state it. */
export function assumed<T>(reader: Reader, block: Node, value: T): Sourced<T> {
  return { value, origin: originOf(reader, block, undefined, 'default') };
}

/** A length taken for granted. */
export function assumedLength(reader: Reader, block: Node, name: DefaultName): Sourced<number> {
  const { imperial, metric } = DEFAULT_LENGTHS[name];
  return assumed(reader, block, isMetric(reader.measure) ? metric : imperial);
}

/** The same value, known to follow from where it stands rather than to be stated for this purpose. */
export function derived<T>({ value, origin }: Sourced<T>): Sourced<T> {
  return { value, origin: { ...origin, why: 'derived' } };
}
