import { readFileSync } from 'node:fs';

/** Realistic files of 40 to 80 lines. */
export const TEXTS: readonly { readonly name: string; readonly text: string }[] = [
  'signal-box',
  'roof-laundry',
  'beehives',
].map((name) => ({ name, text: readFileSync(new URL(`./texts/${name}.slat`, import.meta.url), 'utf8') }));
