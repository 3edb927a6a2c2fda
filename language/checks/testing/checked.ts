import { type OpenJob, openJob, replaceText, textAfter } from '../../../tests/jobs/index.ts';
import { checkJob, checkRun, type Finding, type Fix, messageOf } from '../index.ts';

/**
 * A screen in which nothing is found: twelve slats of 3-1/2" and eleven gaps of 1/2" are 47-1/2" between
 * 2-1/2" and 50"; two bays of 54" are 72 times 3/4", which is
 * what boards span that end at every post.
 */
export const SOUND = `job "Sound" { measure inches to 1/16" }
material cedar { kind wood }
board slat { width 3-1/2"; thickness 3/4"; made of cedar; lengths 16' }
post stake { along 3-1/2"; through 3-1/2"; lengths 16' }
rail bar { width 3-1/2"; thickness 1-1/2"; lengths 16' }
cleat nib { width 3/4"; thickness 3/4" }
pattern rows { repeat slat; gap 1/2"; end anywhere }
run bank {
  length 118-1/2"
  posts stake, 2 bays
  height 50"; bottom 2-1/2"
  slats on front face; joints at every post
  fill rows
}
`;

/** What checks find in a text. */
export interface Checked {
  readonly open: OpenJob;
  readonly findings: readonly Finding[];
  readonly messages: readonly string[];
}

/** The sound screen with passages replaced, each of which must be there once. */
export function screen(...changes: readonly (readonly [passage: string, by: string])[]): string {
  return changes.reduce((text, [passage, by]) => replaceText(text, passage, by), SOUND);
}

/** All findings of a text that are not of the text itself; of one code when it is named. */
export async function checked(text: string, code?: string): Promise<Checked> {
  const open = await openJob(text);
  const all = [...checkJob(open.job), ...open.layout.runs.flatMap((run) => checkRun(run, open.job))];
  const findings = all.filter((finding) => code === undefined || finding.code === code);
  return { open, findings, messages: findings.map(messageOf) };
}

/** What is found after a fix. */
export function fixed({ open }: Checked, fix: Fix | undefined): Promise<Checked> {
  if (!fix) throw new Error('there is no such fix');
  return checked(textAfter(open.document, fix.changes));
}
