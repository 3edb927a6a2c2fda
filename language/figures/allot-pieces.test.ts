import fc from 'fast-check';
import { expect, it } from 'vitest';
import { type Allotment, allotPieces, type CutPiece, type PlaceToFill } from './allot-pieces.ts';

const piecesOf = (lengths: readonly number[], section = 's'): CutPiece[] =>
  lengths.map((length, i) => ({ key: `piece ${i}`, section, length, meantFor: `place ${i}` }));
const placesOf = (lengths: readonly number[], section = 's'): PlaceToFill[] =>
  lengths.map((length, i) => ({ key: `place ${i}`, section, length }));
const trimOf = ({ reused }: Allotment) => reused.reduce((sum, { trim }) => sum + trim, 0);

const lengths = fc.array(fc.integer({ min: 1, max: 9 }), { maxLength: 6 });

/** Every way to give pieces to places, tried one after the other: most first, then the least sawn off. */
function best(pieces: readonly number[], places: readonly number[]): { count: number; trim: number } {
  const [piece, ...rest] = pieces;
  if (piece === undefined) return { count: 0, trim: 0 };
  let found = best(rest, places);
  for (const [index, place] of places.entries()) {
    if (place > piece) continue;
    const then = best(rest, places.toSpliced(index, 1));
    const way = { count: then.count + 1, trim: then.trim + piece - place };
    if (way.count > found.count || (way.count === found.count && way.trim < found.trim)) found = way;
  }
  return found;
}

it('reuses as many as any way could, and saws off as little as any such way', () => {
  fc.assert(
    fc.property(lengths, lengths, (cut, needed) => {
      const allotted = allotPieces(piecesOf(cut), placesOf(needed));
      expect({ count: allotted.reused.length, trim: trimOf(allotted) }).toEqual(best(cut, needed));
    }),
    { numRuns: 300 },
  );
});

it('loses no piece and no place, doubles none, and gives no place a piece too short or of another section', () => {
  fc.assert(
    fc.property(lengths, lengths, lengths, lengths, (a, b, c, d) => {
      const pieces = [...piecesOf(a, 'wide'), ...piecesOf(b, 'narrow')];
      const places = [...placesOf(c, 'wide'), ...placesOf(d, 'narrow')];
      const { reused, toCut, leftOver } = allotPieces(pieces, places);
      const allPieces = [...reused.map(({ piece }) => piece), ...leftOver];
      const allPlaces = [...reused.map(({ place }) => place), ...toCut];
      expect(allPieces).toHaveLength(pieces.length);
      expect(new Set(allPieces)).toEqual(new Set(pieces));
      expect(allPlaces).toHaveLength(places.length);
      expect(new Set(allPlaces)).toEqual(new Set(places));
      for (const { piece, place, trim } of reused) {
        expect(trim).toBeGreaterThanOrEqual(0);
        expect(trim).toBe(piece.length - place.length);
        expect(piece.section).toBe(place.section);
      }
    }),
  );
});

it('sends a piece cut too short to a narrower bay, and trims one that is too long', () => {
  // Three bays planned alike at 78; measured 79, 77 and 78. By hand: 79 must be cut anew; the piece of the
  // third stays; one of the other two loses 1 in the bay of 77, the last is left over.
  const { reused, toCut, leftOver } = allotPieces(piecesOf([78, 78, 78]), placesOf([79, 77, 78]));
  expect(reused.map(({ place, trim }) => [place.key, trim])).toEqual([
    ['place 2', 0],
    ['place 1', 1],
  ]);
  expect(reused[0]?.piece.key).toBe('piece 2');
  expect(toCut.map(({ key }) => key)).toEqual(['place 0']);
  expect(leftOver).toHaveLength(1);
});

it('leaves every piece where it was meant to go when nothing came out differently', () => {
  const { reused } = allotPieces(piecesOf([5, 7, 5, 7, 6]), placesOf([5, 7, 5, 7, 6]));
  expect(reused.every(({ piece, place, trim }) => piece.meantFor === place.key && trim === 0)).toBe(true);
  expect(reused).toHaveLength(5);
});
