/**
 * Gain that makes neutral cards neutral at their known luminance.
 *
 * In the flow: photo + card boxes -> [card-light] -> correct-photo. One card gives one gain a channel; two or
 * more a plane in log gain over the photo, by least squares. All in linear light. Pure.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { Card } from '../contract/setup.ts';
import { CLIP, clipOf, type EncodedRaster } from '../image/raster.ts';
import { Problem } from '../problem.ts';

/** Part of a box, in the middle, that is looked at. */
const CENTRAL = 0.8;
const FEWEST_PIXELS = 16;
/** Share of clipped pixels from which a card's mean can't be trusted. */
const MOST_CLIPPED = 0.02;
const DARKEST = 0.002;
/** Largest channel over smallest of a neutral card under any lamp from 2,000 K to 12,000 K, with room. */
const STRONGEST_CAST = 12;

type Channels = [number, number, number];

interface Sample {
  /** Centre of the box, fractions of the photo. */
  readonly x: number;
  readonly y: number;
  readonly logGain: Channels;
}

/** log gain = constant + x · perWidth + y · perHeight, a channel each; x, y fractions of the photo. */
export interface LightField {
  readonly constant: Channels;
  readonly perWidth: Channels;
  readonly perHeight: Channels;
  /** Cards that could not be used, in whole sentences. */
  readonly reasons: readonly string[];
}

const NO_LIGHT: Channels = [0, 0, 0];

/** The field that changes nothing. */
export const EVEN_LIGHT: LightField = {
  constant: NO_LIGHT,
  perWidth: NO_LIGHT,
  perHeight: NO_LIGHT,
  reasons: [],
};

function pixelBox(card: Card, raster: EncodedRaster, number: number) {
  const [x0, y0, x1, y1] = card.box;
  const valid = x0 >= 0 && y0 >= 0 && x1 <= 1 && y1 <= 1 && x0 < x1 && y0 < y1;
  if (!valid) {
    throw new Problem(
      'card-invalid',
      `Card ${number} has the box ${card.box.join(', ')}. A box is left, top, right, bottom, each 0 to 1 of the photo; draw it again.`,
    );
  }
  const rim = (1 - CENTRAL) / 2;
  const left = Math.round((x0 + rim * (x1 - x0)) * raster.widthPx);
  const right = Math.round((x1 - rim * (x1 - x0)) * raster.widthPx);
  const top = Math.round((y0 + rim * (y1 - y0)) * raster.heightPx);
  const bottom = Math.round((y1 - rim * (y1 - y0)) * raster.heightPx);
  const pixels = (right - left) * (bottom - top);
  if (pixels < FEWEST_PIXELS) {
    throw new Problem(
      'card-invalid',
      `Card ${number} covers ${pixels} pixels in its middle; at least ${FEWEST_PIXELS} are needed. Draw a larger box.`,
    );
  }
  return { left, right, top, bottom, pixels };
}

/** Mean of the central part of a card in linear light, and its share of clipped pixels. */
function meanOfCard(card: Card, raster: EncodedRaster, number: number): { mean: Channels; clipped: number } {
  const { left, right, top, bottom, pixels } = pixelBox(card, raster, number);
  const sum: Channels = [0, 0, 0];
  let clipped = 0;
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const at = (y * raster.widthPx + x) * 3;
      const [r, g, b] = raster.samples.subarray(at, at + 3) as unknown as Channels; // three samples a pixel
      sum[0] += LINEAR_OF_CODE[r] as number;
      sum[1] += LINEAR_OF_CODE[g] as number;
      sum[2] += LINEAR_OF_CODE[b] as number;
      if (clipOf(r, g, b) !== CLIP.none) clipped++;
    }
  }
  return { mean: [sum[0] / pixels, sum[1] / pixels, sum[2] / pixels], clipped: clipped / pixels };
}

/** A usable sample of the light, or the reason why the card is none. */
function sampleOf(card: Card, raster: EncodedRaster, number: number): Sample | string {
  const { mean, clipped } = meanOfCard(card, raster, number);
  if (clipped > MOST_CLIPPED) {
    return `Card ${number} is left out: ${(clipped * 100).toFixed(0)} % of it is clipped. Expose the photo a little darker.`;
  }
  const [least, most] = [Math.min(...mean), Math.max(...mean)];
  if (least < DARKEST) {
    return `Card ${number} is left out: it is nearly black (${(least * 100).toFixed(2)} % of white), so it tells nothing about the light.`;
  }
  if (most / least > STRONGEST_CAST) {
    return `Card ${number} is left out: its strongest channel is ${(most / least).toFixed(0)} times its weakest, so it is no neutral card. Check its box.`;
  }
  const [x0, y0, x1, y1] = card.box;
  const logGain = mean.map((channel) => Math.log(card.Y / channel)) as Channels; // three in, three out
  return { x: (x0 + x1) / 2, y: (y0 + y1) / 2, logGain };
}

/** Slopes of the least-squares plane of least size through the samples, around their centre. */
function slopes(samples: readonly Sample[], mean: Sample, channel: 0 | 1 | 2): [number, number] {
  let [xx, xy, yy, xv, yv] = [0, 0, 0, 0, 0];
  for (const { x, y, logGain } of samples) {
    const [dx, dy, dv] = [x - mean.x, y - mean.y, logGain[channel] - mean.logGain[channel]];
    xx += dx * dx;
    xy += dx * dy;
    yy += dy * dy;
    xv += dx * dv;
    yv += dy * dv;
  }
  const determinant = xx * yy - xy * xy;
  if (determinant > 1e-3 * (xx + yy) ** 2) {
    return [(yy * xv - xy * yv) / determinant, (xx * yv - xy * xv) / determinant];
  }
  // Cards on one line tell nothing across it: the slope runs along the line.
  const spread = xx + yy;
  if (spread < 1e-6) return [0, 0];
  const [ux, uy] = xx >= yy ? [xx, xy] : [xy, yy];
  const length = Math.hypot(ux, uy);
  const along = ((ux * xv + uy * yv) / length / spread) as number;
  return [(along * ux) / length, (along * uy) / length];
}

/**
 * The light of a photo from its cards.
 *
 * A clipped, black or strongly coloured card is left out and its reason kept; with no card left the light
 * stays as it is. @throws Problem `card-invalid` for a box that is no box, or too small.
 */
export function lightFromCards(raster: EncodedRaster, cards: readonly Card[]): LightField {
  const read = cards.map((card, at) => sampleOf(card, raster, at + 1));
  const samples = read.filter((sample) => typeof sample !== 'string');
  const reasons = read.filter((sample) => typeof sample === 'string');
  if (samples.length === 0) return { ...EVEN_LIGHT, reasons };
  const meanOf = (of: (sample: Sample) => number): number =>
    samples.reduce((sum, sample) => sum + of(sample), 0) / samples.length;
  const mean: Sample = {
    x: meanOf(({ x }) => x),
    y: meanOf(({ y }) => y),
    logGain: [
      meanOf(({ logGain }) => logGain[0]),
      meanOf(({ logGain }) => logGain[1]),
      meanOf(({ logGain }) => logGain[2]),
    ],
  };
  const fitted = ([0, 1, 2] as const).map((channel) => slopes(samples, mean, channel));
  const [red, green, blue] = fitted as [[number, number], [number, number], [number, number]];
  const perWidth: Channels = [red[0], green[0], blue[0]];
  const perHeight: Channels = [red[1], green[1], blue[1]];
  const constant = mean.logGain.map(
    (logGain, channel) =>
      logGain - mean.x * (perWidth[channel] as number) - mean.y * (perHeight[channel] as number),
  ) as Channels; // three in, three out
  return { constant, perWidth, perHeight, reasons };
}
