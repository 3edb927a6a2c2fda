import type { AstNode, LangiumDocument, ReferenceInfo } from 'langium';
import { isLength } from './generated/ast.ts';
import { type NameKind, nameKindOf } from './kinds.ts';
import { nearNames } from './near-names.ts';
import type { SlatCoreServices } from './services.ts';

/** A place in the text, lines and characters counted from 0 as editors do. */
export interface TextRange {
  readonly start: { readonly line: number; readonly character: number };
  readonly end: { readonly line: number; readonly character: number };
}

export interface SyntaxFinding {
  readonly code: 'syntax';
  readonly message: string;
  readonly range: TextRange;
  readonly data: { readonly code: 'syntax' };
}

export interface UnknownNameFinding {
  readonly code: 'unknown-name';
  readonly message: string;
  readonly range: TextRange;
  /** What a quick fix needs: the kind of name, the name as understood, and near names, nearest first. */
  readonly data: {
    readonly code: 'unknown-name';
    readonly kind: NameKind;
    readonly name: string;
    readonly suggestions: readonly string[];
  };
}

/** What is wrong with a file before it means anything: how it is written, and names that nothing has. */
export type TextFinding = SyntaxFinding | UnknownNameFinding;

/** For so many unknown names near ones are looked up; who has more has other worries. */
const MOST_SUGGESTED_FOR = 50;

/** All text findings of a document that has been linked, in the order of the text. */
export function textFindings(services: SlatCoreServices, document: LangiumDocument): TextFinding[] {
  const found: TextFinding[] = [...syntaxFindings(document)];
  const unknown = document.references.filter((reference) => reference.error && reference.$refNode);
  for (const [index, { error, $refNode }] of unknown.entries()) {
    if (error && $refNode)
      found.push(unknownName(services, error.info, $refNode.range, index < MOST_SUGGESTED_FOR));
  }
  return found.sort(
    (a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character,
  );
}

/** What the lexer and the parser could not read. Needs no linking. */
export function syntaxFindings(document: LangiumDocument): SyntaxFinding[] {
  const { lexerErrors, lexerReport, parserErrors } = document.parseResult;
  const lexed = [...lexerErrors, ...(lexerReport?.diagnostics ?? [])].map(
    ({ message, line, column, length }) => {
      const start = { line: (line ?? 1) - 1, character: (column ?? 1) - 1 };
      return syntax(message, { start, end: { line: start.line, character: start.character + length } });
    },
  );
  const parsed = parserErrors.map(({ message, token }) => {
    const start = { line: (token.startLine || 1) - 1, character: (token.startColumn || 1) - 1 };
    const end = { line: (token.endLine || 1) - 1, character: token.endColumn || start.character };
    return syntax(message, { start, end });
  });
  return [...lexed, ...parsed];
}

function syntax(message: string, range: TextRange): SyntaxFinding {
  return { code: 'syntax', message, range, data: { code: 'syntax' } };
}

function unknownName(
  services: SlatCoreServices,
  info: ReferenceInfo,
  range: TextRange,
  suggest: boolean,
): UnknownNameFinding {
  const type = services.shared.AstReflection.getReferenceType(info);
  const kind = nameKindOf(type) ?? 'stock';
  const name = info.reference.$refText;
  const scope = suggest ? services.references.ScopeProvider.getScope(info) : undefined;
  const known = scope?.getAllElements().map((description) => description.name) ?? [];
  const suggestions = nearNames(name, known);
  return {
    code: 'unknown-name',
    message: unknownNameMessage(kind, name, suggestions, info.container),
    range,
    data: { code: 'unknown-name', kind, name, suggestions },
  };
}

/** A word where a length belongs is parsed as a parameter; outside patterns it can be none. */
function unknownNameMessage(
  kind: NameKind,
  name: string,
  suggestions: readonly string[],
  container: AstNode,
): string {
  const near = suggestions.map((suggestion) => `"${suggestion}"`);
  const last = near.pop();
  const meant = last ? ` did you mean ${near.length > 0 ? `${near.join(', ')} or ${last}` : last}?` : '';
  if (isLength(container) && !last) {
    return `"${name}" is neither a length nor a parameter of a pattern here; write a length such as 5-1/2" or 140 mm.`;
  }
  return `No ${kind} named "${name}" here${meant ? `;${meant}` : '.'}`;
}
