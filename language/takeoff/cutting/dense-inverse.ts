/** Square, by rows. */
export function identity(rows: number): Float64Array {
  const matrix = new Float64Array(rows * rows);
  for (let row = 0; row < rows; row++) matrix[row * rows + row] = 1;
  return matrix;
}

/** By elimination with the largest pivots; undefined where there is none. Takes the matrix for its own use. */
export function inverted(matrix: Float64Array, rows: number): Float64Array | undefined {
  const inverse = identity(rows);
  for (let k = 0; k < rows; k++) {
    let pivot = k;
    for (let row = k + 1; row < rows; row++)
      if (Math.abs(matrix[row * rows + k] as number) > Math.abs(matrix[pivot * rows + k] as number))
        pivot = row;
    const by = matrix[pivot * rows + k] as number;
    if (Math.abs(by) < 1e-12) return undefined;
    for (const each of [matrix, inverse]) {
      for (let c = 0; c < rows; c++) {
        const held = each[pivot * rows + c] as number;
        each[pivot * rows + c] = each[k * rows + c] as number;
        each[k * rows + c] = held / by;
      }
    }
    for (let row = 0; row < rows; row++) {
      const factor = matrix[row * rows + k] as number;
      if (row === k || factor === 0) continue;
      for (const each of [matrix, inverse])
        for (let c = 0; c < rows; c++)
          each[row * rows + c] = (each[row * rows + c] as number) - factor * (each[k * rows + c] as number);
    }
  }
  return inverse;
}
