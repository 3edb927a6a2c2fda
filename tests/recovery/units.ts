import { type AstNode, AstUtils } from 'langium';
import { isMaterial, isRip, isUse, nodePath, type SlatFile } from '../../language/grammar/index.ts';

/** Something a builder wrote as one: a statement, a one-line element, or the head of a block. */
export interface Unit {
  readonly type: string;
  readonly text: string;
  readonly path: string;
  readonly from: number;
  readonly to: number;
  /** Span of the head of the block it stands in, if it does: damage there may rename the block. */
  readonly head?: { readonly from: number; readonly to: number };
}

export function unitsOf(file: AstNode): Unit[] {
  const units: Unit[] = [];
  for (const element of (file as SlatFile).elements ?? []) {
    const cst = element.$cstNode;
    if (!cst) continue;
    const text = cst.text;
    const single = isUse(element) || isRip(element) || (isMaterial(element) && !text.includes('{'));
    const to = single || !text.includes('{') ? cst.end : cst.offset + text.indexOf('{') + 1;
    const head = { from: cst.offset, to };
    units.push(unit(element, head.from, head.to, text.slice(0, to - cst.offset)));
    for (const statement of (element as { statements?: AstNode[] }).statements ?? []) {
      const own = statement.$cstNode;
      if (own) units.push({ ...unit(statement, own.offset, own.end, own.text), head });
    }
  }
  return units;
}

function unit(node: AstNode, from: number, to: number, text: string): Unit {
  return { type: node.$type, text: text.trimEnd(), path: nodePath(node), from, to };
}

/** Number of nodes, to see that a text was read whole. */
export function countNodes(file: AstNode): number {
  return AstUtils.streamAst(file).count();
}
