/**
 * A photo of a painting to its plate: light made neutral, painting squared, one rounding at the end.
 *
 * In the flow: decoded photo -> [correct-photo] -> prepare. Everything is averaged in linear light. Pure.
 */
import { RESPONSES_FROM_RGB, RGB_FROM_RESPONSES } from '../colour/adaptation.ts';
import { codeOfLinear, LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { PhotoCorrection } from '../contract/setup.ts';
import { project, squareToCorners } from '../geometry/homography.ts';
import { diagonal3, type Matrix3, multiply3 } from '../geometry/matrix3.ts';
import { type EncodedRaster, encodedRaster, type MeasurablePlate, PLATE_LIMIT_PX } from '../image/raster.ts';
import { checkCorners } from './check-corners.ts';
import { changesNoLight, EVEN_LIGHT, type LightField, readLight } from './light-field.ts';
import { meanSidesPx, sideRatioOf } from './side-ratio.ts';
import { WHOLE_PHOTO } from './whole-photo.ts';

/** What will be done to one photo. */
export interface CorrectionPlan {
  readonly widthPx: number;
  readonly heightPx: number;
  /** From fractions of the plate to fractions of the photo. */
  readonly toPhoto: Matrix3;
  readonly light: LightField;
}

/** Size of the plate: the side ratio asked for, never larger than the photo shows it, at most `PLATE_LIMIT_PX`. */
function plateSize(across: number, down: number, ratio: number): [number, number] {
  const width = Math.min(across, down * ratio);
  const shrink = Math.min(1, PLATE_LIMIT_PX / Math.max(width, width / ratio));
  return [Math.max(1, Math.round(width * shrink)), Math.max(1, Math.round((width * shrink) / ratio))];
}

/**
 * Works out what a correction does, without touching a pixel of the result.
 * @param working upright photo. @throws Problem `corners-invalid` or `card-invalid`.
 */
export function planCorrection(working: EncodedRaster, photo: PhotoCorrection): CorrectionPlan {
  const { widthPx, heightPx } = working;
  const corners = photo.corners ?? WHOLE_PHOTO;
  checkCorners(corners);
  const [across, down] = meanSidesPx(corners, widthPx, heightPx);
  const ratio = photo.corners ? sideRatioOf(corners, widthPx, heightPx, photo.size).ratio : across / down;
  const [plateWidthPx, plateHeightPx] = plateSize(across, down, ratio);
  return {
    widthPx: plateWidthPx,
    heightPx: plateHeightPx,
    toPhoto: squareToCorners(corners),
    light:
      photo.corners || photo.cards?.length
        ? readLight(working, photo.cards ?? [], corners, photo.corners !== undefined)
        : EVEN_LIGHT,
  };
}

/** Samples a side to average for one plate pixel: as many photo pixels as it covers where it covers most. */
function samplesASide(working: EncodedRaster, plan: CorrectionPlan): number {
  const at = (x: number, y: number): readonly [number, number] => project(plan.toPhoto, [x, y]);
  const [stepX, stepY] = [1 / plan.widthPx, 1 / plan.heightPx];
  const ends = [
    [0, 0],
    [1 - stepX, 0],
    [0, 1 - stepY],
    [1 - stepX, 1 - stepY],
  ] as const;
  const covered = ends.flatMap(([x, y]) => {
    const [here, right, below] = [at(x, y), at(x + stepX, y), at(x, y + stepY)];
    return [right, below].map((there) =>
      Math.hypot((there[0] - here[0]) * working.widthPx, (there[1] - here[1]) * working.heightPx),
    );
  });
  return Math.min(8, Math.max(1, Math.ceil(Math.max(...covered) - 0.05)));
}

/** Adds the bilinear linear-light colour at a place in photo pixels (pixel centres at .5) to `sum`. */
function addSample(raster: EncodedRaster, x: number, y: number, sum: Float64Array): void {
  const { samples, widthPx, heightPx } = raster;
  const px = Math.min(widthPx - 1, Math.max(0, x - 0.5));
  const py = Math.min(heightPx - 1, Math.max(0, y - 0.5));
  const [left, top] = [px | 0, py | 0];
  const [along, down] = [px - left, py - top];
  const upper = (top * widthPx + left) * 3;
  const right = left + 1 < widthPx ? 3 : 0;
  const lower = top + 1 < heightPx ? upper + widthPx * 3 : upper;
  for (let channel = 0; channel < 3; channel++) {
    const p = LINEAR_OF_CODE[samples[upper + channel] as number] as number;
    const q = LINEAR_OF_CODE[samples[upper + right + channel] as number] as number;
    const r = LINEAR_OF_CODE[samples[lower + channel] as number] as number;
    const s = LINEAR_OF_CODE[samples[lower + right + channel] as number] as number;
    const above = p + along * (q - p);
    sum[channel] = (sum[channel] as number) + above + down * (r + along * (s - r) - above);
  }
}

/** From linear light as it was seen to linear light under an even D65, for one place of the photo. */
function lightMatrix(light: LightField, x: number, y: number): Matrix3 {
  const gain = ([0, 1, 2] as const).map((response) =>
    Math.exp(light.constant[response] + x * light.perWidth[response] + y * light.perHeight[response]),
  ) as [number, number, number]; // three in, three out
  return multiply3(RGB_FROM_RESPONSES, multiply3(diagonal3(gain), RESPONSES_FROM_RGB));
}

/** Squares between whose corners the light is taken as even, a side of the plate. */
const LIGHT_SQUARES = 128;

/** The light of each square of the plate: nine numbers a square, row by row. One square where it is even. */
function lightOfSquares(plan: CorrectionPlan): { squares: number; matrices: Float64Array } {
  const { light, toPhoto } = plan;
  const even = [...light.perWidth, ...light.perHeight].every((slope) => slope === 0);
  const squares = even ? 1 : LIGHT_SQUARES;
  const matrices = new Float64Array(squares * squares * 9);
  for (let square = 0; square < squares * squares; square++) {
    const [x, y] = project(toPhoto, [
      ((square % squares) + 0.5) / squares,
      (Math.floor(square / squares) + 0.5) / squares,
    ]);
    matrices.set(lightMatrix(light, x, y).flat(), square * 9);
  }
  return { squares, matrices };
}

/** Means, as they are. */
function writeMean(sum: Float64Array, parts: number, result: Uint8Array, to: number): void {
  result[to] = codeOfLinear((sum[0] as number) / parts);
  result[to + 1] = codeOfLinear((sum[1] as number) / parts);
  result[to + 2] = codeOfLinear((sum[2] as number) / parts);
}

/** Means, under the light of one square. @param m nine numbers, row by row. */
function writeLit(sum: Float64Array, parts: number, m: Float64Array, result: Uint8Array, to: number): void {
  const red = (sum[0] as number) / parts;
  const green = (sum[1] as number) / parts;
  const blue = (sum[2] as number) / parts;
  for (let channel = 0; channel < 3; channel++) {
    const at = channel * 3;
    result[to + channel] = codeOfLinear(
      (m[at] as number) * red + (m[at + 1] as number) * green + (m[at + 2] as number) * blue,
    );
  }
}

/** Carries a plan out: averages, light, and one rounding. */
export function applyCorrection(working: EncodedRaster, plan: CorrectionPlan): EncodedRaster {
  const { widthPx, heightPx, toPhoto } = plan;
  const [[m00, m01, m02], [m10, m11, m12], [m20, m21, m22]] = toPhoto;
  const side = samplesASide(working, plan);
  const parts = side * side;
  const untouched = changesNoLight(plan.light);
  const { squares, matrices } = lightOfSquares(plan);
  const result = new Uint8Array(widthPx * heightPx * 3);
  const sum = new Float64Array(3);
  for (let row = 0, to = 0; row < heightPx; row++) {
    const squareRow = Math.floor((row * squares) / heightPx) * squares;
    for (let column = 0; column < widthPx; column++, to += 3) {
      sum.fill(0);
      for (let part = 0; part < parts; part++) {
        const u = (column + ((part % side) + 0.5) / side) / widthPx;
        const v = (row + (((part / side) | 0) + 0.5) / side) / heightPx;
        const w = m20 * u + m21 * v + m22;
        addSample(
          working,
          ((m00 * u + m01 * v + m02) / w) * working.widthPx,
          ((m10 * u + m11 * v + m12) / w) * working.heightPx,
          sum,
        );
      }
      const square = squareRow + (((column * squares) / widthPx) | 0);
      if (untouched) writeMean(sum, parts, result, to);
      else writeLit(sum, parts, matrices.subarray(square * 9, square * 9 + 9), result, to);
    }
  }
  return encodedRaster(widthPx, heightPx, result);
}

/** One byte of each photo pixel, carried to the plate pixel whose middle falls on it. */
export function carryBytes(
  valueAt: (pixel: number) => number,
  working: EncodedRaster,
  plan: CorrectionPlan,
): Uint8Array {
  const { widthPx, heightPx, toPhoto } = plan;
  const [[m00, m01, m02], [m10, m11, m12], [m20, m21, m22]] = toPhoto;
  const result = new Uint8Array(widthPx * heightPx);
  for (let row = 0, to = 0; row < heightPx; row++) {
    const v = (row + 0.5) / heightPx;
    for (let column = 0; column < widthPx; column++, to++) {
      const u = (column + 0.5) / widthPx;
      const w = m20 * u + m21 * v + m22;
      const x = Math.floor(((m00 * u + m01 * v + m02) / w) * working.widthPx);
      const y = Math.floor(((m10 * u + m11 * v + m12) / w) * working.heightPx);
      const px = Math.min(working.widthPx - 1, Math.max(0, x));
      const py = Math.min(working.heightPx - 1, Math.max(0, y));
      result[to] = valueAt(py * working.widthPx + px);
    }
  }
  return result;
}

/** Whether a photo becomes its plate as it is. */
export function changesNothing(working: EncodedRaster, photo: PhotoCorrection | undefined): boolean {
  const small = Math.max(working.widthPx, working.heightPx) <= PLATE_LIMIT_PX;
  return small && !photo?.corners && !photo?.cards?.length;
}

/**
 * The plate of a photo: squared by its corners, made neutral by its cards, at most 2,048 px, never enlarged.
 *
 * @param working upright photo in sRGB, best at about the size of the plate or up to a few times larger.
 * @param photo fractions of `working`. Without corners or cards a photo that fits comes back as it is.
 * @throws Problem `corners-invalid` or `card-invalid`.
 */
export function correctPhoto(working: EncodedRaster, photo: PhotoCorrection | undefined): EncodedRaster {
  return correctPlate({ raster: working }, photo).raster;
}

/** As `correctPhoto`, with the clip map carried along where there is one. */
export function correctPlate(working: MeasurablePlate, photo: PhotoCorrection | undefined): MeasurablePlate {
  const { raster, clipped } = working;
  if (changesNothing(raster, photo)) return working;
  const plan = planCorrection(raster, photo ?? {});
  return {
    raster: applyCorrection(raster, plan),
    clipped: clipped ? carryBytes((pixel) => clipped[pixel] as number, raster, plan) : null,
  };
}
