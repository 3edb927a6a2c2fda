import type { Style } from './view.ts';

/** What a theme gives a color to. */
export type Ink = 'object' | 'light' | 'dimension' | 'none';
export type Fill = 'wood' | 'wood-dark' | 'wood-light' | 'cut' | 'post' | 'ink' | 'warn' | 'place' | 'none';

/** How a style is drawn: weight of its line as a share of the letters' size, dashes in letters. */
export interface Pen {
  readonly weight: number;
  readonly ink: Ink;
  readonly fill: Fill;
  readonly dash?: readonly number[];
}

/**
 * One table of pens for every theme. Objects are heavier than dimensions; slats are drawn finer than
 * what carries them, so that a gap of half an inch still reads as a gap.
 */
export const PENS: Readonly<Record<Style, Pen>> = {
  ground: { weight: 0.15, ink: 'object', fill: 'none' },
  hatch: { weight: 0.045, ink: 'object', fill: 'none' },
  slat: { weight: 0.05, ink: 'object', fill: 'wood' },
  'slat-cut': { weight: 0.05, ink: 'object', fill: 'cut' },
  'slat-far': { weight: 0.035, ink: 'light', fill: 'wood-light' },
  post: { weight: 0.085, ink: 'object', fill: 'post' },
  'post-buried': { weight: 0.05, ink: 'object', fill: 'none', dash: [0.55, 0.3] },
  cleat: { weight: 0.045, ink: 'object', fill: 'wood-dark' },
  rail: { weight: 0.06, ink: 'object', fill: 'wood-dark' },
  frame: { weight: 0.06, ink: 'object', fill: 'wood-dark' },
  brace: { weight: 0.06, ink: 'object', fill: 'wood-dark' },
  trim: { weight: 0.05, ink: 'object', fill: 'wood-light' },
  hidden: { weight: 0.045, ink: 'light', fill: 'none', dash: [0.4, 0.22] },
  leftover: { weight: 0.05, ink: 'light', fill: 'warn', dash: [0.3, 0.3] },
  dimension: { weight: 0.045, ink: 'dimension', fill: 'none' },
  tick: { weight: 0.09, ink: 'dimension', fill: 'none' },
  'scale-bar': { weight: 0.045, ink: 'dimension', fill: 'ink' },
  place: { weight: 0.05, ink: 'light', fill: 'place' },
  section: { weight: 0.1, ink: 'object', fill: 'cut' },
  swing: { weight: 0.05, ink: 'light', fill: 'none', dash: [1.1, 0.35] },
};
