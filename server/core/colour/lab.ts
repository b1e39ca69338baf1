/**
 * CIE XYZ <-> CIELAB with white D65, and chroma and hue angle.
 *
 * In the flow: blurred plate -> [lab] -> plane figures. Pure.
 * Source: ISO/CIE 11664-4:2019, CIE 1976 L*a*b* colour space.
 */
import type { LabColour } from '../contract/setup.ts';
import type { Triple } from '../geometry/matrix3.ts';
import { rgbFromXyz, WHITE_D65, xyzFromRgb } from './spaces.ts';

/** t below which the cube root gives way to a straight line: (6/29)^3. */
const LINEAR_LIMIT = 216 / 24389;
/** L* per unit of Y/Yn on that line: (29/3)^3. */
const LINEAR_SLOPE = 24389 / 27;

/** The standard's f(t): cube root, straight near black. */
export function labCurve(t: number): number {
  return t > LINEAR_LIMIT ? Math.cbrt(t) : (LINEAR_SLOPE * t + 16) / 116;
}

function labCurveInverse(f: number): number {
  const cube = f * f * f;
  return cube > LINEAR_LIMIT ? cube : (116 * f - 16) / LINEAR_SLOPE;
}

/** @param luminance Y/Yn, 0..1. @returns L*, 0..100; never clipped. */
export function lightnessFromLuminance(luminance: number): number {
  return 116 * labCurve(luminance) - 16;
}

/** @param lightness L*. @returns Y/Yn. */
export function luminanceFromLightness(lightness: number): number {
  return labCurveInverse((lightness + 16) / 116);
}

/** @param xyz white Y = 1. @param white XYZ of the white, default D65. */
export function labFromXyz(xyz: Triple, white: Triple = WHITE_D65): LabColour {
  const [fx, fy, fz] = [
    labCurve(xyz[0] / white[0]),
    labCurve(xyz[1] / white[1]),
    labCurve(xyz[2] / white[2]),
  ];
  return { L: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

/** Inverse of `labFromXyz`. */
export function xyzFromLab(lab: LabColour, white: Triple = WHITE_D65): Triple {
  const fy = (lab.L + 16) / 116;
  return [
    white[0] * labCurveInverse(fy + lab.a / 500),
    white[1] * labCurveInverse(fy),
    white[2] * labCurveInverse(fy - lab.b / 200),
  ];
}

/** CIELAB (D65) of a linear sRGB colour. */
export function labFromRgb(rgb: Triple): LabColour {
  return labFromXyz(xyzFromRgb(rgb));
}

/** Linear sRGB of a CIELAB (D65) colour; outside sRGB a channel leaves 0..1. */
export function rgbFromLab(lab: LabColour): Triple {
  return rgbFromXyz(xyzFromLab(lab));
}

/** C*ab. */
export function chromaOf(a: number, b: number): number {
  return Math.sqrt(a * a + b * b);
}

/** Hue angle in degrees, 0 up to 360; 0 for a neutral, which has none. */
export function hueDegOf(a: number, b: number): number {
  const degrees = (Math.atan2(b, a) * 180) / Math.PI;
  return degrees < 0 ? degrees + 360 : degrees;
}
