import type { AstNode } from 'langium';
import { distinguishingName } from './kinds.ts';

/*
 * A path names a node by kinds and names, never by its place in the file:
 *
 *   Run:bank                          the run named bank
 *   Run:bank/RunLength                its length statement; the second such statement is RunLength~2
 *   Run:bank/RunLength.value          what stands in the property `value`, a node or a plain value
 *   Pattern:dune/RepeatStatement/items~2   the second item of a list
 *   ''                                the file
 *
 * So a line inserted above, or another statement added to the block, changes no path.
 */

const BLOCK_LISTS: ReadonlySet<string> = new Set(['statements', 'elements']);

/** A tree does not change once it is parsed, so items of a list are numbered once and together. */
const listed = new WeakMap<AstNode, string>();

/** The path of a node within its file. */
export function nodePath(node: AstNode): string {
  const known = listed.get(node);
  if (known !== undefined) return known;
  const parent = node.$container;
  if (!parent) return '';
  const above = nodePath(parent);
  const property = node.$containerProperty ?? '';
  const siblings = (parent as unknown as Record<string, unknown>)[property];
  if (!Array.isArray(siblings)) return `${above}.${property}`;
  const counts = new Map<string, number>();
  for (const sibling of siblings as AstNode[]) {
    const own = segment(sibling, property);
    const nth = (counts.get(own) ?? 0) + 1;
    counts.set(own, nth);
    const counted = nth > 1 ? `${own}~${nth}` : own;
    listed.set(sibling, above === '' ? counted : `${above}/${counted}`);
  }
  return listed.get(node) ?? `${above}.${property}`;
}

/** The path of a property of a node, be it a node, a reference, a word or a number. */
export function propertyPath(node: AstNode, property: string): string {
  return `${nodePath(node)}.${property}`;
}

/** The node a path names, or undefined when the text no longer has it or the path names no node. */
export function resolvePath(root: AstNode, path: string): AstNode | undefined {
  let node: AstNode | undefined = root;
  for (const step of stepsOf(path)) {
    node = node && child(node, step);
  }
  return node;
}

/** What a path leads to as far as it can be followed: the node, and the property at its end if it is no node. */
export function followPath(
  root: AstNode,
  path: string,
): { node: AstNode; property?: string; whole: boolean } {
  let node = root;
  const steps = stepsOf(path);
  for (const [index, step] of steps.entries()) {
    const next = child(node, step);
    if (next) node = next;
    else if (step.startsWith('.') && index === steps.length - 1) {
      const property = step.slice(1);
      const whole = (node as unknown as Record<string, unknown>)[property] !== undefined;
      return whole ? { node, property, whole } : { node, whole };
    } else return { node, whole: false };
  }
  return { node, whole: true };
}

/** `a/b~2.value` as `a`, `b~2`, `.value`. Names hold neither slash nor dot: they are escaped. */
function stepsOf(path: string): string[] {
  return path.match(/\.?[^/.]+/g) ?? [];
}

function child(node: AstNode, step: string): AstNode | undefined {
  const values = node as unknown as Record<string, unknown>;
  if (step.startsWith('.')) return asNode(values[step.slice(1)]);
  const [own = '', counted = '1'] = step.split('~');
  let nth = Number(counted);
  for (const [property, list] of Object.entries(values)) {
    if (property.startsWith('$') || !Array.isArray(list)) continue;
    for (const item of list) {
      const candidate = asNode(item);
      if (candidate && segment(candidate, property) === own && --nth === 0) return candidate;
    }
  }
  return undefined;
}

function segment(node: AstNode, property: string): string {
  const name = distinguishingName(node);
  if (name !== undefined) return `${node.$type}:${escaped(name)}`;
  return BLOCK_LISTS.has(property) ? node.$type : property;
}

function escaped(name: string): string {
  return name.replace(/[%/.~:]/g, (mark) => `%${mark.charCodeAt(0).toString(16)}`);
}

function asNode(value: unknown): AstNode | undefined {
  return typeof value === 'object' && value !== null && '$type' in value ? (value as AstNode) : undefined;
}
