import { formatLength, type Measure, type Ticks, toMm } from '../units/index.ts';
import { FONT_STACK, PAPER } from './paper-theme.ts';
import { textWidth } from './text-width.ts';
import { escapeXml } from './write-svg.ts';

/** A board to be cut, and how often. */
export interface TicketBoard {
  readonly times: number;
  readonly length: Ticks;
  /** In the order they are cut. */
  readonly pieces: readonly { readonly label: string; readonly length: Ticks; readonly mitered: boolean }[];
  readonly offcut: Ticks;
  readonly kerf: Ticks;
}

/** A sheet for the saw: what is drawn on it. */
export interface Ticket {
  readonly title: string;
  readonly notes: readonly string[];
  readonly boards: readonly TicketBoard[];
}

const WIDTH = 277;
const ROW = 17;
const BAR = 7;
/** Boxes to tick in a row; there is room for two rows, and more boards than that are counted instead. */
const BOXES = 12;
const tenth = (x: number): number => Math.round(x * 10) / 10;

/** A sheet as wide as A4 laid on its side, in millimeters, with its title. */
function sheet(title: string, height: number, drawn: readonly string[]): string {
  const wide = WIDTH + 20;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${wide}mm" height="${height}mm" viewBox="0 0 ${wide} ${height}" font-family="${FONT_STACK}" fill="${PAPER.text}">`,
    `<rect width="100%" height="100%" fill="${PAPER.sheet}"/>`,
    `<text x="10" y="11" font-size="5.2" font-weight="600">${escapeXml(title)}</text>`,
    ...drawn,
    '</svg>\n',
  ].join('\n');
}

/**
 * Boards drawn as bars to one scale on a sheet as wide as A4 laid on its side, in millimeters: each with its pieces in
 * the order of cutting, their labels and lengths, what is left behind them, and a box to tick for each time it is cut.
 */
export function ticketSheet({ title, notes, boards }: Ticket, measure: Measure): string {
  const longest = Math.max(1, ...boards.map(({ length }) => toMm(length)));
  const scale = (WIDTH - 62) / longest;
  const top = 16 + 5 * notes.length;
  const height = top + ROW * boards.length + 8;
  const rows = boards.map((board, at) => rowOf(board, top + at * ROW, scale, measure));
  const lines = notes.map(
    (note, at) => `<text x="10" y="${17 + 5 * at}" font-size="3.4">${escapeXml(note)}</text>`,
  );
  return sheet(title, height, [...lines, ...rows]);
}

function rowOf(
  { times, length, pieces, offcut, kerf }: TicketBoard,
  y: number,
  scale: number,
  measure: Measure,
): string {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const parts: string[] = [
    `<text x="10" y="${y + 5}" font-size="4.4" font-weight="600">${times} ×</text>`,
    `<text x="22" y="${y + 5}" font-size="4">${escapeXml(shown(length))}</text>`,
    ...Array.from(
      { length: times <= 2 * BOXES ? times : 0 },
      (_, i) =>
        `<rect x="${tenth(10 + (i % BOXES) * 3.4)}" y="${tenth(y + 8 + Math.floor(i / BOXES) * 3.4)}" width="2.6" height="2.6" fill="none" stroke="${PAPER.ink.dimension}" stroke-width="0.2"/>`,
    ),
  ];
  const x0 = 56;
  parts.push(
    `<rect x="${x0}" y="${y}" width="${tenth(toMm(length) * scale)}" height="${BAR}" fill="${PAPER.sheet}" stroke="${PAPER.ink.light}" stroke-width="0.25"/>`,
  );
  let x = x0;
  for (const { label, length: piece, mitered } of pieces) {
    const width = toMm(piece) * scale;
    const middle = tenth(x + width / 2);
    parts.push(
      `<rect x="${tenth(x)}" y="${y}" width="${tenth(width)}" height="${BAR}" fill="${PAPER.fill.wood}" stroke="${PAPER.ink.object}" stroke-width="0.3"/>`,
    );
    const size = Math.min(3.4, (width - 1) / Math.max(0.5, textWidth(label)));
    if (size > 1.2)
      parts.push(
        `<text x="${middle}" y="${y + 4.8}" font-size="${tenth(size)}" text-anchor="middle">${escapeXml(label)}</text>`,
      );
    const below = `${shown(piece)}${mitered ? ' miter' : ''}`;
    const small = Math.min(3, (width + 1) / Math.max(0.5, textWidth(below)));
    if (small > 1.2)
      parts.push(
        `<text x="${middle}" y="${y + BAR + 3.4}" font-size="${tenth(small)}" text-anchor="middle">${escapeXml(below)}</text>`,
      );
    x += width + toMm(kerf) * scale;
  }
  if (offcut > 0 && toMm(offcut) * scale > 12)
    parts.push(
      `<text x="${tenth(x0 + (toMm(length) - toMm(offcut) / 2) * scale)}" y="${y + 4.8}" font-size="3" fill="${PAPER.ink.dimension}" text-anchor="middle">left ${escapeXml(shown(offcut))}</text>`,
    );
  return parts.join('\n');
}

/** Labels to be cut out and stuck on pieces, in rows of six. */
export function labelSheet(
  title: string,
  labels: readonly { readonly label: string; readonly note: string }[],
): string {
  const columns = 6;
  const [wide, high] = [WIDTH / columns, 15];
  const height = 20 + high * Math.ceil(labels.length / columns);
  const cells = labels.map(({ label, note }, at) => {
    const [x, y] = [10 + (at % columns) * wide, 16 + Math.floor(at / columns) * high];
    return [
      `<rect x="${tenth(x)}" y="${y}" width="${tenth(wide)}" height="${high}" fill="none" stroke="${PAPER.ink.light}" stroke-width="0.15" stroke-dasharray="1 1"/>`,
      `<text x="${tenth(x + 3)}" y="${y + 6.5}" font-size="5" font-weight="600">${escapeXml(label)}</text>`,
      `<text x="${tenth(x + 3)}" y="${y + 11.5}" font-size="3.2">${escapeXml(note)}</text>`,
    ].join('\n');
  });
  return sheet(title, height, [...cells]);
}
