import type { Piece } from './piece.ts';

/** Whether a piece is in a bay, be it one of several that it reaches through. */
export function isInBay({ bay, until = bay }: Pick<Piece, 'bay' | 'until'>, number: number): boolean {
  return bay !== undefined && number >= bay && number <= (until ?? bay);
}

/** Numbers of the bays that a piece is in; none for what is in no bay. */
export function baysOf({ bay, until = bay }: Pick<Piece, 'bay' | 'until'>): readonly number[] {
  if (bay === undefined || until === undefined) return [];
  return Array.from({ length: until - bay + 1 }, (_, index) => bay + index);
}
