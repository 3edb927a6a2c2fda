import type { CutEnd, CutTurn } from '../problem.ts';

/** Both ends of what lies in a row, as it lies: the first toward the start of the board. */
export type Ends = readonly [first: CutEnd, second: CutEnd];

export const squareEnds = (kerf: number): Ends => {
  const end = { across: 0, through: 0, kerf };
  return [end, end];
};

/** How far an end's tip stands beyond its middle. */
export const tipOf = ({ across, through }: CutEnd): number => (Math.abs(across) + Math.abs(through)) / 2;

/** Ways a piece can be turned on the board; where its two faces are not alike, the same one stays up. */
export const turnsOf = (turnsOver: boolean): readonly CutTurn[] =>
  turnsOver ? ['none', 'end', 'over', 'end-over'] : ['none', 'end'];

/**
 * The ends of a piece that is turned by half a turn: end for end about an axis through its thickness, over about its
 * length, or both, which is about its width. A cut `x = a v + b s` over width v and thickness s keeps the sign of the
 * slope whose two axes are both reversed, and changes that whose one is (geometry).
 */
export function turnedEnds([first, second]: Ends, turn: CutTurn): Ends {
  const by = (end: CutEnd, across: 1 | -1, through: 1 | -1): CutEnd => ({
    across: across * end.across,
    through: through * end.through,
    kerf: end.kerf,
  });
  switch (turn) {
    case 'none':
      return [first, second];
    case 'end':
      return [by(second, 1, -1), by(first, 1, -1)];
    case 'over':
      return [by(first, -1, -1), by(second, -1, -1)];
    case 'end-over':
      return [by(second, -1, 1), by(first, -1, 1)];
  }
}

/**
 * From the middle of an end to the middle of the next piece's: everywhere over the section they are at least the wider of
 * their two cuts apart. Where both are cut alike they are parallel, and one cut parts them.
 */
export function between(second: CutEnd, first: CutEnd): number {
  const apart = Math.abs(second.across - first.across) + Math.abs(second.through - first.through);
  return Math.max(second.kerf, first.kerf) + apart / 2;
}
