/**
 * A picture as it is shown: as photographed, or squared by its corners.
 *
 * Everything stored is in 0..1 of the upright original; what is drawn is in 0..1 of what is shown. A frame maps
 * between the two. In the flow: photo correction -> [frame] -> stage, layers. Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { apply3, invert3, type Matrix3, multiply3 } from '#server/core/geometry/matrix3.ts';
import type { Size } from './view-transform.ts';

export interface Frame {
  /** Shape of what is shown; only the ratio counts. */
  size: Size;
  /** 0..1 of the original -> 0..1 of what is shown; null when they are the same. */
  matrix: Matrix3 | null;
  /** Squared by its corners: nothing but the painting itself is seen. */
  squared: boolean;
  /** Left and right are changed over. */
  mirrored: boolean;
  shown(point: FractionPoint): FractionPoint;
  original(point: FractionPoint): FractionPoint;
}

export function plainFrame(size: Size): Frame {
  return {
    size,
    matrix: null,
    squared: false,
    mirrored: false,
    shown: (point) => point,
    original: (point) => point,
  };
}

/** @param matrix 0..1 of the upright original -> 0..1 of the squared picture; not singular. */
export function squaredFrame(size: Size, matrix: Matrix3): Frame {
  const back = invert3(matrix);
  return {
    size,
    matrix,
    squared: true,
    mirrored: false,
    shown: (point) => through(matrix, point),
    original: (point) => through(back, point),
  };
}

const CHANGED_OVER: Matrix3 = [
  [-1, 0, 1],
  [0, 1, 0],
  [0, 0, 1],
];

/** The same frame with left and right changed over. */
export function mirroredFrame({ size, matrix, squared, shown, original }: Frame): Frame {
  const over = ([x, y]: FractionPoint): FractionPoint => [1 - x, y];
  return {
    size,
    matrix: matrix ? multiply3(CHANGED_OVER, matrix) : CHANGED_OVER,
    squared,
    mirrored: true,
    shown: (point) => over(shown(point)),
    original: (point) => original(over(point)),
  };
}

function through(matrix: Matrix3, [x, y]: FractionPoint): FractionPoint {
  const [u, v, w] = apply3(matrix, [x, y, 1]);
  return [u / w, v / w];
}

/**
 * The CSS transform that lays a picture of `width` × `height` CSS pixels as the frame wants it.
 *
 * @param m 0..1 of the original -> 0..1 of what is shown, which is as large as the picture's box.
 */
export function cssMatrix(m: Matrix3, width: number, height: number): string {
  const [[a, b, c], [d, e, f], [g, h, i]] = m;
  const columns = [
    [a, (d * height) / width, 0, g / width],
    [(b * width) / height, e, 0, h / height],
    [0, 0, 1, 0],
    [c * width, f * height, 0, i],
  ];
  return `matrix3d(${columns.flat().join(',')})`;
}
