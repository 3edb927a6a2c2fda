import type { Problem, RunSpec, ScreenFace } from '../model/index.ts';
import { formatLength, roundToStep, type Ticks } from '../units/index.ts';
import { baysOf } from './bays-of.ts';
import type { Range } from './infill.ts';
import { bayLabel, stiffenerLabel } from './labels.ts';
import { type Block, makeBoard } from './make-board.ts';
import type { About } from './make-piece.ts';
import { makeSloped, type Racking } from './make-racked.ts';
import type { Piece } from './piece.ts';
import type { PlacedBay } from './posts.ts';
import { geometryProblem, MOST_PIECES } from './problems.ts';
import { reachOf, shares, undersideOf } from './reach.ts';

/** Pieces with stiffeners on them, or why there are none. */
export interface Stiffened {
  readonly pieces: readonly Piece[];
  readonly problems: readonly Problem[];
}

/**
 * The pieces of a bay with its stiffeners: strips across the slats, as long as the infill is high (upright: as
 * the bay is wide), on its outermost slats of a face. A slat thinner than the thickest may not touch them; those
 * that do are held by them.
 */
export function stiffen(
  spec: RunSpec,
  { bay }: PlacedBay,
  pieces: readonly Piece[],
  racking?: Racking,
): Stiffened {
  const { stiffeners, measure } = spec;
  const slats = pieces.filter(({ role }) => role === 'slat' || role === 'trim');
  if (!stiffeners || slats.length === 0) return { pieces, problems: [] };
  const { upright } = spec.infill.flip;
  const { name, width, thickness } = stiffeners.stock.value;
  const long = upright ? 2 : 0;
  // Level slats reach over the posts beside the bay; what is between the posts counts.
  const room: Range = upright ? heightsOf(slats, racking) : [bay.from, bay.to];
  const across: Range = upright ? [bay.from, bay.to] : reachOf(slats, 2);
  const clear = room[1] - room[0];
  const count = countIn(clear, width.value, stiffeners.apart?.value);
  const held = pieces
    .filter(({ role }) => role === 'cleat')
    .reduce(
      (most, piece) => Math.max(most, size(upright ? heightsOf([piece], racking) : reachOf([piece], long))),
      0,
    );
  const needs = count * width.value + 2 * held;
  if (needs >= clear) {
    const args = { bay: bay.number, clear: shown(clear), needs: shown(needs) };
    return { pieces, problems: [geometryProblem('stiffeners-no-room', stiffeners.origin, args)] };
  }
  // As many in every bay as in this one.
  const inAll = count * stiffeners.faces.length * Math.ceil(spec.length.value / bay.clear);
  if (inAll > MOST_PIECES) {
    const args = { count: inAll, most: MOST_PIECES };
    return { pieces, problems: [geometryProblem('too-many-pieces', stiffeners.origin, args)] };
  }
  const free = (clear - count * width.value) / (count + 1);
  const made = stiffeners.faces.flatMap((face) => {
    const plane = slats.reduce(
      (at, slat) => (face === 'front' ? Math.min(at, depthOf(slat)[0]) : Math.max(at, depthOf(slat)[1])),
      face === 'front' ? Infinity : -Infinity,
    );
    const y: Range = face === 'front' ? [plane - thickness.value, plane] : [plane, plane + thickness.value];
    return Array.from({ length: count }, (_, index): Piece => {
      const at = room[0] + roundToStep((index + 1) * free + index * width.value, measure.step);
      const own: Range = [at, at + width.value];
      const block: Block = upright
        ? { x: across, y, z: own }
        : { x: own, y, z: [Math.ceil(undersideOf(slats, own)), across[1]] };
      const about: About = {
        key: `${bay.key}/stiffener-${face}-${index + 1}`,
        label: stiffenerLabel(bayLabel(bay.number), index + 1, face),
        role: 'stiffener',
        run: spec.name,
        bay: bay.number,
        side: face,
        supports: slats.filter((slat) => touches(slat, block, plane, face, racking)).map(({ key }) => key),
        from: [stiffeners.origin, stiffeners.stock.value.origin, spec.origin],
      };
      if (!racking) return makeBoard(about, { name }, !upright, block);
      const sloped = { x: across, y, top: own[1], width: width.value };
      return makeSloped(about, { name }, sloped, racking, measure.step);
    });
  });
  const holding = new Map<string, string[]>();
  for (const { key, supports } of made)
    for (const slat of supports) {
      const held = holding.get(slat);
      if (held) held.push(key);
      else holding.set(slat, [key]);
    }
  const kept = pieces.map((piece): Piece => {
    const more = holding.get(piece.key);
    return more ? { ...piece, supports: [...piece.supports, ...more] } : piece;
  });
  return { pieces: [...kept, ...made], problems: [] };

  function shown(ticks: Ticks): string {
    return formatLength(ticks, measure);
  }
}

/**
 * The same for slats that go on from bay to bay, each given with the bay it begins in: stiffeners of a bay are on all
 * that reach it.
 */
export function stiffAlong(
  spec: RunSpec,
  bays: readonly PlacedBay[],
  begun: ReadonlyMap<number, readonly Piece[]>,
): ReadonlyMap<number, Stiffened> {
  const slats = new Map([...begun.values()].flat().map((piece) => [piece.key, piece]));
  const keysIn = new Map<number, string[]>();
  for (const piece of slats.values())
    for (const number of baysOf(piece)) {
      const own = keysIn.get(number);
      if (own) own.push(piece.key);
      else keysIn.set(number, [piece.key]);
    }
  const added = new Map<number, readonly Piece[]>();
  const problems = new Map<number, readonly Problem[]>();
  if (spec.stiffeners)
    for (const placed of bays) {
      const { number } = placed.bay;
      if (placed.gate) continue;
      const stiff = stiffen(
        spec,
        placed,
        (keysIn.get(number) ?? []).flatMap((key) => slats.get(key) ?? []),
      );
      for (const piece of stiff.pieces) if (slats.has(piece.key)) slats.set(piece.key, piece);
      added.set(
        number,
        stiff.pieces.filter(({ key }) => !slats.has(key)),
      );
      problems.set(number, stiff.problems);
    }
  return new Map(
    [...begun.keys(), ...added.keys()].map((number) => {
      const own = (begun.get(number) ?? []).map((piece) => slats.get(piece.key) ?? piece);
      return [
        number,
        { pieces: [...own, ...(added.get(number) ?? [])], problems: problems.get(number) ?? [] },
      ];
    }),
  );
}

/** As few as leave no clear span over `apart`; one when that is not stated. */
function countIn(clear: Ticks, width: Ticks, apart: Ticks | undefined): number {
  return apart === undefined ? 1 : Math.max(0, Math.ceil((clear - apart) / (apart + width)));
}

function touches(slat: Piece, { x, z }: Block, plane: Ticks, face: ScreenFace, racking?: Racking): boolean {
  return (
    depthOf(slat)[face === 'front' ? 0 : 1] === plane &&
    shares(reachOf([slat], 0), x) &&
    shares(heightsOf([slat], racking), z)
  );
}

/** How high pieces reach; in a racked bay, as it would be at the station of its heights. */
function heightsOf(pieces: readonly Piece[], racking?: Racking): Range {
  if (!racking) return reachOf(pieces, 2);
  const { at, rise } = racking;
  let [low, high] = [Infinity, -Infinity];
  for (const { solid } of pieces)
    for (const [x, , z] of solid.vertices) {
      const height = z - rise * (x - at);
      low = Math.min(low, height);
      high = Math.max(high, height);
    }
  return [Math.ceil(low - 1e-6), Math.floor(high + 1e-6)];
}

const size = ([low, high]: Range): Ticks => high - low;
const depthOf = (piece: Piece): Range => reachOf([piece], 1);
