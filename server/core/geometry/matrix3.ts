/**
 * 3×3 matrices, row-major, for colour spaces and homographies. Pure.
 */

/** Three numbers: a colour, or a point in homogeneous coordinates. */
export type Triple = readonly [number, number, number];

/** Row-major 3×3. */
export type Matrix3 = readonly [Triple, Triple, Triple];

function dot(a: Triple, b: Triple): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** Matrix times column. */
export function apply3(matrix: Matrix3, vector: Triple): Triple {
  return [dot(matrix[0], vector), dot(matrix[1], vector), dot(matrix[2], vector)];
}

/** `left` times `right`. */
export function multiply3(left: Matrix3, right: Matrix3): Matrix3 {
  const [p, q, r] = transpose3(right);
  const row = (of: Triple): Triple => [dot(of, p), dot(of, q), dot(of, r)];
  return [row(left[0]), row(left[1]), row(left[2])];
}

export function transpose3(matrix: Matrix3): Matrix3 {
  const [p, q, r] = matrix;
  return [
    [p[0], q[0], r[0]],
    [p[1], q[1], r[1]],
    [p[2], q[2], r[2]],
  ];
}

export function cross3(a: Triple, b: Triple): Triple {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

export function dot3(a: Triple, b: Triple): number {
  return dot(a, b);
}

/**
 * Inverse by cofactors.
 * @throws Error when the determinant is zero or not finite; callers check their input first.
 */
export function invert3(matrix: Matrix3): Matrix3 {
  const [p, q, r] = matrix;
  const [qr, rp, pq] = [cross3(q, r), cross3(r, p), cross3(p, q)];
  const determinant = dot(p, qr);
  if (determinant === 0 || !Number.isFinite(determinant))
    throw new Error('A singular matrix has no inverse.');
  const column = (of: Triple): Triple => [of[0] / determinant, of[1] / determinant, of[2] / determinant];
  return transpose3([column(qr), column(rp), column(pq)]);
}

/** Diagonal matrix. */
export function diagonal3(of: Triple): Matrix3 {
  return [
    [of[0], 0, 0],
    [0, of[1], 0],
    [0, 0, of[2]],
  ];
}
