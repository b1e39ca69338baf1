/**
 * Linear sRGB <-> OKLab, for drawn scales only; no figure is measured in it. Pure.
 *
 * Source: Ottosson, B. (2020), "A perceptual color space for image processing", matrices of January 2021.
 */
import { apply3, invert3, type Matrix3, type Triple } from '../geometry/matrix3.ts';

const CONES_FROM_RGB: Matrix3 = [
  [0.4122214708, 0.5363325363, 0.0514459929],
  [0.2119034982, 0.6806995451, 0.1073969566],
  [0.0883024619, 0.2817188376, 0.6299787005],
];
const OKLAB_FROM_ROOTS: Matrix3 = [
  [0.2104542553, 0.793617785, -0.0040720468],
  [1.9779984951, -2.428592205, 0.4505937099],
  [0.0259040371, 0.7827717662, -0.808675766],
];
const ROOTS_FROM_OKLAB = invert3(OKLAB_FROM_ROOTS);
const RGB_FROM_CONES = invert3(CONES_FROM_RGB);

/** @param rgb linear sRGB. @returns L 0..1, a, b. */
export function oklabFromRgb(rgb: Triple): Triple {
  const [l, m, s] = apply3(CONES_FROM_RGB, rgb);
  return apply3(OKLAB_FROM_ROOTS, [Math.cbrt(l), Math.cbrt(m), Math.cbrt(s)]);
}

/** Inverse of `oklabFromRgb`. */
export function rgbFromOklab(oklab: Triple): Triple {
  const [l, m, s] = apply3(ROOTS_FROM_OKLAB, oklab);
  return apply3(RGB_FROM_CONES, [l ** 3, m ** 3, s ** 3]);
}
