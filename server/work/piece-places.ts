import { type AstNode, CstUtils, type LangiumDocument } from 'langium';
import { nodePath } from '../../language/grammar/index.ts';
import type { Piece, RunLayout } from '../../language/layout/index.ts';
import type { Origin } from '../../language/model/index.ts';

/**
 * Where a piece is written: the most telling of the statements it follows from, of those in the
 * document itself if there are any, so that a click does not lead away to a library.
 */
export function originOfPiece(runs: readonly RunLayout[], key: string, uri: string): Origin | undefined {
  for (const run of runs) {
    const piece = [...run.pieces, ...run.temporary.pieces].find((one) => one.key === key);
    if (piece) return piece.from.find((origin) => origin.uri === uri) ?? piece.from[0] ?? run.spec.origin;
  }
  return undefined;
}

/**
 * Keys of the pieces that the statement at a place of the text makes: those of the innermost node
 * around the place that makes any. An element that makes none, such as a pattern that is not used,
 * lights nothing, and nor does the file as a whole.
 */
export function piecesAtOffset(
  document: LangiumDocument,
  offset: number,
  runs: readonly RunLayout[],
): readonly string[] {
  const uri = document.uri.toString();
  for (let node = nodeAt(document, offset); node?.$container; node = node.$container) {
    const path = nodePath(node);
    const keys = runs.flatMap((run) => run.pieces.filter((piece) => follows(piece, run, uri, path)));
    if (keys.length > 0) return keys.map((piece) => piece.key);
  }
  return [];
}

function follows(piece: Piece, run: RunLayout, uri: string, path: string): boolean {
  return piece.from.some((origin) => isAt(origin, uri, path)) || isAt(run.spec.origin, uri, path);
}

function isAt(origin: Origin, uri: string, path: string): boolean {
  if (origin.uri !== uri || !origin.path.startsWith(path)) return false;
  const next = origin.path.charAt(path.length);
  return next === '' || next === '/' || next === '.';
}

/** The innermost node whose own text holds the place; a place behind a statement in its line counts. */
function nodeAt(document: LangiumDocument, offset: number): AstNode | undefined {
  const root = document.parseResult.value.$cstNode;
  if (!root) return undefined;
  const leaf =
    CstUtils.findLeafNodeBeforeOffset(root, offset + 1) ?? CstUtils.findLeafNodeAtOffset(root, offset);
  if (!leaf) return undefined;
  const between = document.textDocument.getText().slice(leaf.end, offset);
  let node: AstNode | undefined = leaf.astNode;
  // In another line than the statement before, the place belongs to the block around it.
  if (/[\r\n;]/.test(between)) while (node && (node.$cstNode?.end ?? 0) < offset) node = node.$container;
  return node;
}
