import { Basis, type Entries, EPSILON } from './basis.ts';
import type { Pattern } from './problem.ts';

/** A column of the linear program: a pattern and what one of it costs there. */
export interface Column {
  readonly pattern: Pattern;
  readonly cost: number;
  /** Other limits it counts against, by the places of those limits. */
  readonly also?: readonly number[];
}

/**
 * The linear program of covering demands with patterns: least cost of patterns and of what stays uncovered,
 *
 *     min  sum cost x + sum penalty s    sum a x + s >= demand,  sum of a stock's x <= its limit,
 *
 * by the revised simplex method with an explicit inverse; columns may be added between steps (Gilmore and Gomory,
 * 1961). It starts from nothing covered, which is always feasible.
 */
export class Master {
  readonly columns: Column[] = [];
  /** Worth of one more of each size; then, not above 0, of one more board of each stock. */
  readonly duals: Float64Array;
  private readonly sizes: number;
  private readonly penalties: ArrayLike<number>;
  private readonly basis: Basis;
  private readonly stockRow: Int32Array;
  /** Whether the duals were made from the inverse, not from those before. */
  private exact = false;

  constructor(demands: ArrayLike<number>, limits: ArrayLike<number>, penalties: ArrayLike<number>) {
    this.sizes = demands.length;
    this.stockRow = new Int32Array(limits.length).fill(-1);
    let rows = this.sizes;
    for (let j = 0; j < limits.length; j++) if ((limits[j] as number) < Infinity) this.stockRow[j] = rows++;
    this.penalties = penalties;
    const right = new Float64Array(rows);
    for (let i = 0; i < this.sizes; i++) right[i] = demands[i] as number;
    for (let j = 0; j < limits.length; j++) {
      const row = this.stockRow[j] as number;
      if (row >= 0) right[row] = limits[j] as number;
    }
    this.basis = new Basis(right, (variable) => this.entriesOf(variable));
    this.duals = new Float64Array(this.sizes + limits.length);
  }

  /** Sum of costs now; the optimum when no column can enter. */
  get value(): number {
    const { variables, basic } = this.basis;
    let sum = 0;
    for (let row = 0; row < variables.length; row++)
      sum += this.costOf(variables[row] as number) * (basic[row] as number);
    return sum;
  }

  /** How much stays uncovered, in sizes' own penalties. */
  get uncovered(): number {
    const { variables, basic } = this.basis;
    let sum = 0;
    for (let row = 0; row < variables.length; row++) {
      const variable = variables[row] as number;
      if (variable < 0 && ~variable < this.sizes)
        sum += Math.max(0, basic[row] as number) * this.costOf(variable);
    }
    return sum;
  }

  /** Patterns in use and how often. */
  solution(): { readonly column: Column; readonly times: number }[] {
    return this.solutionByIndex().map(({ index, times }) => ({
      column: this.columns[index] as Column,
      times,
    }));
  }

  /** As `solution`, by the place of the column. */
  solutionByIndex(): { readonly index: number; readonly times: number }[] {
    const { variables, basic } = this.basis;
    const used: { index: number; times: number }[] = [];
    for (let row = 0; row < variables.length; row++) {
      const index = variables[row] as number;
      const times = basic[row] as number;
      if (index >= 0 && times > EPSILON) used.push({ index, times });
    }
    return used;
  }

  /**
   * What surely stays uncovered when patterns cost nothing: the value of the dual solution, less what it may be too
   * large by, since no column may have a reduced cost below 0 and there are no more boards than the limits say.
   */
  provenUncovered(): number {
    const { right } = this.basis;
    let value = 0;
    let boards = 0;
    let worst = 0;
    let added = 0;
    for (let i = 0; i < this.sizes; i++) {
      const dual = Math.min(Math.max(0, this.duals[i] as number), this.penalties[i] as number);
      worst = Math.max(worst, Math.abs(dual - (this.duals[i] as number)) * 1e3);
      value += dual * (right[i] as number);
      added += dual * (right[i] as number);
    }
    for (let j = 0; j < this.stockRow.length; j++) {
      const row = this.stockRow[j] as number;
      if (row < 0) continue;
      boards += right[row] as number;
      value += Math.min(0, this.duals[this.sizes + j] as number) * (right[row] as number);
    }
    for (const column of this.columns) worst = Math.max(worst, 0 - this.reducedCost(column));
    // Sums of floats err by less than this share of what was added.
    return value - worst * boards - 1e-12 * added;
  }

  /** Pivots until no column that is there improves; false when it stopped short of that. */
  optimize(mostPivots = 20_000): boolean {
    this.price();
    for (let pivots = 0; pivots < mostPivots; pivots++) {
      const variable = this.choose();
      if (variable === undefined) {
        if (this.exact) return true;
        this.price();
        continue;
      }
      const pivoted = this.basis.pivot(
        variable,
        (leaving) => this.shiftDuals(leaving, this.reducedCostOf(variable)),
        () => this.price(),
      );
      if (!pivoted) return false;
    }
    return false;
  }

  /** y = c_B B^-1. */
  private price(): void {
    const { duals } = this;
    const { rows, inverse, variables } = this.basis;
    const y = new Float64Array(rows);
    for (let row = 0; row < rows; row++) {
      const cost = this.costOf(variables[row] as number);
      if (cost === 0) continue;
      const at = row * rows;
      for (let k = 0; k < rows; k++) y[k] = (y[k] as number) + cost * (inverse[at + k] as number);
    }
    for (let i = 0; i < this.sizes; i++) duals[i] = y[i] as number;
    for (let j = 0; j < this.stockRow.length; j++) {
      const row = this.stockRow[j] as number;
      duals[this.sizes + j] = row < 0 ? 0 : (y[row] as number);
    }
    this.exact = true;
  }

  /** Duals after a pivot, from those before: a step along the new row of the inverse. */
  private shiftDuals(leaving: number, by: number): void {
    const { duals } = this;
    const { rows, inverse } = this.basis;
    const from = leaving * rows;
    for (let i = 0; i < this.sizes; i++) duals[i] = (duals[i] as number) + by * (inverse[from + i] as number);
    for (let j = 0; j < this.stockRow.length; j++) {
      const row = this.stockRow[j] as number;
      if (row >= 0)
        duals[this.sizes + j] = (duals[this.sizes + j] as number) + by * (inverse[from + row] as number);
    }
    this.exact = false;
  }

  private reducedCostOf(variable: number): number {
    if (variable >= 0) return this.reducedCost(this.columns[variable] as Column);
    const code = ~variable;
    if (code >= SURPLUS) return this.duals[code - SURPLUS] as number;
    if (code < this.sizes) return (this.penalties[code] as number) - (this.duals[code] as number);
    return 0 - (this.duals[this.sizes + this.stockRow.indexOf(code)] as number);
  }

  /** The variable whose reduced cost is lowest, if any is below 0; what has stood longest where several are alike. */
  private choose(): number | undefined {
    let lowest = -EPSILON * this.scale();
    let chosen: number | undefined;
    for (let i = 0; i < this.sizes; i++) {
      const dual = this.duals[i] as number;
      // Surplus: one more of a size than asked. Shortage: one less.
      if (dual < lowest) [lowest, chosen] = [dual, surplusOf(i)];
      const reduced = (this.penalties[i] as number) - dual;
      if (reduced < lowest) [lowest, chosen] = [reduced, ~i];
    }
    for (let j = 0; j < this.stockRow.length; j++) {
      const row = this.stockRow[j] as number;
      const reduced = 0 - (this.duals[this.sizes + j] as number);
      if (row >= 0 && reduced < lowest) [lowest, chosen] = [reduced, ~row];
    }
    for (let p = 0; p < this.columns.length; p++) {
      if (this.basis.has(p)) continue;
      const reduced = this.reducedCost(this.columns[p] as Column);
      if (reduced < lowest) [lowest, chosen] = [reduced, p];
    }
    return chosen;
  }

  private scale(): number {
    let most = 1;
    for (const dual of this.duals) most = Math.max(most, Math.abs(dual));
    return most;
  }

  reducedCost({ pattern: { stock, items, counts }, cost, also }: Column): number {
    let reduced = cost - (this.duals[this.sizes + stock] as number);
    if (also) for (const limit of also) reduced -= this.duals[this.sizes + limit] as number;
    for (let k = 0; k < items.length; k++)
      reduced -= (counts[k] as number) * (this.duals[items[k] as number] as number);
    return reduced;
  }

  private costOf(variable: number): number {
    if (variable >= 0) return (this.columns[variable] as Column).cost;
    const row = ~variable;
    return row < this.sizes ? (this.penalties[row] as number) : 0;
  }

  private entriesOf(variable: number): Entries {
    if (variable < 0) {
      const code = ~variable;
      return code >= SURPLUS ? [[code - SURPLUS, -1]] : [[code, 1]];
    }
    const { pattern, also } = this.columns[variable] as Column;
    const { stock, items, counts } = pattern;
    const entries: [row: number, by: number][] = items.map((item, k) => [item, counts[k] as number]);
    for (const limit of also ? [stock, ...also] : [stock]) {
      const row = this.stockRow[limit] as number;
      if (row >= 0) entries.push([row, 1]);
    }
    return entries;
  }
}

/** Surplus variables are told from shortage and slack by this. */
const SURPLUS = 1 << 20;
const surplusOf = (size: number): number => ~(size + SURPLUS);
