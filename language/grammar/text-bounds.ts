/** Greatest length of a file in characters, and of one line of it. A long job has some ten thousand. */
export const LONGEST_FILE = 200_000;
export const LONGEST_LINE = 2_000;

/** A stretch of a text that is too long to be read. */
export interface Unread {
  readonly from: number;
  readonly to: number;
  readonly message: string;
}

/**
 * What a text has beyond the bounds is blanked, so that places stay what they are and no text can keep
 * the lexer busy for long.
 */
export function boundText(text: string): { text: string; unread: Unread[] } {
  const unread: Unread[] = [];
  if (text.length <= LONGEST_LINE) return { text, unread };
  for (const { 0: line, index } of text.slice(0, LONGEST_FILE).matchAll(/[^\r\n]+/g)) {
    if (line.length <= LONGEST_LINE) continue;
    const message = `This line is longer than ${LONGEST_LINE} characters; the rest of it is not read.`;
    unread.push({ from: index + LONGEST_LINE, to: index + line.length, message });
  }
  if (text.length > LONGEST_FILE) {
    const message = `This file is longer than ${LONGEST_FILE} characters; the rest is not read. Split it and join the parts with use.`;
    unread.push({ from: LONGEST_FILE, to: text.length, message });
  }
  let bounded = '';
  let place = 0;
  for (const { from, to } of unread) {
    bounded += text.slice(place, from) + text.slice(from, to).replace(/[^\r\n]/g, ' ');
    place = to;
  }
  return { text: bounded + text.slice(place), unread };
}
