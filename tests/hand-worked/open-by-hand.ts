import { readFileSync } from 'node:fs';
import { type OpenJob, openJob, replaceText } from '../jobs/index.ts';

/** A job of this folder, with passages replaced, each of which must be there once. */
export function openByHand(
  name: string,
  ...changes: readonly (readonly [passage: string, by: string])[]
): Promise<OpenJob> {
  const text = readFileSync(new URL(`./${name}.slat`, import.meta.url), 'utf8');
  return openJob(changes.reduce((all, [passage, by]) => replaceText(all, passage, by), text));
}
