import type { AstNode, LangiumDocument } from 'langium';
import { resolvePath } from './node-path.ts';
import { bracesOf, pathSpan } from './path-ranges.ts';
import type { TextChange } from './text-change.ts';
import type { TextRange } from './text-findings.ts';

/** An edit as editors take it. */
export interface RangeEdit {
  readonly range: TextRange;
  readonly newText: string;
}

const STEP = '  ';

/**
 * Turns a change into an edit of the text as it stands now; undefined when the place is gone.
 * `replace` puts the text in place of the node or property. `append` makes it the last statement of
 * the block, on a line of its own unless the block stands on one line; to the file itself (path '')
 * it adds an element at the end.
 */
export function changeToEdit(document: LangiumDocument, change: TextChange): RangeEdit | undefined {
  if (change.place === 'replace') {
    const span = change.path === '' ? undefined : pathSpan(document, change.path);
    return span && edit(document, span.from, span.to, change.text);
  }
  const node = resolvePath(document.parseResult.value, change.path);
  if (!node) return undefined;
  return node.$container ? appendTo(document, node, change.text) : appendToFile(document, change.text);
}

function appendToFile(document: LangiumDocument, text: string): RangeEdit {
  const whole = document.textDocument.getText();
  const eol = lineEnd(whole);
  const gap = whole.trim() === '' ? '' : /[\r\n]$/.test(whole) ? eol : eol + eol;
  return edit(document, whole.length, whole.length, `${gap}${indented(text, '', eol)}${eol}`);
}

function appendTo(document: LangiumDocument, node: AstNode, text: string): RangeEdit | undefined {
  const whole = document.textDocument.getText();
  const eol = lineEnd(whole);
  const { open, close } = bracesOf(node);
  const cst = node.$cstNode;
  if (!cst) return undefined;
  const outer = indentAt(whole, cst.offset);
  const statements = (node as { statements?: AstNode[] }).statements ?? [];
  const last = statements.at(-1)?.$cstNode;
  const inner =
    last && lineStart(whole, last.offset) !== lineStart(whole, cst.offset)
      ? indentAt(whole, last.offset)
      : outer + STEP;
  if (!open) return edit(document, cst.end, cst.end, ` { ${text} }`);
  if (!close) {
    const at = last ? last.end : open.end;
    return edit(document, at, at, `${eol}${inner}${indented(text, inner, eol)}`);
  }
  const oneLine = !/[\r\n]/.test(whole.slice(open.end, close.offset));
  if (oneLine && !/[\r\n]/.test(text)) {
    if (whole.slice(open.end, close.offset).trim() === '')
      return edit(document, open.end, close.offset, ` ${text} `);
    const at = trimmedEnd(whole, open.end, close.offset);
    return edit(document, at, close.offset, `; ${text} `);
  }
  const before = whole.slice(lineStart(whole, close.offset), close.offset);
  // A closing brace on a line of its own stays there; after a statement it gets one.
  if (before.trim() === '') {
    const at = lineStart(whole, close.offset);
    return edit(document, at, at, `${inner}${indented(text, inner, eol)}${eol}`);
  }
  const at = trimmedEnd(whole, open.end, close.offset);
  return edit(document, at, close.offset, `${eol}${inner}${indented(text, inner, eol)}${eol}${outer}`);
}

function edit(document: LangiumDocument, from: number, to: number, newText: string): RangeEdit {
  const { textDocument } = document;
  return { range: { start: textDocument.positionAt(from), end: textDocument.positionAt(to) }, newText };
}

function lineEnd(whole: string): string {
  return /\r\n|\r|\n/.exec(whole)?.[0] ?? '\n';
}

function lineStart(whole: string, offset: number): number {
  return Math.max(whole.lastIndexOf('\n', offset - 1), whole.lastIndexOf('\r', offset - 1)) + 1;
}

function indentAt(whole: string, offset: number): string {
  return /^[ \t]*/.exec(whole.slice(lineStart(whole, offset)))?.[0] ?? '';
}

function trimmedEnd(whole: string, from: number, to: number): number {
  return from + whole.slice(from, to).trimEnd().length;
}

function indented(text: string, indent: string, eol: string): string {
  return text.split(/\r\n|\r|\n/).join(eol + indent);
}
