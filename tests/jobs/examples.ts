import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const folder = fileURLToPath(new URL('../../examples/', import.meta.url));

/** A complete job of the examples, without its library. */
export interface Example {
  readonly name: string;
  /** Its address among {@link exampleTexts}. */
  readonly path: string;
  readonly text: string;
}

/** Every file of the examples and of their library by the path it is opened under. */
export const exampleTexts: Readonly<Record<string, string>> = Object.fromEntries(
  ['', 'library/'].flatMap((below) =>
    readdirSync(folder + below)
      .filter((name) => name.endsWith('.slat'))
      .map((name) => [`/examples/${below}${name}`, readFileSync(folder + below + name, 'utf8')]),
  ),
);

/** The jobs of the examples. */
export const examples: readonly Example[] = Object.entries(exampleTexts)
  .filter(([path]) => !path.startsWith('/examples/library/'))
  .map(([path, text]) => ({ name: path.replace(/^.*\/|\.slat$/g, ''), path, text }));
