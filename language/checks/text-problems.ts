import { LANGUAGE } from './define.ts';
import { defineFamily } from './family.ts';
import type { Basis } from './finding.ts';

/** What is wrong before anything can be read, with the values its message needs. */
export interface TextArgs {
  /** The parser's own sentence, made in grammar/. */
  readonly syntax: { readonly message: string };
  /** A name that nothing bears; the sentence is made in grammar/. */
  readonly 'unknown-name': { readonly message: string };
  readonly 'use-missing': { readonly path: string; readonly reason: string };
  readonly 'use-outside': { readonly path: string };
  readonly 'use-circular': { readonly path: string; readonly way: string };
  readonly 'use-limit': { readonly path: string; readonly reason: 'too-many' | 'too-deep' };
}

const WORKSPACE: Basis = { kind: 'language', source: 'files are read from the workspace only' };

/** Findings on the text itself and on the files it uses. */
export const textProblems = defineFamily<TextArgs>('text', LANGUAGE, {
  syntax: { message: (a) => a.message },
  'unknown-name': { message: (a) => a.message },
  'use-missing': {
    message: (a) => `Nothing can be used from "${a.path}": ${REASONS[a.reason] ?? 'it cannot be read'}.`,
  },
  'use-outside': {
    basis: WORKSPACE,
    message: (a) => `"${a.path}" is outside the folders that are open. Move the file in, or open its folder.`,
  },
  'use-circular': {
    severity: 'warning',
    message: (a) =>
      `This use comes back to where it began: ${a.way}. Take one of them out; move what both need to a third file.`,
  },
  'use-limit': {
    message: (a) =>
      a.reason === 'too-many'
        ? `"${a.path}" brings in more files than are read for one job. Use fewer.`
        : `"${a.path}" is used through too long a chain of files. Use it directly.`,
  },
});

const REASONS: Readonly<Record<string, string>> = {
  empty: 'no file is named',
  missing: 'there is no such file',
  directory: 'it is a folder; name a file that ends in .slat',
  unreadable: 'it cannot be read',
  'not-slat': 'only files that end in .slat can be used',
};
