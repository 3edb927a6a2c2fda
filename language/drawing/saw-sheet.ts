import { FONT_STACK, PAPER } from './paper-theme.ts';
import { escapeXml } from './write-svg.ts';

/** What is drawn on a sheet goes from 10 to 10 more than this, in millimeters. */
export const SHEET_WIDTH = 277;

export const tenth = (x: number): number => Math.round(x * 10) / 10;

/** A sheet as wide as A4 laid on its side, in millimeters, with its title. */
export function sawSheet(title: string, height: number, drawn: readonly string[]): string {
  const wide = SHEET_WIDTH + 20;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}mm" height="${height}mm" viewBox="0 0 ${wide} ${height}" font-family="${FONT_STACK}" fill="${PAPER.text}">`,
    `<rect width="100%" height="100%" fill="${PAPER.sheet}"/>`,
    `<text x="10" y="11" font-size="5.2" font-weight="600">${escapeXml(title)}</text>`,
    ...drawn,
    '</svg>\n',
  ].join('\n');
}
