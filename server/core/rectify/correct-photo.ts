/**
 * A photo of a painting to its plate: light made neutral, painting squared, one rounding at the end.
 *
 * In the flow: decoded photo -> [correct-photo] -> prepare. Everything is averaged in linear light. Pure.
 */
import { codeOfLinear, LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { PhotoCorrection } from '../contract/setup.ts';
import { type Corners, project, squareToCorners } from '../geometry/homography.ts';
import type { Matrix3 } from '../geometry/matrix3.ts';
import { type EncodedRaster, encodedRaster, type MeasurablePlate, PLATE_LIMIT_PX } from '../image/raster.ts';
import { EVEN_LIGHT, type LightField, lightFromCards } from './card-light.ts';
import { checkCorners } from './check-corners.ts';
import { meanSidesPx, sideRatioOf } from './side-ratio.ts';

/** The whole photo as corners. */
export const WHOLE_PHOTO: Corners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

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
    light: photo.cards?.length ? lightFromCards(working, photo.cards) : EVEN_LIGHT,
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

function gainAt(light: LightField, channel: 0 | 1 | 2, x: number, y: number): number {
  return Math.exp(light.constant[channel] + x * light.perWidth[channel] + y * light.perHeight[channel]);
}

/** Carries a plan out: averages, light, and one rounding. */
export function applyCorrection(working: EncodedRaster, plan: CorrectionPlan): EncodedRaster {
  const { widthPx, heightPx, toPhoto, light } = plan;
  const [[m00, m01, m02], [m10, m11, m12], [m20, m21, m22]] = toPhoto;
  const side = samplesASide(working, plan);
  const result = new Uint8Array(widthPx * heightPx * 3);
  const sum = new Float64Array(3);
  for (let row = 0, to = 0; row < heightPx; row++) {
    for (let column = 0; column < widthPx; column++, to += 3) {
      sum.fill(0);
      let [centreX, centreY] = [0, 0];
      for (let part = 0; part < side * side; part++) {
        const u = (column + ((part % side) + 0.5) / side) / widthPx;
        const v = (row + (((part / side) | 0) + 0.5) / side) / heightPx;
        const w = m20 * u + m21 * v + m22;
        const [x, y] = [(m00 * u + m01 * v + m02) / w, (m10 * u + m11 * v + m12) / w];
        addSample(working, x * working.widthPx, y * working.heightPx, sum);
        centreX += x;
        centreY += y;
      }
      const parts = side * side;
      for (const channel of [0, 1, 2] as const) {
        const gain = light === EVEN_LIGHT ? 1 : gainAt(light, channel, centreX / parts, centreY / parts);
        result[to + channel] = codeOfLinear(((sum[channel] as number) / parts) * gain);
      }
    }
  }
  return encodedRaster(widthPx, heightPx, result);
}

/** The clip map of the working photo, carried to the plate pixel by pixel. */
function carryClipMap(clipped: Uint8Array, working: EncodedRaster, plan: CorrectionPlan): Uint8Array {
  const { widthPx, heightPx, toPhoto } = plan;
  const result = new Uint8Array(widthPx * heightPx);
  for (let row = 0, to = 0; row < heightPx; row++) {
    for (let column = 0; column < widthPx; column++, to++) {
      const [x, y] = project(toPhoto, [(column + 0.5) / widthPx, (row + 0.5) / heightPx]);
      const px = Math.min(working.widthPx - 1, Math.max(0, Math.floor(x * working.widthPx)));
      const py = Math.min(working.heightPx - 1, Math.max(0, Math.floor(y * working.heightPx)));
      result[to] = clipped[py * working.widthPx + px] as number;
    }
  }
  return result;
}

function changesNothing(working: EncodedRaster, photo: PhotoCorrection | undefined): boolean {
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
    clipped: clipped ? carryClipMap(clipped, raster, plan) : null,
  };
}
