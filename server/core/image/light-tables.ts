/**
 * Tables that turn many pixels into CIELAB quickly. Pure.
 *
 * The curve of the standard is read from 16,385 steps with straight lines between them: at most 0.0001 from
 * the exact L*. Source: ISO/CIE 11664-4:2019, IEC 61966-2-1:1999.
 */
import { labCurve } from '../colour/lab.ts';
import { WHITE_D65, XYZ_FROM_RGB } from '../colour/spaces.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { EncodedRaster } from './raster.ts';

const STEPS = 16384;
/** Rounding may push a white a hair above 1. */
const HIGHEST = 1.01;
const CURVE = Float64Array.from({ length: STEPS + 2 }, (_, step) => labCurve((step / STEPS) * HIGHEST));
const STEPS_PER_UNIT = STEPS / HIGHEST;

function curve(t: number): number {
  const place = t * STEPS_PER_UNIT;
  const step = place | 0;
  const below = CURVE[step] as number;
  return below + (place - step) * ((CURVE[step + 1] as number) - below);
}

const ROWS = XYZ_FROM_RGB.map((row, at) => row.map((weight) => weight / (WHITE_D65[at] as number)));
const [X_ROW, Y_ROW, Z_ROW] = ROWS as [number[], number[], number[]];
const [XR, XG, XB] = X_ROW as [number, number, number];
const [YR, YG, YB] = Y_ROW as [number, number, number];
const [ZR, ZG, ZB] = Z_ROW as [number, number, number];

export interface LabPlanes {
  readonly lightness: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
}

/** CIELAB of interleaved linear RGB, each sample 0..1. */
export function labPlanesFromLinear(linear: Float32Array): LabPlanes {
  const cells = linear.length / 3;
  const lightness = new Float32Array(cells);
  const a = new Float32Array(cells);
  const b = new Float32Array(cells);
  for (let cell = 0, at = 0; cell < cells; cell++, at += 3) {
    const red = linear[at] as number;
    const green = linear[at + 1] as number;
    const blue = linear[at + 2] as number;
    const fx = curve(XR * red + XG * green + XB * blue);
    const fy = curve(YR * red + YG * green + YB * blue);
    const fz = curve(ZR * red + ZG * green + ZB * blue);
    lightness[cell] = 116 * fy - 16;
    a[cell] = 500 * (fx - fy);
    b[cell] = 200 * (fy - fz);
  }
  return { lightness, a, b };
}

const Y_OF_RED = LINEAR_OF_CODE.map((light) => light * YR);
const Y_OF_GREEN = LINEAR_OF_CODE.map((light) => light * YG);
const Y_OF_BLUE = LINEAR_OF_CODE.map((light) => light * YB);

/** L* of every pixel as it is. */
export function lightnessOfPixels(raster: EncodedRaster): Float32Array {
  const { samples } = raster;
  const result = new Float32Array(raster.widthPx * raster.heightPx);
  for (let pixel = 0, at = 0; pixel < result.length; pixel++, at += 3) {
    const luminance =
      (Y_OF_RED[samples[at] as number] as number) +
      (Y_OF_GREEN[samples[at + 1] as number] as number) +
      (Y_OF_BLUE[samples[at + 2] as number] as number);
    result[pixel] = 116 * curve(luminance) - 16;
  }
  return result;
}
