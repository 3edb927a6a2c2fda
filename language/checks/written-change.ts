import type { TextChange } from '../layout/index.ts';
import type { Origin } from '../model/index.ts';

type Place = Pick<Origin, 'uri' | 'path'>;

/** The edit that puts a text in place of what is stated somewhere. */
export function replaceAt({ uri, path }: Place, text: string): TextChange {
  return { uri, path, place: 'replace', text };
}

/** The edit that puts a statement at the end of a block. */
export function appendTo({ uri, path }: Place, text: string): TextChange {
  return { uri, path, place: 'append', text };
}
