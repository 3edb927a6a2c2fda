/**
 * Findings as diagnostics: what an editor shows in the text and lists as problems.
 *
 * Lives here: the way to the protocol. Does not live here: where a finding stands in the text
 * (work/place-findings.ts, which the command line uses too), judgment (language/checks).
 */
export { dataOf, type FindingData, toDiagnostic } from './diagnostics.ts';
export { SlatValidator } from './validator.ts';
