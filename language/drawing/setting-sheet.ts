import type { Piece, RunLayout } from '../layout/index.ts';
import { formatDegrees, formatLength, type Measure, type Ticks, toMm } from '../units/index.ts';
import { PAPER } from './paper-theme.ts';
import { sawSheet, tenth, SHEET_WIDTH as WIDTH } from './saw-sheet.ts';
import { settingPlan, settingView } from './setting-picture.ts';
import { textWidth } from './text-width.ts';
import { escapeXml } from './write-svg.ts';

/** What is said where posts are set. */
const CAUTIONS = [
  'Have buried lines marked before stakes are driven. Strips and braces stay until the concrete has set, as its maker says; then they come off and can be used again.',
];
const BAR = 5;
const ROW = 13;

/**
 * What sets the posts of a run, on a sheet as wide as A4 laid on its side, in millimeters: run and bracing from the front and
 * from above, each strip with its marks, and where every brace stands. Undefined where the run has none.
 */
export function settingSheet(title: string, run: RunLayout, measure: Measure): string | undefined {
  if (run.temporary.pieces.length === 0) return undefined;
  const front = settingView(run, measure, 16);
  const plan = settingPlan(run, front.bottom + 8);
  const strips = stripRows(run, plan.bottom + 12, measure);
  const braces = linesOf(run, measure);
  const lines = [...braces, ...CAUTIONS]
    .flatMap(wrapped)
    .map(
      (text, at) =>
        `<text x="10" y="${tenth(strips.bottom + 5 + 5 * at)}" font-size="3.4">${escapeXml(text)}</text>`,
    );
  const height = strips.bottom + 5 * (lines.length + 2);
  return sawSheet(title, Math.ceil(height), [front.svg, plan.svg, strips.svg, ...lines]);
}

/** Strips alike in length and marks, each once, with the bays they are for. */
function stripRows(
  { temporary, bays }: RunLayout,
  top: number,
  measure: Measure,
): { readonly svg: string; readonly bottom: number } {
  const strips = temporary.pieces.filter(({ role }) => role === 'strip');
  const alike = new Map<string, Piece[]>();
  for (const strip of strips) {
    const key = JSON.stringify([strip.cut.longPoint, strip.cut.marks]);
    const held = alike.get(key);
    if (held) held.push(strip);
    else alike.set(key, [strip]);
  }
  const x0 = 74;
  const longest = Math.max(1, ...strips.map(({ cut }) => toMm(cut.longPoint)));
  const scale = (WIDTH + 10 - x0) / longest;
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  let y = top;
  const rows = [...alike.values()].map((same) => {
    const [first] = same;
    if (!first) return '';
    const { longPoint, marks = [] } = first.cut;
    const numbers = [...new Set(same.flatMap(({ bay }) => bay ?? []))];
    const gates = bays.some(({ number, gate }) => numbers.includes(number) && gate !== undefined);
    const name = `${numbers.length === 1 ? 'bay' : 'bays'} ${ranges(numbers)}${gates ? ' (gate)' : ''}`;
    const ends = [0, ...marks, longPoint];
    const out = [
      `<text x="10" y="${tenth(y + 3.6)}" font-size="3.6" font-weight="600">${escapeXml(`${same.length} × ${shown(longPoint)}`)}</text>`,
      `<text x="10" y="${tenth(y + 8)}" font-size="3.2">${escapeXml(fitted(name, x0 - 14, 3.2))}</text>`,
      `<rect x="${x0}" y="${tenth(y)}" width="${tenth(toMm(longPoint) * scale)}" height="${BAR}" fill="${PAPER.fill.wood}" stroke="${PAPER.ink.object}" stroke-width="0.25"/>`,
      ...marks.map((at) => {
        const x = tenth(x0 + toMm(at) * scale);
        return `<line x1="${x}" y1="${tenth(y - 1)}" x2="${x}" y2="${tenth(y + BAR + 1)}" stroke="${PAPER.ink.object}" stroke-width="0.4"/>`;
      }),
      ...ends.slice(1).map((to, i) => {
        const from = ends[i] ?? 0;
        const text = `${shown(to - from)}${ends.length === 2 || i === 1 ? ' clear' : ''}`;
        const wide = textWidth(text) * 3;
        const middle = x0 + (toMm(from + to) / 2) * scale;
        const x = Math.min(Math.max(middle, x0 + wide / 2), WIDTH + 10 - wide / 2);
        return `<text x="${tenth(x)}" y="${tenth(y + BAR + 3.8)}" font-size="3" text-anchor="middle">${escapeXml(text)}</text>`;
      }),
    ];
    y += ROW;
    return out.join('\n');
  });
  return { svg: rows.join('\n'), bottom: y };
}

/** Posts whose braces are alike, in words. */
function linesOf({ temporary, posts, spec }: RunLayout, measure: Measure): readonly string[] {
  const shown = (ticks: Ticks) => formatLength(ticks, measure);
  const alike = new Map<string, number[]>();
  for (const { key, number } of posts) {
    const own = temporary.pieces.filter(
      (piece) => piece.role === 'prop' && piece.key.startsWith(`${key}/brace-`),
    );
    if (own.length === 0) continue;
    const texts = own.map(({ cut, key: name }) => {
      const way = name.endsWith('along') ? 'along the run' : 'across it';
      return `${way} ${shown(cut.longPoint)}, upper end ${formatDegrees(Math.abs(cut.ends[1].miter))}`;
    });
    const reach = temporary.braced.find(({ post }) => post === number);
    if (reach) texts.push(`${shown(reach.up)} up the post, feet ${shown(reach.out)} out from its middle`);
    const text = texts.join('; ');
    const held = alike.get(text);
    if (held) held.push(number);
    else alike.set(text, [number]);
  }
  const stakes = temporary.pieces.filter(({ role }) => role === 'stake');
  const [stake] = stakes;
  return [
    ...[...alike].map(
      ([text, numbers]) =>
        `Braces of ${numbers.length === 1 ? 'post' : 'posts'} ${ranges(numbers)}: ${text}.`,
    ),
    ...(stake
      ? [
          `${stakes.length} stakes of ${stake.cut.stock}, ${shown(stake.cut.longPoint)} long, two thirds of that in the ground.`,
        ]
      : spec.deck
        ? ['The posts are bolted to the deck and need no braces to stakes.']
        : []),
  ];
}

/** `1 to 4, 6`. */
function ranges(numbers: readonly number[]): string {
  const sorted = [...numbers].sort((a, b) => a - b);
  const runs: [number, number][] = [];
  for (const number of sorted) {
    const last = runs.at(-1);
    if (last && number === last[1] + 1) last[1] = number;
    else runs.push([number, number]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : b === a + 1 ? `${a}, ${b}` : `${a} to ${b}`)).join(', ');
}

/** A text in lines that go over the sheet, broken between words. */
function wrapped(text: string): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`) * 3.4 <= WIDTH)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** As much of a text as goes into so many millimeters. */
function fitted(text: string, wide: number, letter: number): string {
  if (textWidth(text) * letter <= wide) return text;
  let kept = text;
  while (kept.length > 1 && textWidth(`${kept}…`) * letter > wide) kept = kept.slice(0, -1);
  return `${kept}…`;
}
