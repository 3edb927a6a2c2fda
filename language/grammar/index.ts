/**
 * The text: grammar, parser, names and what they refer to, and where things stand in a file.
 *
 * Lives here: Langium's services for the language without a language server, how statements end, what
 * `use` reaches, paths that name places of the text, errors of writing and of naming. Does not live
 * here: what a screen is, or what a length amounts to (model/, units/).
 *
 * Edits may be asked for by any later stage (`TextChange`); they become ranges here, at the edge.
 */
export * from './generated/ast.ts';
export { SlatGeneratedModule, SlatGeneratedSharedModule, SlatLanguageMetaData } from './generated/module.ts';
export { type GrammarWords, grammarWords } from './grammar-words.ts';
export { distinguishingName, type NameKind, nameKindOf } from './kinds.ts';
export { SlatLexer } from './lexer.ts';
export { isClosed, quoted, unquote, writtenName } from './names.ts';
export { editDistance, nearNames } from './near-names.ts';
export { nodePath, propertyPath, resolvePath } from './node-path.ts';
export { pathHeadRange, pathRange } from './path-ranges.ts';
export { SlatDocumentBuilder } from './relinking.ts';
export {
  createSlatCoreServices,
  type SlatCoreServices,
  SlatModule,
  type SlatSharedAddedServices,
  SlatSharedModule,
  type SlatSharedServices,
} from './services.ts';
export { type StatementEnding, statementEnds, type Token } from './statement-ends.ts';
export type { TextChange } from './text-change.ts';
export { changeToEdit, type RangeEdit } from './text-edits.ts';
export {
  type SyntaxFinding,
  syntaxFindings,
  type TextFinding,
  type TextRange,
  textFindings,
  type UnknownNameFinding,
} from './text-findings.ts';
export {
  type Closure,
  DEEPEST_CHAIN,
  MOST_FILES,
  resolveUse,
  UseGraph,
  type UseProblem,
  type UseResult,
} from './use-graph.ts';
export { loadUsedFiles } from './use-loading.ts';
export { DefaultWorkspaceBounds, type WorkspaceBounds } from './workspace-bounds.ts';
