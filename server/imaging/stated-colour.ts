/**
 * Colour stated by numbers (H.273, as HEIC and AVIF do) as an ICC profile.
 *
 * In the flow: isobmff → [stated-colour] → original. Pure.
 * Source: ITU-T H.273 (2021), tables 2 (colour primaries) and 3 (transfer characteristics).
 */

import { say } from '../core/say/say.ts';
import { type Curve, matrixProfile, type Primaries, powerCurve, SRGB_CURVE } from './icc.ts';
import type { StatedColour } from './isobmff.ts';
import { kindRefused } from './problems.ts';

const D65 = [0.3127, 0.329] as const;

/** Primaries by H.273 number; 1 (BT.709) is sRGB's own and 2 means unspecified. */
const PRIMARIES: Readonly<Record<number, Primaries>> = {
  1: { red: [0.64, 0.33], green: [0.3, 0.6], blue: [0.15, 0.06], white: D65 },
  9: { red: [0.708, 0.292], green: [0.17, 0.797], blue: [0.131, 0.046], white: D65 },
  11: { red: [0.68, 0.32], green: [0.265, 0.69], blue: [0.15, 0.06], white: [0.314, 0.351] },
  12: { red: [0.68, 0.32], green: [0.265, 0.69], blue: [0.15, 0.06], white: D65 },
};

/** Curves by H.273 number. Camera curves (1, 6, 14, 15) are meant to be shown on an sRGB-like screen. */
const CURVES: Readonly<Record<number, Curve>> = {
  4: powerCurve(2.2),
  5: powerCurve(2.8),
  8: powerCurve(1),
};

/** PQ and HLG: scenes for bright screens, which no 8-bit plate can hold truly. */
const HIGH_DYNAMIC_RANGE = new Set([16, 18]);

/**
 * The ICC profile of a picture, or null where its pixels are plain sRGB.
 *
 * @throws Problem `picture-kind-refused` for the transfer characteristics of high-dynamic-range screens.
 */
export function profileOf(colour: StatedColour | null, name: string): Buffer | null {
  if (!colour) return null;
  if (colour.kind === 'profile') return colour.icc;
  if (HIGH_DYNAMIC_RANGE.has(colour.transfer)) {
    throw kindRefused(
      name,
      say`a high-dynamic-range picture`,
      say`Save a standard copy of it (SDR, sRGB or Display P3) and post that.`,
    );
  }
  const primaries = PRIMARIES[colour.primaries];
  const curve = CURVES[colour.transfer] ?? SRGB_CURVE;
  if (!primaries || (colour.primaries === 1 && curve === SRGB_CURVE)) return null;
  return matrixProfile(primaries, curve);
}
