/**
 * Findings: one file each (or a close family) with its page and its test beside it, and one registry
 * of code, severity, message and basis.
 *
 * Lives here: judgment. Does not live here: geometry (layout/), text positions (resolved at the edge).
 */
export type * from './finding.ts';
