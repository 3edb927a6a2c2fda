import type { Piece } from '../layout/index.ts';
import { floorToStep, type Measure, type Ticks } from '../units/index.ts';
import { dimensionText } from './dimension-text.ts';

/** What a board is cut to that is not as wide all along: a line that says of what, and widths along it. */
export interface Taper {
  /** What follows its label. */
  readonly title: string;
  /** Where the places are counted from: `from its foot`. */
  readonly from: string;
  readonly columns: readonly { readonly at: string; readonly wide: string }[];
}

/** Pieces tapered alike. */
export interface AlikeTapers {
  readonly pieces: readonly Piece[];
  readonly taper: Taper;
}

/**
 * The taper of a board scribed to a wall, or ripped to follow the ground; undefined for any other piece. Widths are
 * rounded down to marks of the tape; what is not seen on the tape is no taper.
 */
export function taperOf(piece: Piece, measure: Measure): Taper | undefined {
  const { cut, key } = piece;
  const shown = (ticks: Ticks) => dimensionText(floorToStep(ticks, measure.step), measure);
  const long = dimensionText(cut.longPoint, measure);
  if (cut.scribe) {
    const edge = key.endsWith('start') ? 'left' : 'right';
    const narrowest = Math.min(...cut.scribe.map(({ width }) => width));
    return {
      title: `${cut.stock} ripped to ${dimensionText(cut.width, measure)}, ${long} long, ${edge} edge scribed to the wall, narrowest ${shown(narrowest)}`,
      from: 'from its foot',
      columns: cut.scribe.map(({ at, width }) => ({ at: dimensionText(at, measure), wide: shown(width) })),
    };
  }
  if (!cut.taper) return undefined;
  const [first, second] = cut.taper;
  const wide = cut.taper.map(shown);
  if (wide[0] === wide[1]) return undefined;
  const ripped = cut.ripped ? ` ripped to ${dimensionText(cut.width, measure)}` : '';
  return {
    title: `${cut.stock}${ripped}, ${long} long, lower edge ripped with a taper`,
    from: 'from its left end',
    columns: [
      { at: dimensionText(cornerFrom(cut.ends[0].miter, first), measure), wide: shown(first) },
      {
        at: dimensionText(cut.longPoint - cornerFrom(0 - cut.ends[1].miter, second), measure),
        wide: shown(second),
      },
    ],
  };
}

/** How far along from its tip the lower corner of a mitered end is, where that is not the tip: its width is there. */
function cornerFrom(miter: number, width: Ticks): Ticks {
  return Math.round(Math.max(0, Math.tan((miter * Math.PI) / 180) * width));
}

/** A taper in one line, empty where there is none: `0" 1-7/16", 1' 8" 1-1/4"`, each a place and how wide it is there. */
export function taperLine(taper: Taper | undefined): string {
  return taper?.columns.map(({ at, wide }) => `${at} ${wide}`).join(', ') ?? '';
}

/** All pieces that have a taper, those cut alike together, in the order of the first of them. */
export function alikeTapers(pieces: readonly Piece[], measure: Measure): readonly AlikeTapers[] {
  const alike = new Map<string, { pieces: Piece[]; taper: Taper }>();
  for (const piece of pieces) {
    const taper = taperOf(piece, measure);
    if (!taper) continue;
    const name = `${taper.title} ${taperLine(taper)}`;
    const held = alike.get(name);
    if (held) held.pieces.push(piece);
    else alike.set(name, { pieces: [piece], taper });
  }
  return [...alike.values()];
}
