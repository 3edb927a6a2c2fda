import type { Piece, RunLayout } from '../layout/index.ts';
import { floorToStep, type Measure, type Ticks } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';
import type { Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';

/** All in letters: from line to line, from column to column, and between two tables. */
const LINE = 1.5;
const APART = 1;
const BETWEEN = 0.8;

const HEADS = ['from its foot', 'wide'] as const;

/** What a scribed board is cut to: a line that says of what, and its widths at heights above its foot. */
export interface Taper {
  readonly title: string;
  readonly columns: readonly { readonly up: string; readonly wide: string }[];
}

/**
 * The taper of a scribed board; undefined for any other piece. Widths are rounded down to marks of the tape.
 */
export function taperOf({ label, key, cut }: Piece, measure: Measure): Taper | undefined {
  if (!cut.scribe) return undefined;
  const shown = (ticks: Ticks) => dimensionText(floorToStep(ticks, measure.step), measure);
  const edge = key.endsWith('start') ? 'left' : 'right';
  const widths = cut.scribe.map(({ width }) => width);
  return {
    title:
      `${label}: ${cut.stock} ripped to ${dimensionText(cut.width, measure)}, ${dimensionText(cut.longPoint, measure)} long, ` +
      `${edge} edge scribed to the wall, narrowest ${shown(Math.min(...widths))}`,
    columns: cut.scribe.map(({ at, width }) => ({ up: dimensionText(at, measure), wide: shown(width) })),
  };
}

/** A taper in one line, empty where there is none: `0" 1-7/16", 1' 8" 1-1/4"`, each from its foot and wide. */
export function taperLine(taper: Taper | undefined): string {
  return taper?.columns.map(({ up, wide }) => `${up} ${wide}`).join(', ') ?? '';
}

/** The tapers of a run's fillers as tables, from `y` down, no wider than from `x0` to `x1` where a column allows. */
export function taperTables(
  run: RunLayout,
  x0: number,
  x1: number,
  y: number,
  measure: Measure,
  letter: number,
): Part | undefined {
  const labels: Label[] = [];
  let [line, right] = [y, x0];
  const text = (key: string, words: string, x: number, priority: number) => {
    labels.push({
      key,
      text: words,
      x: hundredth(x),
      y: hundredth(line),
      anchor: 'start',
      turn: 0,
      shift: [0, 0],
      kind: 'note',
      priority,
      room: 0,
      roomFor: 'length',
    });
    right = Math.max(right, x + textWidth(words) * letter);
  };
  for (const piece of run.pieces) {
    const taper = piece.role === 'filler' ? taperOf(piece, measure) : undefined;
    if (!taper) continue;
    line += (labels.length > 0 ? BETWEEN + LINE : LINE) * letter;
    text(`${piece.key}/taper`, taper.title, x0, 2);
    const head = (Math.max(...HEADS.map(textWidth)) + APART) * letter;
    const wide = Math.max(...taper.columns.flatMap(({ up, wide: width }) => [up, width].map(textWidth)));
    const column = (wide + APART) * letter;
    const each = Math.max(1, Math.floor((x1 - x0 - head) / column));
    for (let first = 0; first < taper.columns.length; first += each) {
      const row = taper.columns.slice(first, first + each);
      for (const [index, cell] of HEADS.entries()) {
        line += LINE * letter;
        text(`${piece.key}/taper/${first}-${index}`, cell, x0, 3);
        for (const [i, { up, wide: width }] of row.entries())
          text(
            `${piece.key}/taper/${first + i}-${index}-cell`,
            index === 0 ? up : width,
            x0 + head + i * column,
            3,
          );
      }
    }
  }
  if (labels.length === 0) return undefined;
  return { groups: [], labels, bounds: [x0, y, right, line + 0.5 * letter] };
}
