/**
 * A photo of a painting to its plate, with what is known about the photograph: light, view, glare, focus.
 *
 * In the flow: decoded photo + corrections -> [photographed] -> prepare -> measure. For references use the plate
 * as it is. Pure.
 */
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { PhotoCorrection } from '../contract/setup.ts';
import type { EncodedRaster, MeasurablePlate } from '../image/raster.ts';
import { applyCorrection, carryBytes, changesNothing, planCorrection } from '../rectify/correct-photo.ts';
import type { LightField } from '../rectify/light-field.ts';
import { findGlare, NEAR_CLIPPED } from './glare.ts';
import type { PhotoFacts } from './photo-facts.ts';
import { smallPaintingNote } from './small-painting.ts';
import { isSoft } from './softness.ts';
import { viewOf } from './view-facts.ts';

/** Luminance factor that no paint reaches; what the cards put above it is light thrown back by the varnish. */
const BEYOND_PAINT = 1.05;

/** What a painter notes about a photo. */
export interface PhotoNotes {
  readonly wet?: boolean | null;
}

/** 1 where a channel of the photo is near its end, a byte a pixel. */
function nearClippedMap({ samples, widthPx, heightPx }: EncodedRaster): Uint8Array {
  const map = new Uint8Array(widthPx * heightPx);
  for (let pixel = 0, at = 0; pixel < map.length; pixel++, at += 3) {
    const [red, green, blue] = [samples[at] as number, samples[at + 1] as number, samples[at + 2] as number];
    if (red >= NEAR_CLIPPED || green >= NEAR_CLIPPED || blue >= NEAR_CLIPPED) map[pixel] = 1;
  }
  return map;
}

/** Whether the gain of the cards lifts a near-clipped pixel above what paint can reflect, at every place. */
function isBeyondPaint({ cards, constant, perWidth, perHeight }: LightField): boolean {
  if (cards === 0) return false;
  const least = Math.min(
    ...[0, 1].flatMap((x) => [0, 1].map((y) => constant[1] + x * perWidth[1] + y * perHeight[1])),
  );
  return (LINEAR_OF_CODE[NEAR_CLIPPED] as number) * Math.exp(least) >= BEYOND_PAINT;
}

/**
 * @param working upright photo in sRGB with its clip map. @param fullSidePx long side of the photo as it was taken,
 *   where `working` is a smaller copy. @throws Problem `corners-invalid` or `card-invalid`.
 */
export function photographed(
  working: MeasurablePlate,
  photo: PhotoCorrection | undefined,
  fullSidePx?: number,
  noted: PhotoNotes = {},
): MeasurablePlate {
  const { raster, clipped } = working;
  const wanted = photo ?? {};
  const plan = planCorrection(raster, wanted);
  const same = changesNothing(raster, wanted);
  const plate = same ? raster : applyCorrection(raster, plan);
  const near = nearClippedMap(raster);
  const nearClipped = same ? near : carryBytes((pixel) => near[pixel] as number, raster, plan);
  const glare = findGlare(plate, nearClipped, isBeyondPaint(plan.light));
  const enlarge = fullSidePx ? fullSidePx / Math.max(raster.widthPx, raster.heightPx) : 1;
  const { cards, clippedCards, border, unevenness, cardsApart, reasons } = plan.light;
  const view = viewOf(wanted, raster.widthPx * enlarge, raster.heightPx * enlarge);
  const small = smallPaintingNote(view.shortSidePx, view.fillsPhoto);
  const facts: PhotoFacts = {
    cards,
    clippedCards,
    border,
    unevenness,
    cardsApart,
    ...view,
    soft: isSoft(plate),
    glareShare: glare.share,
    wet: noted.wet ?? null,
    notes: small ? [...reasons, small] : reasons,
  };
  const carried =
    clipped && !same ? carryBytes((pixel) => clipped[pixel] as number, raster, plan) : (clipped ?? null);
  return {
    raster: plate,
    clipped: carried,
    glare: glare.share > 0 ? glare.mask : null,
    facts,
  };
}
