/**
 * The light of a photo, from its cards and from a border of one colour.
 *
 * In the flow: samples of cards and border -> [light-field] -> correct-photo. One card gives one gain; two or more
 * cards, or the border, a plane in log gain over the photo. Gains are on Bradford's three responses, since a lamp's
 * colour is no gain on red, green and blue. Pure.
 */
import { RGB_FROM_RESPONSES } from '../colour/adaptation.ts';
import { labFromRgb } from '../colour/lab.ts';
import { xyzFromRgb } from '../colour/spaces.ts';
import type { Card } from '../contract/setup.ts';
import type { Corners } from '../geometry/homography.ts';
import { apply3, type Triple } from '../geometry/matrix3.ts';
import type { EncodedRaster } from '../image/raster.ts';
import { say } from '../say/say.ts';
import { readBorder } from './border-light.ts';
import { type CardSamples, type LightSample, readCards } from './card-samples.ts';
import { fitPlane } from './fit-plane.ts';

/** Light of one card against another's, as a factor, from which one of them must be misread. */
const DISAGREE = 2;
/** The same for their colours, in a*, b*. */
const DISAGREE_AB = 25;

/** log gain = constant + x · perWidth + y · perHeight, a response each; x, y fractions of the photo. */
export interface LightField {
  readonly constant: Triple;
  readonly perWidth: Triple;
  readonly perHeight: Triple;
  /** Cards that could not be used, in whole sentences. */
  readonly reasons: readonly string[];
  /** Cards that the gain rests on. */
  readonly cards: number;
  readonly clippedCards: number;
  /** Whether the border of the painting served as a sample. */
  readonly border: boolean;
  /** 1 − least light / most light over the painting, before correction; null when unknown. */
  readonly unevenness: number | null;
  /** Largest distance of two cards in a*, b*; null under two. */
  readonly cardsApart: number | null;
}

const NO_LIGHT: Triple = [0, 0, 0];

/** The field that changes nothing. */
export const EVEN_LIGHT: LightField = {
  constant: NO_LIGHT,
  perWidth: NO_LIGHT,
  perHeight: NO_LIGHT,
  reasons: [],
  cards: 0,
  clippedCards: 0,
  border: false,
  unevenness: null,
  cardsApart: null,
};

/** Whether a field leaves every pixel as it is. */
export function changesNoLight({ constant, perWidth, perHeight }: LightField): boolean {
  return [...constant, ...perWidth, ...perHeight].every((figure) => figure === 0);
}

function each(of: (response: 0 | 1 | 2) => number): Triple {
  return [of(0), of(1), of(2)];
}

function meanGain(samples: readonly LightSample[]): Triple {
  return each(
    (response) => samples.reduce((sum, { logGain }) => sum + logGain[response], 0) / samples.length,
  );
}

/** Largest distance in a*, b* of two cards under their common gain, each at its own luminance. */
function cardsApart({ samples }: CardSamples): number | null {
  if (samples.length < 2) return null;
  const common = meanGain(samples);
  const colours = samples.map(({ logGain, luminance }) => {
    const responses = each((response) => Math.exp(common[response] - logGain[response]));
    const level = (responses[0] + responses[1] + responses[2]) / 3;
    const seen = each((response) => (luminance * responses[response]) / level);
    return labFromRgb(apply3(RGB_FROM_RESPONSES, seen));
  });
  return Math.max(
    ...colours.flatMap((one, at) =>
      colours.slice(at + 1).map((other) => Math.hypot(one.a - other.a, one.b - other.b)),
    ),
  );
}

/** A sentence where two cards cannot both be right, or null. */
function disagreement({ samples }: CardSamples, apart: number | null): string | null {
  const level = ({ logGain }: LightSample): number => (logGain[0] + logGain[1] + logGain[2]) / 3;
  const sorted = [...samples].sort((one, other) => level(one) - level(other));
  const [first, last] = [sorted[0], sorted.at(-1)];
  if (!first || !last || first === last) return null;
  const [one, other] = [first.number, last.number].sort((p, q) => p - q) as [number, number]; // two of them
  const factor = Math.exp(level(last) - level(first));
  if (factor > DISAGREE) {
    return say`Cards ${one} and ${other} disagree: one would stand in ${factor.toFixed(1)} times the light of the other, so none of them is used. Check which is grey and which is white.`;
  }
  if ((apart ?? 0) > DISAGREE_AB) {
    return say`Two cards disagree: their colours lie ${(apart ?? 0).toFixed(0)} apart in a*, b*, so none of them is used. Check that each box lies on a neutral card.`;
  }
  return null;
}

/** 1 − least / most light at the painting's corners. */
function unevennessOf(perWidth: Triple, perHeight: Triple, corners: Corners): number {
  const levels = corners.map(([x, y]) => {
    const gain = each((response) => Math.exp(-(x * perWidth[response] + y * perHeight[response])));
    return xyzFromRgb(apply3(RGB_FROM_RESPONSES, gain))[1];
  });
  return 1 - Math.min(...levels) / Math.max(...levels);
}

/**
 * Reads the light.
 *
 * A clipped, black or coloured card is left out and its reason kept; cards that disagree are left out together.
 * @param corners of the painting, for how uneven the light is there. @param border whether what lies outside the
 *   corners may be read. @throws Problem `card-invalid` for a box that is no box, or too small.
 */
export function readLight(
  raster: EncodedRaster,
  cards: readonly Card[],
  corners: Corners,
  border: boolean,
): LightField {
  const read = readCards(raster, cards);
  const apart = cardsApart(read);
  const quarrel = disagreement(read, apart);
  const used = quarrel ? [] : read.samples;
  const around = border ? readBorder(raster, corners, cards) : [];
  const sloped = used.length >= 2 || around.length > 0;
  const slopes = ([0, 1, 2] as const).map((response) => {
    if (!sloped) return [0, 0] as const;
    const heights = [used, around].flatMap((samples, group) =>
      samples.map(({ x, y, logGain }) => ({ x, y, value: logGain[response], group })),
    );
    return fitPlane(heights);
  });
  const perWidth = each((response) => slopes[response]?.[0] ?? 0);
  const perHeight = each((response) => slopes[response]?.[1] ?? 0);
  // Without a card the middle of the painting keeps its light, and only the fall-off is taken away.
  const anchors = used.length > 0 ? used : [{ x: 0.5, y: 0.5, logGain: NO_LIGHT }];
  const gain = meanGain(anchors);
  const [x, y] = [meanOf(anchors, 'x'), meanOf(anchors, 'y')];
  return {
    constant: each((response) => gain[response] - x * perWidth[response] - y * perHeight[response]),
    perWidth,
    perHeight,
    reasons: quarrel ? [...read.reasons, quarrel] : read.reasons,
    cards: used.length,
    clippedCards: read.clipped,
    border: around.length > 0,
    unevenness: sloped ? unevennessOf(perWidth, perHeight, corners) : null,
    cardsApart: apart,
  };
}

function meanOf(samples: readonly LightSample[], key: 'x' | 'y'): number {
  return samples.reduce((sum, sample) => sum + sample[key], 0) / samples.length;
}
