import { identity, inverted } from './dense-inverse.ts';

/** Smaller differences are rounding. */
export const EPSILON = 1e-9;
/** After so many pivots the inverse is made anew. */
const REFRESH = 120;

/** A variable's entries in the constraint matrix. */
export type Entries = readonly (readonly [row: number, by: number])[];

/**
 * Which variables are basic in a linear program, with what they come to: the revised simplex method's explicit inverse.
 * It starts from one variable in each row, ~row, whose only entry is 1 there.
 */
export class Basis {
  /** By row, and by row of the right-hand side: what a variable adds. */
  inverse: Float64Array;
  /** What the basic variable of each row comes to. */
  readonly basic: Float64Array;
  /** The basic variable of each row. */
  readonly variables: Int32Array;
  readonly right: Float64Array;
  private readonly entriesOf: (variable: number) => Entries;
  private readonly entering: Float64Array;
  private readonly held = new Set<number>();
  private sinceRefresh = 0;

  /** @param entriesOf by the variable's number */
  constructor(right: Float64Array, entriesOf: (variable: number) => Entries) {
    this.right = right;
    this.entriesOf = entriesOf;
    this.inverse = identity(right.length);
    this.basic = right.slice();
    this.variables = Int32Array.from({ length: right.length }, (_, row) => ~row);
    this.entering = new Float64Array(right.length);
  }

  get rows(): number {
    return this.right.length;
  }

  /** Whether a variable of number 0 or above is basic. */
  has(variable: number): boolean {
    return this.held.has(variable);
  }

  /**
   * Brings a variable into the basis; false where nothing bounds it.
   *
   * @param entered told the row it enters, while the variable that leaves still stands there
   * @param refreshed told when the inverse was made anew
   */
  pivot(variable: number, entered: (row: number) => void, refreshed: () => void): boolean {
    const { rows, inverse, basic } = this;
    const column = this.columnOf(variable);
    const leaving = this.leavingRow(column);
    if (leaving < 0) return false;
    const by = column[leaving] as number;
    const step = Math.max(0, basic[leaving] as number) / by;
    const from = leaving * rows;
    for (let k = 0; k < rows; k++) inverse[from + k] = (inverse[from + k] as number) / by;
    for (let row = 0; row < rows; row++) {
      const factor = column[row] as number;
      if (row === leaving || factor === 0) continue;
      basic[row] = (basic[row] as number) - factor * step;
      const at = row * rows;
      for (let k = 0; k < rows; k++)
        inverse[at + k] = (inverse[at + k] as number) - factor * (inverse[from + k] as number);
    }
    basic[leaving] = step;
    entered(leaving);
    this.held.delete(this.variables[leaving] as number);
    this.variables[leaving] = variable;
    if (variable >= 0) this.held.add(variable);
    if (++this.sinceRefresh >= Math.max(REFRESH, rows)) {
      this.refresh();
      refreshed();
    }
    return true;
  }

  /** Its column of the constraint matrix, times the inverse. */
  private columnOf(variable: number): Float64Array {
    const { rows, inverse, entering } = this;
    entering.fill(0);
    for (const [k, by] of this.entriesOf(variable))
      for (let row = 0; row < rows; row++)
        entering[row] = (entering[row] as number) + by * (inverse[row * rows + k] as number);
    return entering;
  }

  /** The row whose variable comes to 0 first; below 0 where none does. */
  private leavingRow(column: Float64Array): number {
    let leaving = -1;
    let least = Infinity;
    for (let row = 0; row < column.length; row++) {
      const by = column[row] as number;
      if (by <= EPSILON) continue;
      const ratio = Math.max(0, this.basic[row] as number) / by;
      // Of alike ratios the largest pivot, for steadiness.
      if (ratio < least - EPSILON || (ratio < least + EPSILON && by > (column[leaving] as number))) {
        least = Math.min(least, ratio);
        leaving = row;
      }
    }
    return leaving;
  }

  /** The inverse of the basis, by elimination; what rounding has gathered is gone. */
  private refresh(): void {
    const { rows } = this;
    this.sinceRefresh = 0;
    const matrix = new Float64Array(rows * rows);
    for (let row = 0; row < rows; row++)
      for (const [k, by] of this.entriesOf(this.variables[row] as number)) matrix[k * rows + row] = by;
    const inverse = inverted(matrix, rows);
    if (!inverse) return;
    this.inverse = inverse;
    for (let row = 0; row < rows; row++) {
      let sum = 0;
      for (let k = 0; k < rows; k++) sum += (inverse[row * rows + k] as number) * (this.right[k] as number);
      this.basic[row] = Math.abs(sum) < EPSILON ? 0 : sum;
    }
  }
}
