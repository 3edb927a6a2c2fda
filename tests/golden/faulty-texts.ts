import { readdirSync, readFileSync } from 'node:fs';

const folder = new URL('../../examples/faulty/', import.meta.url);

/** The faulty jobs and the files they use, by the path they are opened under. */
export const faultyTexts: Readonly<Record<string, string>> = Object.fromEntries(
  readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.slat'))
    .map((name) => [`/faulty/${name}`, readFileSync(new URL(name, folder), 'utf8')]),
);
