import { type LangiumDocument, URI } from 'langium';
import type { CodeActionProvider } from 'langium/lsp';
import type { CodeActionParams } from 'vscode-languageserver';
import {
  type CodeAction,
  CodeActionKind,
  CodeActionTriggerKind,
  type Diagnostic,
  type Position,
  type Range,
  type TextEdit,
} from 'vscode-languageserver-types';
import type { Fix } from '../../language/checks/index.ts';
import { changeToEdit } from '../../language/grammar/index.ts';
import { dataOf } from '../findings/index.ts';
import { COMMANDS } from '../protocol.ts';
import type { SlatServices } from '../services.ts';
import { placeFindings, runAt } from '../work/index.ts';
import { WrittenNames } from './written-names.ts';

/** Ways out of findings: their own fixes, near names and words for what nothing bears; and a way to what would be better for a run. */
export class SlatCodeActions implements CodeActionProvider {
  private readonly services: SlatServices;
  private readonly names: WrittenNames;

  constructor(services: SlatServices) {
    this.services = services;
    this.names = new WrittenNames(services.Grammar);
  }

  getCodeActions(document: LangiumDocument, { context, range }: CodeActionParams): CodeAction[] {
    const wants = (kind: string) => !context.only || context.only.some((one) => isOrHolds(one, kind));
    return [
      ...(wants(CodeActionKind.QuickFix)
        ? context.diagnostics.flatMap((diagnostic) => this.actionsFor(document, diagnostic))
        : []),
      // Asked for by itself it would put a light bulb on every line of a run.
      ...(wants(CodeActionKind.RefactorRewrite) && context.triggerKind !== CodeActionTriggerKind.Automatic
        ? betterFor(document, range.start)
        : []),
    ];
  }

  private actionsFor(document: LangiumDocument, diagnostic: Diagnostic): CodeAction[] {
    const data = dataOf(diagnostic);
    if (!data) return [];
    return [
      ...data.suggestions.map((name, at) => this.replacement(document, diagnostic, name, at === 0)),
      ...[...data.fixes, ...(data.more ? this.moreFixes(document, diagnostic) : [])].flatMap(
        (fix) => this.action(diagnostic, fix) ?? [],
      ),
    ];
  }

  /** What takes work to find is sought in the text as it is now, for the same finding at the same place. */
  private moreFixes(document: LangiumDocument, { code, range }: Diagnostic): readonly Fix[] {
    const kept = this.services.shared.work.Keeper.of(document.uri.toString());
    if (!kept) return [];
    const found = placeFindings(this.services, document, kept.work).find(
      (finding) => finding.code === code && isSame(finding.range, range),
    );
    return found?.moreFixes?.() ?? [];
  }

  private replacement(
    document: LangiumDocument,
    diagnostic: Diagnostic,
    name: string,
    preferred: boolean,
  ): CodeAction {
    const newText = this.names.write(name);
    return {
      title: `Change to ${newText}`,
      kind: CodeActionKind.QuickFix,
      diagnostics: [diagnostic],
      isPreferred: preferred,
      edit: { changes: { [document.uri.toString()]: [{ range: diagnostic.range, newText }] } },
    };
  }

  /** Undefined when the text has moved on and one of the places is gone. */
  private action(diagnostic: Diagnostic, fix: Fix): CodeAction | undefined {
    const changes: Record<string, TextEdit[]> = {};
    for (const change of fix.changes) {
      const document = this.services.shared.workspace.LangiumDocuments.getDocument(URI.parse(change.uri));
      const edit = document && changeToEdit(document, change);
      if (!edit) return undefined;
      changes[change.uri] ??= [];
      changes[change.uri]?.push(edit);
    }
    return {
      title: fix.title,
      kind: CodeActionKind.QuickFix,
      diagnostics: [diagnostic],
      isPreferred: fix.preferred ?? false,
      edit: { changes },
    };
  }
}

/** For the run at a place: a search for what would be better, which the client runs beside typing. */
function betterFor(document: LangiumDocument, place: Position): CodeAction[] {
  const run = runAt(document, document.textDocument.offsetAt(place));
  if (!run) return [];
  const title = `Look for better choices for ${run.name}...`;
  return [
    {
      title,
      kind: CodeActionKind.RefactorRewrite,
      command: { title, command: COMMANDS.findBetter, arguments: [document.uri.toString(), run.name] },
    },
  ];
}

function isSame(one: Range, other: Range): boolean {
  return (
    one.start.line === other.start.line &&
    one.start.character === other.start.character &&
    one.end.line === other.end.line &&
    one.end.character === other.end.character
  );
}

function isOrHolds(asked: string, kind: string): boolean {
  return kind === asked || kind.startsWith(`${asked}.`);
}
