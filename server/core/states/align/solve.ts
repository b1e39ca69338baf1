/**
 * Small systems of linear equations, symmetric and positive, by Cholesky's factors. In the flow: refine -> [solve]. Pure.
 */

/** The lower factor, in place; false when the matrix is not positive. */
function factor(matrix: Float64Array, size: number): boolean {
  for (let column = 0; column < size; column++) {
    for (let row = column; row < size; row++) {
      let rest = matrix[row * size + column] as number;
      for (let k = 0; k < column; k++) {
        rest -= (matrix[row * size + k] as number) * (matrix[column * size + k] as number);
      }
      if (row > column) matrix[row * size + column] = rest / (matrix[column * size + column] as number);
      else if (rest > 0) matrix[row * size + column] = Math.sqrt(rest);
      else return false;
    }
  }
  return true;
}

/**
 * @param matrix `size` × `size`, row by row; only its lower half is read, and it is written over.
 * @returns Null when it is not positive.
 */
export function solvePositive(matrix: Float64Array, right: Float64Array): Float64Array | null {
  const size = right.length;
  if (!factor(matrix, size)) return null;
  const found = Float64Array.from(right);
  for (let row = 0; row < size; row++) {
    let rest = found[row] as number;
    for (let k = 0; k < row; k++) rest -= (matrix[row * size + k] as number) * (found[k] as number);
    found[row] = rest / (matrix[row * size + row] as number);
  }
  for (let row = size - 1; row >= 0; row--) {
    let rest = found[row] as number;
    for (let k = row + 1; k < size; k++) rest -= (matrix[k * size + row] as number) * (found[k] as number);
    found[row] = rest / (matrix[row * size + row] as number);
  }
  return found;
}
