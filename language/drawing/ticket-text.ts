import { PAPER } from './paper-theme.ts';
import { SHEET_WIDTH, tenth } from './saw-sheet.ts';
import { textWidth } from './text-width.ts';
import { escapeXml } from './write-svg.ts';

/** Smaller letters are not read beside a saw; and the smallest that is written at all. */
const READ = 2.2;
const LEAST = 1.2;
/** Size of letters where there is room, and how far below the middle of a bar they stand. */
const OFFCUT = 3;
const BELOW_MIDDLE = 1.1;
/** Clear of the ends of a place on both sides together. */
const CLEAR = 1;
/** Nothing is written beyond this. */
const RIGHT = 10 + SHEET_WIDTH + 7;

/**
 * A text in the middle of a place, as large as goes in; empty where that is too small. All in millimeters of a sheet
 * for the saw.
 */
export function textWithin(
  text: string,
  x: number,
  wide: number,
  y: number,
  largest: number,
  ink?: string,
): string {
  const size = Math.min(largest, (wide - CLEAR) / Math.max(0.5, textWidth(text)));
  if (size <= LEAST) return '';
  return `<text x="${tenth(x + wide / 2)}" y="${tenth(y)}" font-size="${floorTenth(size)}"${ink === undefined ? '' : ` fill="${ink}"`} text-anchor="middle">${escapeXml(text)}</text>`;
}

/** What is said of an offcut that ends at `end`: on it, else behind the board, where one that is short has no room. */
export function offcutText(text: string, end: number, wide: number, middle: number): string {
  const y = middle + BELOW_MIDDLE;
  if (wide - CLEAR >= READ * textWidth(text))
    return textWithin(text, end - wide, wide, y, OFFCUT, PAPER.ink.dimension);
  const size = Math.min(OFFCUT, (RIGHT - end - CLEAR) / textWidth(text));
  return `<text x="${tenth(end + CLEAR)}" y="${tenth(y)}" font-size="${floorTenth(size)}" fill="${PAPER.ink.dimension}">${escapeXml(text)}</text>`;
}

/** Letters are never larger than their place takes. */
const floorTenth = (x: number): number => Math.floor(x * 10 + 1e-6) / 10;
