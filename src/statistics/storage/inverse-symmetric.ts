/**
 * The inverse of a symmetric positive definite matrix (an information matrix), by its Cholesky factor.
 *
 * @returns null where it is not positive definite: some parameter cannot be told from the others
 *
 * Source: textbook linear algebra. Checked against: R `chol2inv(chol(x))`.
 */
export function inverseSymmetric(matrix: readonly (readonly number[])[]): number[][] | null {
  const size = matrix.length;
  const factor: number[][] = matrix.map(() => matrix.map(() => 0));
  for (let row = 0; row < size; row++) {
    for (let column = 0; column <= row; column++) {
      let rest = cell(matrix, row, column);
      for (let k = 0; k < column; k++) rest -= cell(factor, row, k) * cell(factor, column, k);
      if (row !== column) put(factor, row, column, rest / cell(factor, column, column));
      else if (rest > 1e-14 * Math.abs(cell(matrix, row, row))) put(factor, row, row, Math.sqrt(rest));
      else return null;
    }
  }
  const columns = matrix.map((_, index) => solved(factor, index));
  return matrix.map((_, row) => columns.map((column) => column[row] ?? 0));
}

/** Solves L Lᵀ x = e for one column e of the unit matrix. */
function solved(factor: readonly (readonly number[])[], unit: number): number[] {
  const size = factor.length;
  const x: number[] = factor.map((_, index) => (index === unit ? 1 : 0));
  for (let row = 0; row < size; row++) {
    let rest = x[row] ?? 0;
    for (let k = 0; k < row; k++) rest -= cell(factor, row, k) * (x[k] ?? 0);
    x[row] = rest / cell(factor, row, row);
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = x[row] ?? 0;
    for (let k = row + 1; k < size; k++) rest -= cell(factor, k, row) * (x[k] ?? 0);
    x[row] = rest / cell(factor, row, row);
  }
  return x;
}

const cell = (matrix: readonly (readonly number[])[], row: number, column: number): number =>
  matrix[row]?.[column] ?? 0;

function put(matrix: number[][], row: number, column: number, value: number): void {
  const line = matrix[row];
  if (line) line[column] = value;
}
