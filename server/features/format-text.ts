import type { TextDocument } from 'langium';
import type { TextEdit } from 'vscode-languageserver-types';

/** A token or a comment, as far as layout of the text goes. */
export interface Word {
  readonly offset: number;
  readonly image: string;
  readonly kind: 'token' | 'comment';
  /** Begins a statement or an element. */
  readonly begins: boolean;
  /** A statement ends between the token before and this one. */
  readonly ended: boolean;
}

/** Between statements in one line. */
const APART = '    ';

/**
 * Edits that lay a text out: blocks indented, one space between words, statements in one line set
 * apart, at most one blank line. Lines stay the lines they are, and only white space is touched.
 */
export function layOutText(text: TextDocument, words: readonly Word[], step: string): TextEdit[] {
  const whole = text.getText();
  const eol = /\r\n|\r|\n/.exec(whole)?.[0] ?? '\n';
  const edits: TextEdit[] = [];
  const put = (from: number, to: number, newText: string) => {
    if (whole.slice(from, to) === newText) return;
    edits.push({ range: { start: text.positionAt(from), end: text.positionAt(to) }, newText });
  };
  let depth = 0;
  let parentheses = 0;
  let end = 0;
  let before: Word | undefined;
  for (const [index, word] of words.entries()) {
    const gap = whole.slice(end, word.offset);
    if (word.image === '}') depth = Math.max(0, depth - 1);
    if (word.image === ')') parentheses = Math.max(0, parentheses - 1);
    const goesOn = parentheses > 0 || !(nextToken(words, index)?.ended ?? true);
    const indent = step.repeat(depth + (goesOn ? 1 : 0));
    put(end, word.offset, before ? between(gap, before, word, indent, eol) : atStart(gap, indent, eol));
    if (word.image === '{') depth++;
    if (word.image === '(') parentheses++;
    end = word.offset + word.image.length;
    before = word;
  }
  const rest = whole.slice(end);
  if (before) put(end, whole.length, semicolons(rest) + eol);
  return edits;
}

/** A comment before a line that goes on goes on with it. */
function nextToken(words: readonly Word[], from: number): Word | undefined {
  for (let at = from; at < words.length; at++) if (words[at]?.kind === 'token') return words[at];
  return undefined;
}

function between(gap: string, before: Word, word: Word, indent: string, eol: string): string {
  const lines = gap.split(/\r\n|\r|\n/);
  if (lines.length === 1) return inLine(gap, before, word);
  const first = semicolons(lines[0] ?? '');
  const last = semicolons(lines.at(-1) ?? '');
  const inner = lines.slice(1, -1).map(semicolons);
  const kept = inner.filter((line) => line !== '').map((line) => `${eol}${indent}${line}`);
  // A blank line stays one, except behind an opening brace and before a closing one.
  const blank = inner.includes('') && before.image !== '{' && word.image !== '}' ? eol : '';
  return `${first}${kept.join('')}${blank}${eol}${indent}${last === '' ? '' : `${last} `}`;
}

function inLine(gap: string, before: Word, word: Word): string {
  const marks = semicolons(gap);
  if (word.kind === 'comment') {
    // Comments at the ends of lines may stand in a column of their own.
    const column = /^ +$/.test(gap) ? gap : ' ';
    return marks === '' ? column : `${marks} `;
  }
  if (marks !== '') return `${marks} `;
  if (before.kind === 'comment') return ' ';
  if (word.image === '°') return '';
  if (
    word.image === ',' ||
    word.image === ':' ||
    word.image === ')' ||
    word.image === '(' ||
    before.image === '('
  )
    return '';
  if (word.begins && before.image !== '{') return APART;
  return ' ';
}

function atStart(gap: string, indent: string, eol: string): string {
  const marks = semicolons(gap);
  return marks === '' ? indent : `${marks}${gap.includes(eol) ? eol : ' '}`;
}

function semicolons(gap: string): string {
  return gap.replace(/[^;]/g, '');
}
