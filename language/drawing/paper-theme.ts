import { hundredth } from './path-text.ts';
import { type Fill, type Ink, PENS } from './pens.ts';

/** Colors of a theme; `sheet` is what lies under everything. */
export interface Theme {
  readonly sheet: string;
  readonly text: string;
  readonly ink: Readonly<Record<Exclude<Ink, 'none'>, string>>;
  readonly fill: Readonly<Record<Exclude<Fill, 'none'>, string>>;
}

/** Black and gray on white, wood in a light neutral tint: prints well without color. */
export const PAPER: Theme = {
  sheet: '#ffffff',
  text: '#1c1c1c',
  ink: { object: '#1c1c1c', light: '#6a6a6a', dimension: '#4a4a4a' },
  fill: {
    wood: '#e9e4d9',
    'wood-light': '#f1eee6',
    'wood-dark': '#d6cfc0',
    cut: '#e4dccb',
    post: '#c9c3b6',
    ink: '#1c1c1c',
    warn: '#f3e3df',
    place: '#bcd3e6',
  },
};

/** Any plain sans: every system has one, and none is shipped. */
export const FONT_STACK = 'system-ui, Segoe UI, Roboto, Helvetica Neue, Arial, sans-serif';

/** Style rules of a theme for letters of a size, for an SVG that stands alone. */
export function styleSheet(theme: Theme, letter: number): string {
  const rules = Object.entries(PENS).map(([style, pen]) => {
    const fill = pen.fill === 'none' ? 'none' : theme.fill[pen.fill];
    const stroke = pen.ink === 'none' ? 'none' : theme.ink[pen.ink];
    const dash = pen.dash ? `;stroke-dasharray:${pen.dash.map((n) => hundredth(n * letter)).join(' ')}` : '';
    return `.pen-${style}{fill:${fill};stroke:${stroke};stroke-width:${hundredth(pen.weight * letter)}${dash}}`;
  });
  const thin = `fill:none;stroke:${theme.ink.dimension};stroke-width:${hundredth(0.045 * letter)}`;
  return [
    ...rules,
    `.pen-leader,.pen-ring{${thin}}`,
    `text{font-family:${FONT_STACK};fill:${theme.text}}`,
    '.label-title{font-weight:600}',
    'path{stroke-linejoin:round;stroke-linecap:butt}',
  ].join('\n');
}
