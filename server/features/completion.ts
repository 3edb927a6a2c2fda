import {
  type AstNodeDescription,
  AstUtils,
  GrammarAST,
  type LangiumDocument,
  type ReferenceInfo,
  UriUtils,
} from 'langium';
import {
  type CompletionAcceptor,
  type CompletionContext,
  type CompletionValueItem,
  DefaultCompletionProvider,
  type NextFeature,
} from 'langium/lsp';
import type { CompletionParams } from 'vscode-languageserver';
import { CompletionItemKind, CompletionList, InsertTextFormat } from 'vscode-languageserver-types';
import { FINDING_KINDS } from '../../language/checks/index.ts';
import { isMetric, MATERIAL_WORDS, UNIT_WORDS } from '../../language/model/index.ts';
import type { SlatServices } from '../services.ts';
import { isFirstWord, phraseOf } from './grammar-phrases.ts';
import { STATEMENT_SNIPPETS, snippetText } from './statement-snippets.ts';
import { WrittenNames } from './written-names.ts';

/** What may come next: statements with their tab stops, phrases of the language, names that fit, files to use. */
export class SlatCompletion extends DefaultCompletionProvider {
  override readonly completionOptions = { triggerCharacters: ['"', '/'] };
  private readonly services: SlatServices;
  private readonly names: WrittenNames;

  constructor(services: SlatServices) {
    super(services);
    this.services = services;
    this.names = new WrittenNames(services.Grammar);
  }

  override async getCompletion(
    document: LangiumDocument,
    params: CompletionParams,
  ): Promise<CompletionList | undefined> {
    if (isInComment(document, document.textDocument.offsetAt(params.position))) return undefined;
    const found: CompletionValueItem[] = [];
    const items: CompletionList['items'] = [];
    const accept: CompletionAcceptor = (context, value) => {
      found.push(value);
      const item = this.fillCompletionItem(context, value);
      if (item) items.push(item);
    };
    // Unlike Langium's own, one word that begins two phrases (`at most`, `at 6'`) is offered for both.
    const done = new Set<GrammarAST.AbstractElement>();
    for (const context of this.buildContexts(document, params.position)) {
      for (const next of context.features) {
        if (done.has(next.feature)) continue;
        done.add(next.feature);
        await this.completionFor(context, next, accept);
      }
      if (items.length > 0) break;
    }
    return CompletionList.create(this.deduplicateItems(items), true);
  }

  protected override completionFor(
    context: CompletionContext,
    next: NextFeature,
    acceptor: CompletionAcceptor,
  ): Promise<void> | void {
    if (GrammarAST.isRuleCall(next.feature)) return this.wordsFor(context, next.feature, acceptor);
    return super.completionFor(context, next, acceptor) as Promise<void> | void;
  }

  protected override completionForKeyword(
    context: CompletionContext,
    keyword: GrammarAST.Keyword,
    acceptor: CompletionAcceptor,
  ): void {
    const rule = AstUtils.getContainerOfType(keyword, GrammarAST.isParserRule);
    // A name may be a word of the language; that is no reason to propose the word as a name.
    if (!rule || rule.name === 'Name' || !/\p{L}/u.test(keyword.value)) return;
    const snippets = isFirstWord(rule, keyword) ? STATEMENT_SNIPPETS[rule.name] : undefined;
    if (!snippets) {
      const label = phraseOf(keyword);
      acceptor(context, { label, kind: CompletionItemKind.Keyword, sortText: `1 ${label}` });
      return;
    }
    for (const { label, body, about } of snippets) {
      acceptor(context, {
        label,
        kind: CompletionItemKind.Snippet,
        detail: about,
        insertText: snippetText(body, systemOf(this.services, context.document)),
        insertTextFormat: InsertTextFormat.Snippet,
        sortText: `1 ${label}`,
      });
    }
  }

  protected override createReferenceCompletionItem(
    description: AstNodeDescription,
    info: ReferenceInfo,
  ): CompletionValueItem {
    return {
      nodeDescription: description,
      label: description.name,
      insertText: this.names.write(description.name),
      kind: this.nodeKindProvider.getCompletionItemKind(description),
      detail: description.type.toLowerCase(),
      sortText: `${rank(description.type, info)} ${description.name}`,
    };
  }

  protected override getReferenceCandidates(info: ReferenceInfo, _context: CompletionContext) {
    return this.scopeProvider
      .getScope(info)
      .getAllElements()
      .filter(({ type }) => rank(type, info) < 9)
      .distinct(({ name }) => name);
  }

  /** Words of small vocabularies, and files. */
  private wordsFor(
    context: CompletionContext,
    call: GrammarAST.RuleCall,
    acceptor: CompletionAcceptor,
  ): void {
    const rule = AstUtils.getContainerOfType(call, GrammarAST.isParserRule)?.name;
    const feature = AstUtils.getContainerOfType(call, GrammarAST.isAssignment)?.feature;
    const offer = (label: string, kind: CompletionItemKind, insertText = label, detail?: string) =>
      acceptor(context, { label, insertText, kind, detail, filterText: insertText, sortText: `0 ${label}` });
    if (rule === 'MeasureStatement' && feature === 'unit') {
      for (const word of UNIT_WORDS) offer(word, CompletionItemKind.Unit);
    } else if (rule === 'KindStatement') {
      for (const word of MATERIAL_WORDS) offer(word, CompletionItemKind.EnumMember);
    } else if (rule === 'ThresholdStatement' && feature === 'code') {
      for (const { code, threshold } of FINDING_KINDS)
        if (threshold) offer(code, CompletionItemKind.EnumMember, code, threshold.says);
    } else if (rule === 'AcceptStatement' && feature === 'code') {
      for (const { code, severity } of FINDING_KINDS)
        if (severity !== 'error') offer(code, CompletionItemKind.EnumMember);
    } else if (rule === 'Use') {
      for (const path of this.usable(context.document)) offer(path, CompletionItemKind.File, `"${path}"`);
    }
  }

  /** Paths of files of the workspace, as a `use` of this document would write them. */
  private usable({ uri }: LangiumDocument): string[] {
    const { LangiumDocuments, WorkspaceBounds } = this.services.shared.workspace;
    return LangiumDocuments.all
      .filter((other) => other.uri.scheme === uri.scheme && other.uri.toString() !== uri.toString())
      .filter((other) => WorkspaceBounds.isInside(other.uri, uri))
      .map((other) => UriUtils.relative(UriUtils.dirname(uri), other.uri))
      .toArray()
      .sort();
  }
}

/** Lower comes first; 9 is not offered: a post is no slat, and nothing else is a post; so with channels. */
function rank(type: string, { container, property }: ReferenceInfo): number {
  const at = container.$type;
  if (at === 'PostsStatement' || at === 'GatePosts') return type === 'Post' ? 0 : 9;
  if (type === 'Post') return 9;
  // Only slats end in channels, and in nothing else.
  if (at === 'SlatsStatement' || type === 'Channel')
    return at === 'SlatsStatement' && type === 'Channel' ? 0 : 9;
  if (at === 'CleatsStatement') return type === 'Cleat' ? 0 : 2;
  if (
    at === 'RailsStatement' ||
    at === 'FrameStatement' ||
    at === 'BraceStatement' ||
    at === 'StiffenersStatement'
  )
    return type === 'Rail' ? 0 : 2;
  if (at === 'Rip' && property === 'parent') return type === 'Board' ? 0 : 2;
  if (type === 'Rail' || type === 'Cleat') return 2;
  return 0;
}

function systemOf(services: SlatServices, { uri }: LangiumDocument): 'imperial' | 'metric' {
  const measure = services.shared.work.Keeper.of(uri.toString())?.work.job.measure.value;
  return measure && isMetric(measure) ? 'metric' : 'imperial';
}

function isInComment({ textDocument }: LangiumDocument, offset: number): boolean {
  const before = textDocument.getText().slice(0, offset);
  // Strings and lengths are left out first, so that no mark in them counts.
  const line = before.slice(before.lastIndexOf('\n') + 1).replace(/"[^"]*"/g, '""');
  return /\/\/[^\n]*$/.test(line) || before.lastIndexOf('/*') > before.lastIndexOf('*/');
}
