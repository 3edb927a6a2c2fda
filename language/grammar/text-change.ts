/** A change of the text: put `text` at the statement `at`, or as a new last statement of the block `at`. */
export interface TextChange {
  readonly uri: string;
  readonly path: string;
  readonly place: 'replace' | 'append';
  readonly text: string;
}
