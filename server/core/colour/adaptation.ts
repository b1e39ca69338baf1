/**
 * Linear Bradford chromatic adaptation between two whites. Pure.
 *
 * Source: Lam, K. M. (1985); linear form and matrix as in ICC.1:2022, annex E.
 */
import { apply3, diagonal3, invert3, type Matrix3, multiply3, type Triple } from '../geometry/matrix3.ts';
import { WHITE_D65, XYZ_FROM_RGB } from './spaces.ts';

const BRADFORD: Matrix3 = [
  [0.8951, 0.2664, -0.1614],
  [-0.7502, 1.7135, 0.0367],
  [0.0389, -0.0685, 1.0296],
];

/** Matrix that takes XYZ under white `from` to the corresponding XYZ under white `to` (both Y = 1). */
export function bradfordMatrix(from: Triple, to: Triple): Matrix3 {
  const source = apply3(BRADFORD, from);
  const target = apply3(BRADFORD, to);
  const gain = diagonal3([target[0] / source[0], target[1] / source[1], target[2] / source[2]]);
  return multiply3(invert3(BRADFORD), multiply3(gain, BRADFORD));
}

/** Corresponding colour of one XYZ. */
export function adaptBradford(xyz: Triple, from: Triple, to: Triple): Triple {
  return apply3(bradfordMatrix(from, to), xyz);
}

const [whiteL, whiteM, whiteS] = apply3(BRADFORD, WHITE_D65);

/**
 * Bradford's three sharpened responses of linear sRGB, scaled so that a neutral under D65 gives three equal
 * numbers, its luminance. A change of illuminant is a gain on each of them.
 */
export const RESPONSES_FROM_RGB: Matrix3 = multiply3(
  multiply3(diagonal3([1 / whiteL, 1 / whiteM, 1 / whiteS]), BRADFORD),
  XYZ_FROM_RGB,
);
export const RGB_FROM_RESPONSES: Matrix3 = invert3(RESPONSES_FROM_RGB);
