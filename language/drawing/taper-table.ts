import type { RunLayout } from '../layout/index.ts';
import type { Measure } from '../units/index.ts';
import type { Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { alikeTapers } from './taper.ts';
import { textWidth } from './text-width.ts';
import type { Label } from './view.ts';
import { wrapText } from './wrap-text.ts';

/** All in letters: from line to line, from column to column, and between two tables. */
const LINE = 1.5;
const APART = 1;
const BETWEEN = 0.8;
/** Lines are not broken to be shorter than this. */
const SHORTEST = 30;

/**
 * The tapers of a run's boards as tables, alike ones in one, from `y` down, no wider than from `x0` to `x1`
 * where that is room enough to read them in.
 */
export function taperTables(
  run: RunLayout,
  x0: number,
  x1: number,
  y: number,
  measure: Measure,
  letter: number,
): Part | undefined {
  const labels: Label[] = [];
  const room = Math.max(SHORTEST * letter, x1 - x0);
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
  for (const { pieces, taper } of alikeTapers(run.pieces, measure)) {
    const key = `${pieces[0]?.key}/taper`;
    const heads = [taper.from, 'wide'];
    if (labels.length > 0) line += BETWEEN * letter;
    const title = `${pieces.map(({ label }) => label).join(', ')}: ${taper.title}`;
    for (const [index, words] of wrapText(title, room / letter).entries()) {
      line += LINE * letter;
      text(index === 0 ? key : `${key}/title-${index}`, words, x0, 2);
    }
    const head = (Math.max(...heads.map(textWidth)) + APART) * letter;
    const wide = Math.max(...taper.columns.flatMap((one) => [one.at, one.wide].map(textWidth)));
    const column = (wide + APART) * letter;
    const each = Math.max(1, Math.floor((room - head) / column));
    for (let first = 0; first < taper.columns.length; first += each) {
      const row = taper.columns.slice(first, first + each);
      for (const [index, cell] of heads.entries()) {
        line += LINE * letter;
        text(`${key}/${first}-${index}`, cell, x0, 3);
        for (const [i, one] of row.entries())
          text(
            `${key}/${first + i}-${index}-cell`,
            index === 0 ? one.at : one.wide,
            x0 + head + i * column,
            3,
          );
      }
    }
  }
  if (labels.length === 0) return undefined;
  return { groups: [], labels, bounds: [x0, y, right, line + 0.5 * letter] };
}
