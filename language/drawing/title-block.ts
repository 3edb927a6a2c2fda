import type { Measure } from '../units/index.ts';
import { TICKS_PER_MM } from '../units/index.ts';
import { unitNote } from './dimension-text.ts';
import type { Part } from './part.ts';
import { hundredth } from './path-text.ts';
import { sizeOf } from './place-labels.ts';
import { scaleBar, scaleBarLength } from './scale-bar.ts';
import { textWidth } from './text-width.ts';

/** What a view is, in words. */
export interface Titles {
  readonly title: string;
  /** Second line, in smaller letters. */
  readonly notes: readonly string[];
}

/** Title, notes and scale bar in a row under the drawing, or one under the other where it is narrow. */
export function titleBlock(
  prefix: string,
  titles: Titles,
  x0: number,
  x1: number,
  y: number,
  measure: Measure,
  letter: number,
): Part {
  const note = [...titles.notes, unitNote(measure)].filter((text) => text !== '').join(', ');
  const size = sizeOf('title', letter);
  const width = Math.max(textWidth(titles.title) * size, textWidth(note) * letter);
  const bar = scaleBarLength(measure, letter) / TICKS_PER_MM;
  const beside = x0 + width + 2 * letter + bar + 2 * letter <= x1;
  const titleY = y + size;
  const noteY = titleY + 1.6 * letter;
  const scale = beside
    ? scaleBar(prefix, x1 - bar, noteY - 0.32 * letter, measure, letter)
    : scaleBar(prefix, x0, noteY + 2.9 * letter, measure, letter);
  const common = {
    x: hundredth(x0),
    anchor: 'start',
    turn: 0,
    shift: [0, 0],
    room: 0,
    roomFor: 'length',
  } as const;
  return {
    groups: scale.groups,
    labels: [
      {
        ...common,
        key: `${prefix}/title`,
        text: titles.title,
        y: hundredth(titleY),
        kind: 'title',
        priority: 0,
      },
      { ...common, key: `${prefix}/note`, text: note, y: hundredth(noteY), kind: 'note', priority: 1 },
      ...scale.labels,
    ],
    bounds: [x0, y, Math.max(x0 + width, scale.bounds[2]), Math.max(noteY + 0.3 * letter, scale.bounds[3])],
  };
}
