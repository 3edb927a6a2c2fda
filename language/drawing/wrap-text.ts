import { textWidth } from './text-width.ts';

/** A text in lines no longer than so many font sizes, broken at spaces; a longer word has a line of its own. */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const line = lines.at(-1);
    if (line !== undefined && textWidth(`${line} ${word}`) <= width)
      lines[lines.length - 1] = `${line} ${word}`;
    else lines.push(word);
  }
  return lines;
}
