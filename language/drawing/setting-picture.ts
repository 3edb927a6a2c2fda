import type { Piece, RunLayout, Vec3 } from '../layout/index.ts';
import { formatLength, type Measure, toMm } from '../units/index.ts';
import { PAPER } from './paper-theme.ts';
import { hull } from './project.ts';
import { tenth, SHEET_WIDTH as WIDTH } from './saw-sheet.ts';
import { textWidth } from './text-width.ts';
import { escapeXml } from './write-svg.ts';

/** A picture of a sheet and where it ends, in millimeters from the sheet's top. */
export interface Picture {
  readonly svg: string;
  readonly bottom: number;
}

const LETTER = 3;
/** No picture of the two is higher than this. */
const HIGHEST = 80;

/** Posts and what sets them, from the front, to the scale of the plan below. */
export function settingView(run: RunLayout, measure: Measure, top: number): Picture {
  const pieces = shownOf(run);
  const at = placeOf(pieces, top + 12, ([x, , z]) => [x, 0 - z], scaleOf(pieces));
  const ground = run.groundLine.map(({ x, z }) => at.point([x, 0, z]));
  const [first, last] = [ground[0] ?? [0, 0], ground.at(-1) ?? [0, 0]];
  const line = [[at.left, first[1]] as const, ...ground, [at.right, last[1]] as const];
  const svg = [
    caption('from the front', top + 1),
    ...drawn(pieces, at, 1),
    `<polyline points="${line.map(([x, y]) => `${tenth(x)},${tenth(y)}`).join(' ')}" fill="none" stroke="${PAPER.ink.light}" stroke-width="0.35"/>`,
    ...namesOf(run, at, measure, top + 6),
  ].join('\n');
  return { svg, bottom: at.bottom };
}

/** The same from above: the back at the top. */
export function settingPlan(run: RunLayout, top: number): Picture {
  const pieces = shownOf(run);
  const at = placeOf(pieces, top + 4, ([x, y]) => [x, 0 - y], scaleOf(pieces));
  return { svg: [caption('from above', top + 1), ...drawn(pieces, at, 2)].join('\n'), bottom: at.bottom };
}

/** Posts, those of other runs too, then what comes off again. */
function shownOf({ pieces, borrowed, temporary }: RunLayout): readonly Piece[] {
  return [...pieces.filter(({ role }) => role === 'post'), ...borrowed, ...temporary.pieces];
}

interface Place {
  readonly point: (vertex: Vec3) => readonly [x: number, y: number];
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
}

/** Sheet millimeters for one of the real thing: both pictures go in, and neither is too high. */
function scaleOf(pieces: readonly Piece[]): number {
  const size = (axis: 0 | 1 | 2) => {
    const all = pieces.flatMap(({ solid }) => solid.vertices.map((vertex) => toMm(vertex[axis])));
    return Math.max(1, Math.max(...all) - Math.min(...all));
  };
  return Math.min(WIDTH / size(0), HIGHEST / size(1), HIGHEST / size(2));
}

function placeOf(
  pieces: readonly Piece[],
  top: number,
  flat: (vertex: Vec3) => readonly [number, number],
  scale: number,
): Place {
  const all = pieces.flatMap(({ solid }) => solid.vertices.map((vertex) => flat(vertex).map(toMm)));
  const xs = all.map(([x]) => x ?? 0);
  const ys = all.map(([, y]) => y ?? 0);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const left = 10 + (WIDTH - (x1 - x0) * scale) / 2;
  return {
    point: (vertex) => {
      const [x, y] = flat(vertex);
      return [left + (toMm(x) - x0) * scale, top + (toMm(y) - y0) * scale];
    },
    left,
    right: left + (x1 - x0) * scale,
    bottom: top + (y1 - y0) * scale,
  };
}

const caption = (text: string, y: number): string =>
  `<text x="10" y="${tenth(y)}" font-size="${LETTER}" fill="${PAPER.ink.dimension}">${text}</text>`;

/** Far things first: seen from the front, or from above. */
function drawn(pieces: readonly Piece[], at: Place, axis: 1 | 2): readonly string[] {
  const near = ({ solid }: Piece) => {
    const all = solid.vertices.map((vertex) => vertex[axis]);
    return axis === 1 ? Math.min(...all) : 0 - Math.max(...all);
  };
  return [...pieces]
    .sort((a, b) => near(b) - near(a))
    .map(({ role, solid }) => {
      const outline = hull(solid.vertices.flatMap((vertex) => [...at.point(vertex)]));
      const points = outline
        .map(tenth)
        .reduce((text, n, i) => `${text}${i === 0 ? '' : i % 2 === 0 ? ' ' : ','}${n}`, '');
      const fill = role === 'post' ? PAPER.fill.post : PAPER.fill['wood-light'];
      return `<polygon points="${points}" fill="${fill}" stroke="${PAPER.ink.object}" stroke-width="0.2"/>`;
    });
}

/** Numbers of posts over them with the stations of their left faces, of as many as have room. */
function namesOf({ posts }: RunLayout, at: Place, measure: Measure, y: number): readonly string[] {
  let free = -Infinity;
  return posts.flatMap(({ number, from, to }) => {
    const texts = [`P${number}`, formatLength(from, measure)];
    const [x] = at.point([(from + to) / 2, 0, 0]);
    const half = (Math.max(...texts.map(textWidth)) * LETTER) / 2;
    if (x - half < free) return [];
    free = x + half + 1;
    return texts.map(
      (text, i) =>
        `<text x="${tenth(x)}" y="${tenth(y + 3.6 * i)}" font-size="${LETTER}" text-anchor="middle">${escapeXml(text)}</text>`,
    );
  });
}
