import { type Diagnostic, DiagnosticSeverity } from 'vscode-languageserver-types';
import type { Fix, Severity } from '../../language/checks/index.ts';
import { FINDING_SCHEME } from '../protocol.ts';
import type { PlacedFinding } from '../work/index.ts';

/** What a diagnostic carries back to the server when fixes are asked for. */
export interface FindingData {
  readonly code: string;
  readonly fixes: readonly Fix[];
  /** Whether there may be more, which are sought when fixes are asked for. */
  readonly more: boolean;
  /** Texts to put in place of what is underlined, nearest first. */
  readonly suggestions: readonly string[];
  readonly pieces: readonly string[];
}

const SEVERITIES: Readonly<Record<Severity, DiagnosticSeverity>> = {
  error: DiagnosticSeverity.Error,
  warning: DiagnosticSeverity.Warning,
  information: DiagnosticSeverity.Information,
};

/** Address of the page that explains a finding. */
function pageOf(code: string): string {
  return `${FINDING_SCHEME}:/${code}.md`;
}

/** A finding as editors show it: with its code, linked to its page; a mere hint when the job accepts it. */
export function toDiagnostic(finding: PlacedFinding): Diagnostic {
  const { code, fixes, moreFixes, suggestions, pieces } = finding;
  const data: FindingData = { code, fixes, more: moreFixes !== undefined, suggestions, pieces };
  return {
    source: 'slatwright',
    code,
    codeDescription: { href: pageOf(code) },
    severity: finding.accepted === undefined ? SEVERITIES[finding.severity] : DiagnosticSeverity.Hint,
    message:
      finding.accepted === undefined ? finding.message : `${finding.message}\nAccepted: ${finding.accepted}`,
    range: finding.range,
    relatedInformation: finding.related.map(({ uri, range, note }) => ({
      location: { uri, range },
      message: note,
    })),
    data,
  };
}

/** What a diagnostic of ours carries; undefined for any other. */
export function dataOf(diagnostic: Diagnostic): FindingData | undefined {
  const data = diagnostic.data as Partial<FindingData> | undefined;
  if (typeof data?.code !== 'string' || !Array.isArray(data.fixes)) return undefined;
  return {
    code: data.code,
    fixes: data.fixes,
    more: data.more ?? false,
    suggestions: data.suggestions ?? [],
    pieces: data.pieces ?? [],
  };
}
