import { facesOf, type RunSpec } from '../model/index.ts';
import type { Ticks } from '../units/index.ts';
import { isInBay } from './bays-of.ts';
import type { Filled } from './fit-infill.ts';
import type { RunLayout } from './layout.ts';
import type { Line } from './lines.ts';
import { periodOf, pitchOf } from './more-courses.ts';

/** Why lines of another run cannot be gone on with. */
export type LinesTrouble = 'missing' | 'upright' | 'faces' | 'pattern' | 'ground' | 'none';

/** One slat of the run whose lines are gone on with: heights from the datum. */
interface GivenSlat {
  readonly low: Ticks;
  readonly high: Ticks;
  readonly stock: string;
}

/** The lines of one face, from the top, without what was ripped to close them. */
export interface GivenLines {
  readonly run: string;
  readonly trouble?: LinesTrouble;
  readonly pitch: Ticks;
  /** Slats within one pitch. */
  readonly period: number;
  readonly gap: number;
  readonly front: readonly GivenSlat[];
  readonly back: readonly GivenSlat[];
}

/** What a run that goes on with the lines of another needs to know of it. */
export function givenLines(name: string, first: RunLayout | undefined, second: RunSpec): GivenLines {
  const none = { run: name, pitch: 0, period: 0, gap: 0, front: [], back: [] };
  if (!first?.sound) return { ...none, trouble: 'missing' };
  const trouble = troubleOf(first.spec, second);
  if (trouble) return { ...none, trouble };
  const bay = first.bays.find(({ gate }) => gate === undefined)?.number;
  const on = (back: boolean) =>
    first.pieces
      .filter(
        (piece) =>
          piece.role === 'slat' &&
          bay !== undefined &&
          isInBay(piece, bay) &&
          piece.gate === undefined &&
          !piece.cut.ripped &&
          back === (layersOf(first.spec) === 2 && piece.side === 'back'),
      )
      .map(({ cut, solid }): GivenSlat => {
        const all = solid.vertices.map(([, , z]) => z);
        return { low: Math.min(...all), high: Math.max(...all), stock: cut.stock };
      })
      .sort((a, b) => b.high - a.high);
  const front = on(false);
  const back = on(true);
  const chosen = first.fits.find(({ gate }) => gate === undefined)?.chosen;
  const { infill } = first.spec;
  const pitch = pitchOf(
    infill,
    front.map((slat) => ({ ...slat, kind: 'slat', ripped: false, from: [], stock: stockOf(second, slat) })),
    chosen,
  );
  const period = periodOf(infill);
  const short = front.length < period || (layersOf(first.spec) === 2 && back.length < period);
  const gap = chosen?.gap ?? infill.pattern.gap.value;
  return { run: name, pitch, period, gap, front, back, ...(short || pitch <= 0 ? { trouble: 'none' } : {}) };
}

/**
 * The same lines, by whole pitches as far up and down as the ends of this run allow. Undefined where none fits:
 * then, as where something else stands in the way, `linesTrouble` says why.
 */
export function fillLines(spec: RunSpec, given: GivenLines, bays: readonly number[]): Filled | undefined {
  if (given.trouble) return undefined;
  const edge = spec.infill.pattern.edgeGap.value;
  const ground = spec.ground.value;
  const floor = ground + spec.bottom.value.low + edge;
  const ceiling = ground + spec.height.value.high - edge;
  const face = (slats: readonly GivenSlat[]) =>
    goneOn(slats, given, floor, ceiling).map((slat, index) => lineOf(spec, slat, index + 1));
  const lines = face(given.front);
  const two = layersOf(spec) === 2;
  const back = two ? face(given.back) : [];
  const all = [...lines, ...back];
  if (lines.length === 0 || (two && back.length === 0)) return undefined;
  const bottom = Math.min(...all.map(({ low }) => low)) - edge - ground;
  const height = Math.max(...all.map(({ high }) => high)) + edge - ground;
  const { gap } = given;
  const ends = { lead: edge, tail: edge, bottom, height };
  return {
    lines,
    ...(two ? { back } : {}),
    bottom,
    height,
    result: {
      bays,
      space: spec.height.value.high - spec.bottom.value.low,
      upright: false,
      chosen: { kind: 'as-drawn', count: lines.length, gap, ...ends, gapChange: 0, changes: [] },
      leftover: 0,
      nominalCount: lines.length,
      choices: [],
      origin: spec.infill.fit.origin,
    },
  };
}

/** Why a run does not stand on the lines that were asked for. */
export function linesTrouble(spec: RunSpec, given: GivenLines): LinesTrouble | undefined {
  return given.trouble ?? (fillLines(spec, given, []) ? undefined : 'none');
}

/** Every slat of the endless face between two heights, from the top. */
function goneOn(
  slats: readonly GivenSlat[],
  { period, pitch }: GivenLines,
  floor: Ticks,
  ceiling: Ticks,
): readonly GivenSlat[] {
  const all = [...slats];
  const moved = (slat: GivenSlat, by: Ticks) => ({ ...slat, low: slat.low + by, high: slat.high + by });
  for (let next = all[period - 1]; next && next.low + pitch < ceiling; next = all[period - 1])
    all.unshift(moved(next, pitch));
  for (let next = all.at(-period); next && next.high - pitch > floor; next = all.at(-period))
    all.push(moved(next, -pitch));
  return all.filter(({ low, high }) => low >= floor && high <= ceiling);
}

function lineOf(spec: RunSpec, slat: GivenSlat, course: number): Line {
  const { pattern } = spec.infill;
  const item = pattern.repeat.find(({ value }) => value.name === slat.stock);
  const stock = stockOf(spec, slat);
  const asked = spec.linesAs ? [spec.linesAs.origin] : [];
  const from = [...asked, ...(item ? [item.origin] : []), stock.origin, pattern.origin];
  return { kind: 'slat', course, stock, ripped: false, low: slat.low, high: slat.high, from };
}

/** Both runs have the same boards, or their lines would not be gone on with. */
function stockOf({ infill: { pattern } }: RunSpec, { stock }: Pick<GivenSlat, 'stock'>): Line['stock'] {
  const found = pattern.repeat.find(({ value }) => value.name === stock);
  if (!found) throw new Error(`no slat ${stock} in ${pattern.name}`);
  return found.value;
}

function troubleOf(first: RunSpec, second: RunSpec): LinesTrouble | undefined {
  const kinds = [first, second].map(({ infill }) => infill.mounting.value.kind);
  const shape = ({ infill: { pattern } }: RunSpec) =>
    JSON.stringify(pattern.repeat.map(({ value }) => [value.name, value.width.value]));
  if (first.infill.flip.upright || second.infill.flip.upright) return 'upright';
  if (layersOf(first) !== layersOf(second) || (kinds[0] !== kinds[1] && kinds.includes('alternate')))
    return 'faces';
  if (shape(first) !== shape(second)) return 'pattern';
  // Courses added where the ground falls begin the repeat anew, which only one board does not show.
  const mixed = new Set(second.infill.pattern.repeat.map(({ value }) => value.name)).size > 1;
  return second.levels && mixed ? 'ground' : undefined;
}

const layersOf = ({ infill }: RunSpec): 1 | 2 => (facesOf(infill.mounting.value).length === 2 ? 2 : 1);
