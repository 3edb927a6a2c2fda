import type { Ticks } from '../units/index.ts';

/** A piece that is cut already: `key` says which, `section` what it is cut from, the same text for what may stand in for one another. */
export interface CutPiece {
  readonly key: string;
  readonly section: string;
  readonly length: Ticks;
  /** Key of the place it was cut for. */
  readonly meantFor?: string;
}

/** Where a piece is needed, and how long, from tip to tip. */
export interface PlaceToFill {
  readonly key: string;
  readonly section: string;
  readonly length: Ticks;
}

export interface Reuse {
  readonly piece: CutPiece;
  readonly place: PlaceToFill;
  /** What is sawn off; never negative, since a piece that is too short goes elsewhere. */
  readonly trim: Ticks;
}

/** Every piece is in `reused` or in `leftOver`, every place in `reused` or in `toCut`, each once. */
export interface Allotment {
  readonly reused: readonly Reuse[];
  readonly toCut: readonly PlaceToFill[];
  readonly leftOver: readonly CutPiece[];
}

/**
 * Gives pieces that are cut to places they are long enough for: as many as can be, then with the least sawn off
 * in all, then as many as they are where a piece is exactly as long as its place, its own place first.
 *
 * What is sawn off in all is the length of the pieces used less that of the places filled, so that the pieces
 * and the places can be chosen apart: the shortest pieces and the longest places that can still be matched.
 * One matching takes in both (N. S. Mendelsohn and A. L. Dulmage, "Some generalizations of the problem of
 * distinct representatives", Canadian Journal of Mathematics 10, 1958; from memory).
 */
export function allotPieces(pieces: readonly CutPiece[], places: readonly PlaceToFill[]): Allotment {
  const reused = [...new Set(pieces.map(({ section }) => section))].flatMap((section) =>
    allotSection(
      pieces.filter((piece) => piece.section === section),
      places.filter((place) => place.section === section),
    ),
  );
  const used = new Set(reused.map(({ piece }) => piece));
  const filled = new Set(reused.map(({ place }) => place));
  return {
    reused,
    toCut: places.filter((place) => !filled.has(place)),
    leftOver: pieces.filter((piece) => !used.has(piece)),
  };
}

function allotSection(pieces: readonly CutPiece[], places: readonly PlaceToFill[]): readonly Reuse[] {
  // Of what is alike, that which may stay where it was meant to go comes first.
  const lengthAt = new Map(places.map(({ key, length }) => [key, length]));
  const stays = ({ meantFor, length }: CutPiece) =>
    meantFor !== undefined && lengthAt.get(meantFor) === length;
  const kept = new Set(pieces.flatMap((piece) => (stays(piece) ? [piece.meantFor] : [])));
  const shortFirst = pieces.toSorted((a, b) => a.length - b.length || Number(stays(b)) - Number(stays(a)));
  const longFirst = places.toSorted(
    (a, b) => b.length - a.length || Number(kept.has(b.key)) - Number(kept.has(a.key)),
  );
  const used = growing(shortFirst, (piece) => places.filter(({ length }) => length <= piece.length).length);
  const filled = growing(longFirst, (place) => pieces.filter(({ length }) => length >= place.length).length);
  return paired(used, filled.toReversed());
}

/** Takes each in turn while there is still something left over that it could be matched with. */
function growing<T>(ordered: readonly T[], matches: (one: T) => number): readonly T[] {
  const taken: T[] = [];
  for (const one of ordered) if (matches(one) > taken.length) taken.push(one);
  return taken;
}

/** As many pieces as places, both from the shortest. Those of one length may be matched at no loss to the rest. */
function paired(pieces: readonly CutPiece[], places: readonly PlaceToFill[]): readonly Reuse[] {
  const open = new Set(places);
  const waiting = new Set(pieces);
  const found: Reuse[] = [];
  const give = (piece: CutPiece, place: PlaceToFill) => {
    open.delete(place);
    waiting.delete(piece);
    found.push({ piece, place, trim: piece.length - place.length });
  };
  for (const own of [true, false]) {
    for (const piece of pieces) {
      if (!waiting.has(piece)) continue;
      const fits = ({ key, length }: PlaceToFill) =>
        length === piece.length && (!own || key === piece.meantFor);
      const place = [...open].find(fits);
      if (place) give(piece, place);
    }
  }
  const rest = [...open];
  for (const [index, piece] of [...waiting].entries()) {
    const place = rest[index];
    if (place) give(piece, place);
  }
  return found;
}
