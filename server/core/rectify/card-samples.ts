/**
 * What each card tells about the light, or why it tells nothing.
 *
 * In the flow: photo + card boxes -> [card-samples] -> light-field. All in linear light. Pure.
 * Source of the lamp colours: Krystek (1985), "An algorithm to calculate correlated colour temperature", Color
 * Research & Application 10, 38-40; coefficients from memory.
 */
import { RESPONSES_FROM_RGB } from '../colour/adaptation.ts';
import { xyzFromRgb } from '../colour/spaces.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { Card } from '../contract/setup.ts';
import { apply3, type Triple } from '../geometry/matrix3.ts';
import { CLIP, clipOf, type EncodedRaster } from '../image/raster.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';

/** Part of a box, in the middle, that is looked at. */
const CENTRAL = 0.8;
const FEWEST_PIXELS = 16;
/** Share of clipped pixels from which a card's mean can't be trusted. */
const MOST_CLIPPED = 0.02;
const DARKEST = 0.002;
/** Largest channel over smallest of a neutral card under any lamp from 2,000 K to 12,000 K, with room. */
const STRONGEST_CAST = 12;
/** Farthest from the colours of glowing bodies (CIE 1960 u, v) that a lamp for painting by may lie. */
const OFF_LOCUS = 0.04;
const TEMPERATURES_K = Array.from({ length: 60 }, (_, step) => 1e6 / (70 + step * 10));

/** A place in the photo and the log gain that each of the three responses needs there. */
export interface LightSample {
  /** Fractions of the photo. */
  readonly x: number;
  readonly y: number;
  readonly logGain: Triple;
}

export interface CardSamples {
  readonly samples: readonly (LightSample & { readonly number: number; readonly luminance: number })[];
  /** Cards left out because they are clipped. */
  readonly clipped: number;
  /** Cards that could not be used, in whole sentences. */
  readonly reasons: readonly string[];
}

function pixelBox(card: Card, raster: EncodedRaster, number: number) {
  const [x0, y0, x1, y1] = card.box;
  const valid = x0 >= 0 && y0 >= 0 && x1 <= 1 && y1 <= 1 && x0 < x1 && y0 < y1;
  if (!valid) {
    throw new Problem(
      'card-invalid',
      say`Card ${number} has the box ${x0}, ${y0}, ${x1}, ${y1}. A box is left, top, right, bottom, each 0 to 1 of the photo; draw it again.`,
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
      say`Card ${number} covers ${pixels} pixels in its middle; at least ${FEWEST_PIXELS} are needed. Draw a larger box.`,
    );
  }
  return { left, right, top, bottom, pixels };
}

/** Mean of the central part of a card in linear light, and its share of clipped pixels. */
function meanOfCard(card: Card, raster: EncodedRaster, number: number): { mean: Triple; clipped: number } {
  const { left, right, top, bottom, pixels } = pixelBox(card, raster, number);
  const { samples, widthPx } = raster;
  let [red, green, blue, clipped] = [0, 0, 0, 0];
  for (let y = top; y < bottom; y++) {
    for (let at = (y * widthPx + left) * 3; at < (y * widthPx + right) * 3; at += 3) {
      const [r, g, b] = [samples[at] as number, samples[at + 1] as number, samples[at + 2] as number];
      red += LINEAR_OF_CODE[r] as number;
      green += LINEAR_OF_CODE[g] as number;
      blue += LINEAR_OF_CODE[b] as number;
      if (clipOf(r, g, b) !== CLIP.none) clipped++;
    }
  }
  return { mean: [red / pixels, green / pixels, blue / pixels], clipped: clipped / pixels };
}

/** Shortest way from a colour to those of glowing bodies, 1,500 K to 14,000 K, in CIE 1960 u, v. */
function awayFromLamps(rgb: Triple): number {
  const [x, y, z] = xyzFromRgb(rgb);
  const sum = x + 15 * y + 3 * z;
  const [u, v] = [(4 * x) / sum, (6 * y) / sum];
  return Math.min(
    ...TEMPERATURES_K.map((T) =>
      Math.hypot(
        u -
          (0.860117757 + 1.54118254e-4 * T + 1.28641212e-7 * T * T) /
            (1 + 8.42420235e-4 * T + 7.08145163e-7 * T * T),
        v -
          (0.317398726 + 4.22806245e-5 * T + 4.20481691e-8 * T * T) /
            (1 - 2.89741816e-5 * T + 1.61456053e-7 * T * T),
      ),
    ),
  );
}

/** Why a card of this mean is no use, or null. */
function faultOf(mean: Triple, number: number): string | null {
  const [least, most] = [Math.min(...mean), Math.max(...mean)];
  if (most < DARKEST || least < DARKEST / 10) {
    return say`Card ${number} is left out: it is nearly black (${(least * 100).toFixed(2)} % of white), so it tells nothing about the light.`;
  }
  if (most / least > STRONGEST_CAST) {
    return say`Card ${number} is left out: its strongest channel is ${(most / least).toFixed(0)} times its weakest, so it is no neutral card. Check its box.`;
  }
  if (awayFromLamps(mean) > OFF_LOCUS) {
    return say`Card ${number} is left out: it has a colour that no lamp gives a grey, so it is no neutral card. Check its box.`;
  }
  return null;
}

/**
 * Reads every card.
 * @throws Problem `card-invalid` for a box that is no box, or too small.
 */
export function readCards(raster: EncodedRaster, cards: readonly Card[]): CardSamples {
  const reasons: string[] = [];
  let clippedCards = 0;
  const samples = cards.flatMap((card, at) => {
    const number = at + 1;
    const { mean, clipped } = meanOfCard(card, raster, number);
    if (clipped > MOST_CLIPPED) {
      clippedCards++;
      reasons.push(
        say`Card ${number} is left out: ${(clipped * 100).toFixed(0)} % of it is clipped. Expose the photo a little darker.`,
      );
      return [];
    }
    const fault = faultOf(mean, number);
    if (fault) {
      reasons.push(fault);
      return [];
    }
    const [x0, y0, x1, y1] = card.box;
    const logGain = apply3(RESPONSES_FROM_RGB, mean).map((response) =>
      Math.log(card.Y / Math.max(response, 1e-6)),
    ) as unknown as Triple; // three in, three out
    return [{ number, luminance: card.Y, x: (x0 + x1) / 2, y: (y0 + y1) / 2, logGain }];
  });
  return { samples, clipped: clippedCards, reasons };
}
