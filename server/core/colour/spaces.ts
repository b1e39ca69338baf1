/**
 * Linear RGB <-> CIE XYZ, with white Y = 1.
 *
 * The matrix is derived here from the primaries and the white, so no rounded constant enters. Pure.
 * Source: IEC 61966-2-1:1999 (primaries, D65 as x 0.3127, y 0.3290); derivation as in SMPTE RP 177.
 */
import {
  apply3,
  diagonal3,
  invert3,
  type Matrix3,
  multiply3,
  type Triple,
  transpose3,
} from '../geometry/matrix3.ts';

/** XYZ of a chromaticity with Y = 1. */
export function whiteFromChromaticity(x: number, y: number): Triple {
  return [x / y, 1, (1 - x - y) / y];
}

/** D65 as sRGB defines it. */
export const WHITE_D65: Triple = whiteFromChromaticity(0.3127, 0.329);

const PRIMARIES: Matrix3 = transpose3([
  whiteFromChromaticity(0.64, 0.33),
  whiteFromChromaticity(0.3, 0.6),
  whiteFromChromaticity(0.15, 0.06),
]);

/** Rows give X, Y, Z from linear sRGB. */
export const XYZ_FROM_RGB: Matrix3 = multiply3(PRIMARIES, diagonal3(apply3(invert3(PRIMARIES), WHITE_D65)));
/** Rows give linear red, green, blue from XYZ. */
export const RGB_FROM_XYZ: Matrix3 = invert3(XYZ_FROM_RGB);

/** @param rgb linear sRGB, white 1, 1, 1. @returns XYZ, white Y = 1. */
export function xyzFromRgb(rgb: Triple): Triple {
  return apply3(XYZ_FROM_RGB, rgb);
}

/** Inverse of `xyzFromRgb`; outside sRGB a channel leaves 0..1. */
export function rgbFromXyz(xyz: Triple): Triple {
  return apply3(RGB_FROM_XYZ, xyz);
}
