import { type Ticks, toMm } from '../units/index.ts';
import { PAPER } from './paper-theme.ts';
import { tenth } from './saw-sheet.ts';

/** How far the cut of an end goes along the board over the width (down the sheet), and through the thickness. */
export interface TicketEnd {
  readonly across: Ticks;
  readonly through: Ticks;
}

/** Where a piece is drawn, in millimeters of the sheet, and how many of them a millimeter along the board is. */
export interface TicketPlace {
  readonly x: number;
  readonly y: number;
  readonly high: number;
  readonly scale: number;
}

/** Along the board, from the tip, each in millimeters of the sheet. */
type Edge = readonly [top: number, bottom: number];

/**
 * A piece as it lies, seen from above: the outline of its upper face; and dashed, to be drawn over its neighbors too, where
 * its lower face ends otherwise. Square ones are plain boxes.
 */
export function pieceOnBoard(
  length: Ticks,
  ends: readonly [TicketEnd, TicketEnd] | undefined,
  { x, y, high, scale }: TicketPlace,
): { readonly outline: string; readonly hidden: string } {
  const fill = `fill="${PAPER.fill.wood}" stroke="${PAPER.ink.object}" stroke-width="0.3"`;
  const wide = toMm(length) * scale;
  if (!ends)
    return {
      outline: `<rect x="${tenth(x)}" y="${tenth(y)}" width="${tenth(wide)}" height="${tenth(high)}" ${fill}/>`,
      hidden: '',
    };
  const edge = (end: TicketEnd, from: number, through: 0 | 1): Edge => {
    const along = (across: 0 | 1) =>
      from + toMm(end.across * (across - 0.5) + end.through * (through - 0.5)) * scale;
    return [along(0), along(1)];
  };
  const tip = (end: TicketEnd) => (toMm(Math.abs(end.across) + Math.abs(end.through)) * scale) / 2;
  const [from, to] = [x + tip(ends[0]), x + wide - tip(ends[1])];
  const [first, second] = [edge(ends[0], from, 0), edge(ends[1], to, 0)];
  const dashed = [
    ...(ends[0].through === 0 ? [] : [edge(ends[0], from, 1)]),
    ...(ends[1].through === 0 ? [] : [edge(ends[1], to, 1)]),
  ];
  const foot = y + high;
  const outline = `M${fine(first[0])} ${fine(y)}H${fine(second[0])}L${fine(second[1])} ${fine(foot)}H${fine(first[1])}Z`;
  const lines = dashed.map(([top, bottom]) => `M${fine(top)} ${fine(y)}L${fine(bottom)} ${fine(foot)}`);
  return {
    outline: `<path d="${outline}" ${fill}/>`,
    hidden:
      lines.length === 0
        ? ''
        : `<path d="${lines.join('')}" fill="none" stroke="${PAPER.ink.object}" stroke-width="0.2" stroke-dasharray="0.8 0.5"/>`,
  };
}

const fine = (x: number): number => Math.round(x * 100) / 100;
