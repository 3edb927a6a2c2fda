import { type LangiumDocument, URI } from 'langium';
import {
  acceptanceOf,
  type Basis,
  checkJob,
  checkLayout,
  checkRun,
  FINDING_KINDS,
  type Finding,
  type Fix,
  findingKind,
  messageOf,
  type Severity,
  type TextArgs,
} from '../../language/checks/index.ts';
import {
  nearNames,
  pathHeadRange,
  type SlatCoreServices,
  type TextFinding,
  type TextRange,
  textFindings,
  type UseResult,
} from '../../language/grammar/index.ts';
import type { RunLayout } from '../../language/layout/index.ts';
import type { Job, Origin } from '../../language/model/index.ts';
import type { Work } from './work-out.ts';

/** A finding in the text it is told in, ready for an editor or a terminal. */
export interface PlacedFinding {
  readonly code: string;
  readonly severity: Severity;
  readonly message: string;
  readonly range: TextRange;
  readonly basis: Basis;
  readonly related: readonly { readonly uri: string; readonly range: TextRange; readonly note: string }[];
  readonly pieces: readonly string[];
  readonly fixes: readonly Fix[];
  /** More of them, which take work to find. */
  readonly moreFixes?: () => readonly Fix[];
  /** The job's reason for leaving it as it is. */
  readonly accepted?: string;
  /** For an unknown name: what was probably meant. */
  readonly suggestions: readonly string[];
}

/** Everything found in a linked document, in the order of the text. */
export function placeFindings(
  services: SlatCoreServices,
  document: LangiumDocument,
  work: Work,
): PlacedFinding[] {
  const uses = services.shared.workspace.UseGraph.results(document.uri.toString());
  const { job, layout } = work;
  const demands = demandsOf(job);
  const ofFile = [
    ...uses.flatMap((use) => useFindings(document, use)),
    ...checkJob(job),
    ...checkLayout(layout, job),
  ];
  return [
    ...textFindings(services, document).map(placeText),
    ...ofFile.map((finding) => ({
      ...place(services, document, finding, job.origin),
      ...decided(finding, job),
    })),
    ...layout.runs.flatMap((run) =>
      rememberedRunFindings(run, job, demands).map((finding) => ({
        ...place(services, document, finding, run.spec.infill.fill),
        ...decided(finding, job, run),
      })),
    ),
  ].sort(
    (a, b) => a.range.start.line - b.range.start.line || a.range.start.character - b.range.start.character,
  );
}

/** A run's findings stay with its layout as long as the job's own demands and measure stay what they are. */
const remembered = new WeakMap<RunLayout, { demands: string; findings: readonly Finding[] }>();

function rememberedRunFindings(run: RunLayout, job: Job, demands: string): readonly Finding[] {
  const held = remembered.get(run);
  if (held?.demands === demands) return held.findings;
  const findings = checkRun(run, job);
  remembered.set(run, { demands, findings });
  return findings;
}

/** Everything a job says but its runs and stock, which a run's own layout holds. */
function demandsOf({ problems: _problems, stock: _stock, runs: _runs, ...demands }: Job): string {
  return JSON.stringify(demands);
}

/** The job's reason for leaving a finding as it is, where it gives one. */
function decided(finding: Finding, job: Job, run?: RunLayout): Pick<PlacedFinding, 'accepted'> {
  const acceptance = acceptanceOf(finding, findingKind(finding.code), job, run?.spec);
  return acceptance ? { accepted: acceptance.reason } : {};
}

function placeText(finding: TextFinding): PlacedFinding {
  const kind = findingKind(finding.code);
  return {
    code: finding.code,
    severity: kind.severity,
    message: finding.message,
    range: finding.range,
    basis: kind.basis,
    related: [],
    pieces: [],
    fixes: [],
    suggestions: finding.code === 'unknown-name' ? finding.data.suggestions : [],
  };
}

/**
 * Puts a finding where the document says what it is about. What stands in a used file is told at `home`,
 * the place of this document that brings it in, with the other file as related.
 */
function place(
  services: SlatCoreServices,
  document: LangiumDocument,
  finding: Finding,
  home: Origin,
): PlacedFinding {
  const kind = findingKind(finding.code);
  const own = document.uri.toString();
  const elsewhere = finding.at.uri === own ? [] : [{ at: finding.at, note: 'it is stated here' }];
  const at = elsewhere.length === 0 ? finding.at : home;
  return {
    code: finding.code,
    severity: kind.severity,
    message: messageOf(finding),
    range: pathHeadRange(document, at.uri === own ? at.path : ''),
    basis: kind.basis,
    related: [...elsewhere, ...(finding.related ?? [])].flatMap(({ at, note }) => {
      const range = rangeIn(services, at);
      return range ? [{ uri: at.uri, range, note }] : [];
    }),
    pieces: finding.pieces ?? [],
    fixes: finding.fixes ?? [],
    ...(finding.moreFixes ? { moreFixes: finding.moreFixes } : {}),
    suggestions: nearCodes(finding),
  };
}

/** Codes that were probably meant where the job names one that is none. */
function nearCodes({ code, args }: Finding): string[] {
  if (code === 'accept-unknown') return nearNames(String(args.code), ACCEPTABLE_CODES);
  return code === 'threshold-unknown' ? nearNames(String(args.code), LIMITED_CODES) : [];
}

const ACCEPTABLE_CODES = FINDING_KINDS.flatMap((kind) => (kind.severity === 'error' ? [] : [kind.code]));
const LIMITED_CODES = FINDING_KINDS.flatMap((kind) => (kind.threshold ? [kind.code] : []));

function rangeIn(services: SlatCoreServices, at: Origin): TextRange | undefined {
  const document = services.shared.workspace.LangiumDocuments.getDocument(URI.parse(at.uri));
  return document && pathHeadRange(document, at.path);
}

function useFindings(document: LangiumDocument, use: UseResult): Finding[] {
  const at: Origin = { uri: document.uri.toString(), path: use.at, why: 'stated' };
  const found: Finding[] = [];
  if (use.problem) found.push({ at, ...useProblem(use.path, use.problem) });
  if (use.cycle) {
    const way = [...use.cycle, use.cycle[0] ?? '']
      .map((uri) => uri.slice(uri.lastIndexOf('/') + 1))
      .join(' > ');
    const args: TextArgs['use-circular'] = { path: use.path, way };
    found.push({ code: 'use-circular', at, args: { ...args } });
  }
  return found;
}

function useProblem(
  path: string,
  problem: NonNullable<UseResult['problem']>,
): Pick<Finding, 'code' | 'args'> {
  switch (problem) {
    case 'outside':
      return { code: 'use-outside', args: { path } };
    case 'too-many':
    case 'too-deep':
      return { code: 'use-limit', args: { path, reason: problem } };
    default:
      return { code: 'use-missing', args: { path, reason: problem } };
  }
}
