/**
 * What the preview does to the light of one plane, as plain numbers that a shader can take as well.
 *
 * In the flow: fit-light -> [plane-light] -> relight, and the page's shader. Pure. Order: fine detail back towards the calm
 * picture, air in linear light, lightness and chroma by a curve each, a shift along the warm–cool axis.
 */
import { labCurve } from '../../colour/lab.ts';
import { RGB_FROM_XYZ, WHITE_D65, XYZ_FROM_RGB } from '../../colour/spaces.ts';
import type { AirChange } from '../air/through-air.ts';

/** Steps of each curve. */
export const CURVE_STEPS = 256;
/** The lightness curve runs from 0 to this, L*; the chroma curve from 0 to this, C*ab. */
export const MOST_LIGHTNESS = 100;
export const MOST_CHROMA = 160;

export interface PlaneLight {
  /** Share of the fine detail that is kept, 0..1. */
  readonly detail: number;
  readonly air: AirChange;
  /** L* after L*, `CURVE_STEPS` even steps. */
  readonly lightness: Float32Array;
  /** C*ab after C*ab, likewise. */
  readonly chroma: Float32Array;
  /** Added to a* and b* at last. */
  readonly shift: readonly [a: number, b: number];
}

export const NO_AIR_CHANGE: AirChange = { gain: [1, 1, 1], offset: [0, 0, 0] };

export function readCurve(curve: Float32Array, at: number, most: number): number {
  const place = Math.min(CURVE_STEPS - 1, Math.max(0, (at / most) * (CURVE_STEPS - 1)));
  const step = Math.min(CURVE_STEPS - 2, Math.floor(place));
  const below = curve[step] as number;
  return below + (place - step) * ((curve[step + 1] as number) - below);
}

const TO_WHITE = XYZ_FROM_RGB.map((row, at) => row.map((weight) => weight / (WHITE_D65[at] as number)));
const FROM_WHITE = RGB_FROM_XYZ.map((row) => row.map((weight, at) => weight * (WHITE_D65[at] as number)));
const [[XR, XG, XB], [YR, YG, YB], [ZR, ZG, ZB]] = TO_WHITE as [number, number, number][] as [
  [number, number, number],
  [number, number, number],
  [number, number, number],
];
const [[RX, RY, RZ], [GX, GY, GZ], [BX, BY, BZ]] = FROM_WHITE as [number, number, number][] as [
  [number, number, number],
  [number, number, number],
  [number, number, number],
];
/** (6/29): where the cube gives way to the straight line. */
const KNEE = 6 / 29;

function cube(f: number): number {
  return f > KNEE ? f * f * f : (116 * f - 16) / (24389 / 27);
}

function unit(value: number): number {
  return Math.min(1, Math.max(0, value));
}

/**
 * One colour of a plane in the planned light.
 * @param colour linear RGB 0..1, three numbers from `at`, detail already treated. @param into three numbers, 0..1.
 */
export function litColour(
  light: PlaneLight,
  colour: ArrayLike<number>,
  at: number,
  into: Float64Array,
): void {
  const { gain, offset } = light.air;
  const red = unit((colour[at] as number) * gain[0] + offset[0]);
  const green = unit((colour[at + 1] as number) * gain[1] + offset[1]);
  const blue = unit((colour[at + 2] as number) * gain[2] + offset[2]);
  const fx = labCurve(XR * red + XG * green + XB * blue);
  const fy = labCurve(YR * red + YG * green + YB * blue);
  const fz = labCurve(ZR * red + ZG * green + ZB * blue);
  const [a, b] = [500 * (fx - fy), 200 * (fy - fz)];
  const lightness = readCurve(light.lightness, 116 * fy - 16, MOST_LIGHTNESS);
  const chroma = Math.sqrt(a * a + b * b);
  // Close to grey the curve is a straight line through 0, so any small chroma gives its slope.
  const reach = Math.max(chroma, 1e-3);
  const factor = readCurve(light.chroma, reach, MOST_CHROMA) / reach;
  const gy = (lightness + 16) / 116;
  const x = cube(gy + (a * factor + light.shift[0]) / 500);
  const y = cube(gy);
  const z = cube(gy - (b * factor + light.shift[1]) / 200);
  into[0] = unit(RX * x + RY * y + RZ * z);
  into[1] = unit(GX * x + GY * y + GZ * z);
  into[2] = unit(BX * x + BY * y + BZ * z);
}
