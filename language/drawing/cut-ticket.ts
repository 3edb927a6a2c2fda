import { formatLength, type Measure, roundToStep, type Ticks, toMm } from '../units/index.ts';
import { PAPER } from './paper-theme.ts';
import { sawSheet, tenth, SHEET_WIDTH as WIDTH } from './saw-sheet.ts';
import { pieceOnBoard, type TicketEnd, type TicketPlace } from './ticket-piece.ts';
import { offcutText, textWithin } from './ticket-text.ts';
import { wrapText } from './wrap-text.ts';
import { escapeXml } from './write-svg.ts';

/** A board to be cut, and how often. */
export interface TicketBoard {
  readonly times: number;
  /** Where it is not bought, or not the stock of the sheet. */
  readonly stock?: string;
  readonly length: Ticks;
  readonly width: Ticks;
  /** In the order they are crosscut. */
  readonly parts: readonly TicketPart[];
  readonly offcut: Ticks;
  /** Whether the offcut is worth keeping. */
  readonly keep: boolean;
  readonly kerf: Ticks;
}

/** A piece as wide as the board, or a part ripped into strips. */
export interface TicketPart {
  readonly length: Ticks;
  /** Its tip, from the start of the board. */
  readonly at: Ticks;
  readonly ripped: boolean;
  /** Where its pieces belong, in a job in which labels alone do not tell. */
  readonly of?: string;
  readonly strips: readonly {
    readonly width: Ticks;
    readonly pieces: readonly TicketPiece[];
  }[];
}

export interface TicketPiece {
  readonly label: string;
  /** From tip to tip. */
  readonly length: Ticks;
  /** Its tip, from the start of the part. */
  readonly at: Ticks;
  readonly mitered: boolean;
  /** As it lies, the first toward the start of the board; where they are drawn otherwise than square. */
  readonly ends?: readonly [TicketEnd, TicketEnd];
}

/** A sheet for the saw: what is drawn on it. */
export interface Ticket {
  readonly title: string;
  readonly notes: readonly string[];
  readonly boards: readonly TicketBoard[];
}

/** Below each bar, for the lengths of its parts; and further down for what is ripped. */
const BELOW = 10;
const RIP_LINE = 4.5;
const BAR = 7;
/** Size of the letters of notes. */
const NOTE = 3.4;
/** Of a board that is ripped, for each strip side by side. */
const STRIP = 5;
/** Boxes to tick in a row; there is room for two rows, and more boards than that are counted instead. */
const BOXES = 12;

/**
 * Boards drawn as bars to one scale on a sheet as wide as A4 laid on its side, in millimeters: each with its pieces in
 * the order of cutting, their labels and lengths, what is left behind them, and a box to tick for each time it is cut.
 */
export function ticketSheet({ title, notes, boards }: Ticket, measure: Measure): string {
  const longest = Math.max(1, ...boards.map(({ length }) => toMm(length)));
  const scale = (WIDTH - 62) / longest;
  const written = notes.flatMap((note) => wrapText(note, WIDTH / NOTE));
  const top = 16 + 5 * written.length;
  let y = top;
  const rows = boards.map((board) => {
    const row = rowOf(board, y, scale, measure);
    y += barOf(board) + BELOW + RIP_LINE * ripsOf(board, measure).length;
    return row;
  });
  const height = y + 8;
  const lines = written.map(
    (note, at) => `<text x="10" y="${17 + 5 * at}" font-size="${NOTE}">${escapeXml(note)}</text>`,
  );
  return sawSheet(title, height, [...lines, ...rows]);
}

const barOf = ({ parts }: TicketBoard): number =>
  Math.max(BAR, ...parts.map(({ strips }) => STRIP * strips.length));

/** What is ripped of a board, in words, alike parts once. */
function ripsOf({ parts }: TicketBoard, measure: Measure): readonly string[] {
  const shown = (ticks: Ticks) => formatLength(Math.floor(ticks), measure);
  const texts = parts
    .filter(({ ripped }) => ripped)
    .map(({ length, strips }) => {
      const widths = new Map<Ticks, number>();
      for (const { width } of strips) widths.set(width, (widths.get(width) ?? 0) + 1);
      const into = [...widths].map(([width, count]) => `${count} × ${shown(width)}`).join(' and ');
      return `rip ${shown(length)} into ${into}`;
    });
  return [...new Set(texts)].map((text) => {
    const many = texts.filter((one) => one === text).length;
    return many > 1 ? `${text}, ${many} times` : text;
  });
}

const X0 = 56;

function rowOf(board: TicketBoard, y: number, scale: number, measure: Measure): string {
  const { times, stock, length, parts, offcut, keep } = board;
  const shown = (ticks: Ticks) => formatLength(Math.floor(ticks), measure);
  const bar = barOf(board);
  const out: string[] = [
    `<text x="10" y="${y + 5}" font-size="4.4" font-weight="600">${times} ×</text>`,
    `<text x="24" y="${y + 5}" font-size="4">${escapeXml(shown(length))}</text>`,
    ...(stock === undefined
      ? []
      : [`<text x="24" y="${tenth(y + 9.6)}" font-size="3">${escapeXml(stock)}</text>`]),
    ...Array.from(
      { length: times <= 2 * BOXES ? times : 0 },
      (_, i) =>
        `<rect x="${tenth(10 + (i % BOXES) * 3.4)}" y="${tenth(y + (stock === undefined ? 8 : 11) + Math.floor(i / BOXES) * 3.4)}" width="2.6" height="2.6" fill="none" stroke="${PAPER.ink.dimension}" stroke-width="0.2"/>`,
    ),
    `<rect x="${X0}" y="${tenth(y)}" width="${tenth(toMm(length) * scale)}" height="${bar}" fill="${PAPER.sheet}" stroke="${PAPER.ink.light}" stroke-width="0.25"/>`,
  ];
  const hidden: string[] = [];
  for (const part of parts) {
    const place = { x: X0 + toMm(part.at) * scale, y, high: bar, scale };
    const drawn = part.ripped ? rippedPart(board, part, place, measure) : wholePart(part, place, shown);
    out.push(drawn.outline);
    if (drawn.hidden) hidden.push(drawn.hidden);
  }
  out.push(...hidden);
  if (roundToStep(Math.floor(offcut), measure.step) > 0) {
    const text = `${keep ? 'keep' : 'left'} ${shown(offcut)}`;
    out.push(offcutText(text, X0 + toMm(length) * scale, toMm(offcut) * scale, y + bar / 2));
  }
  for (const [at, text] of ripsOf(board, measure).entries())
    out.push(
      `<text x="${X0}" y="${tenth(y + bar + 8 + at * RIP_LINE)}" font-size="3.2">${escapeXml(text)}</text>`,
    );
  return out.join('\n');
}

/** What is drawn of a part, and what of it is drawn over others. */
interface Drawn {
  readonly outline: string;
  readonly hidden: string;
}

function wholePart(
  { length, strips, of }: TicketPart,
  place: TicketPlace,
  shown: (ticks: Ticks) => string,
): Drawn {
  const { x, y, high, scale } = place;
  const wide = toMm(length) * scale;
  const piece = strips[0]?.pieces[0];
  const { outline, hidden } = pieceOnBoard(length, piece?.ends, place);
  const texts = [
    outline,
    textWithin(piece?.label ?? '', x, wide, y + high / 2 + 1.3, 3.4),
    textWithin(
      `${shown(length)}${piece?.mitered ? ' miter' : ''}${belonging(of)}`,
      x - 0.5,
      wide + 1,
      y + high + 3.4,
      3,
    ),
  ];
  return { outline: texts.join('\n'), hidden };
}

const belonging = (of: string | undefined): string => (of === undefined ? '' : `, ${of}`);

/** Strips side by side, as high as they are wide; what is left of the board's width stays open. */
function rippedPart(
  board: TicketBoard,
  { length, strips, of }: TicketPart,
  { x, y, scale }: TicketPlace,
  measure: Measure,
): Drawn {
  const shown = (ticks: Ticks) => formatLength(Math.floor(ticks), measure);
  const across = barOf(board) / Math.max(1, toMm(board.width));
  const wide = toMm(length) * scale;
  const out = [textWithin(`${shown(length)}${belonging(of)}`, x - 0.5, wide + 1, y + barOf(board) + 3.4, 3)];
  const hidden: string[] = [];
  let top = y;
  for (const { width, pieces } of strips) {
    const high = toMm(width) * across;
    for (const piece of pieces) {
      const [left, long] = [x + toMm(piece.at) * scale, toMm(piece.length) * scale];
      const drawn = pieceOnBoard(piece.length, piece.ends, { x: left, y: top, high, scale });
      if (drawn.hidden) hidden.push(drawn.hidden);
      const short = piece.length === length ? '' : `, ${shown(piece.length)}`;
      out.push(
        drawn.outline,
        textWithin(
          `${piece.label}${short}${piece.mitered ? ' miter' : ''}`,
          left,
          long,
          top + high / 2 + 1,
          Math.min(3, high * 0.7),
        ),
      );
    }
    top += high + toMm(board.kerf) * across;
  }
  return { outline: out.join('\n'), hidden: hidden.join('\n') };
}
