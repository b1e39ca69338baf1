/**
 * What the readings say about the photograph, from what measuring found out about it.
 *
 * In the flow: photo facts + what glare and clipping take -> [capture facts] -> G1-G9. The inputs are described by
 * what is needed of them, so that the rules do not depend on how a photo is corrected. Pure.
 */
import type { CaptureFacts } from '../picture-facts.ts';

/** Facts of the photo before any plane is looked at; null = not known. */
export interface PhotoKnown {
  /** Neutral cards that the colours rest on. */
  readonly cards: number;
  readonly unevenness: number | null;
  readonly cardsApart: number | null;
  readonly crookedDeg: number | null;
  readonly sideRatioError: number | null;
  readonly shortSidePx: number;
  readonly fillsPhoto: boolean;
  readonly soft: boolean | null;
  readonly wet: boolean | null;
}

export interface LostToLight {
  /** Share of each plane that glare covers, far to near. */
  readonly glare: readonly number[];
  readonly clippedSky: number | null;
  readonly clippedDarks: number;
}

/**
 * @param photo null when nothing is known of how the picture was taken (then G1 and its like stay silent).
 * @param names of the planes, far to near. @param toneMapped whether the reference looks so; null = not looked at.
 */
export function captureFactsOf(
  photo: PhotoKnown | null,
  lost: LostToLight,
  names: readonly string[],
  toneMapped: boolean | null,
): CaptureFacts {
  const most = Math.max(0, ...lost.glare);
  const plane = names[lost.glare.indexOf(most)];
  return {
    neutral: photo ? photo.cards > 0 : null,
    clippedSky: lost.clippedSky,
    clippedDarks: lost.clippedDarks,
    glare: most > 0 && plane !== undefined ? { plane, share: most } : null,
    unevenness: photo?.unevenness ?? null,
    crookedDeg: photo?.crookedDeg ?? null,
    sideRatioError: photo?.sideRatioError ?? null,
    shortSidePx: photo?.shortSidePx ?? null,
    fillsPhoto: photo?.fillsPhoto ?? null,
    soft: photo?.soft ?? null,
    cardsApart: photo?.cardsApart ?? null,
    wet: photo?.wet ?? null,
    toneMapped,
  };
}
