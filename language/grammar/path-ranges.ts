import { type AstNode, type CstNode, CstUtils, GrammarUtils, type LangiumDocument } from 'langium';
import { followPath } from './node-path.ts';
import type { TextRange } from './text-findings.ts';

const START: TextRange = { start: { line: 0, character: 0 }, end: { line: 0, character: 0 } };

/**
 * Where the node or property that a path names stands in the text. What is no longer there is shown
 * at what is left of the path; the file itself at its start.
 */
export function pathRange(document: LangiumDocument, path: string): TextRange {
  return pathTextNode(document, path)?.range ?? START;
}

/**
 * Like {@link pathRange}, but of a block only its first words, such as `run bank`: a finding about a
 * whole run should not underline the whole run.
 */
export function pathHeadRange(document: LangiumDocument, path: string): TextRange {
  const cst = pathTextNode(document, path);
  if (!cst) return START;
  const brace = leaves(cst).findIndex((leaf) => leaf.text === '{');
  const last = brace > 0 ? leaves(cst)[brace - 1] : undefined;
  return last ? { start: cst.range.start, end: last.range.end } : cst.range;
}

/** The piece of text a path names, as offsets, for replacing it. Undefined when the text has it no longer. */
export function pathSpan(document: LangiumDocument, path: string): { from: number; to: number } | undefined {
  const { whole } = followPath(document.parseResult.value, path);
  const cst = whole ? pathTextNode(document, path) : undefined;
  return cst && { from: cst.offset, to: cst.end };
}

function pathTextNode(document: LangiumDocument, path: string): CstNode | undefined {
  const { node, property } = followPath(document.parseResult.value, path);
  if (property) return GrammarUtils.findNodeForProperty(node.$cstNode, property) ?? node.$cstNode;
  return node.$container ? node.$cstNode : undefined;
}

/** Visible leaves of a node's text. */
export function leaves(cst: CstNode): CstNode[] {
  return CstUtils.flattenCst(cst)
    .filter((leaf) => !leaf.hidden)
    .toArray();
}

/** The braces of a block: undefined where the text lacks them. */
export function bracesOf(node: AstNode): { open?: CstNode; close?: CstNode } {
  const open = GrammarUtils.findNodeForKeyword(node.$cstNode, '{');
  const close = GrammarUtils.findNodeForKeyword(node.$cstNode, '}');
  return { ...(open ? { open } : {}), ...(close ? { close } : {}) };
}
