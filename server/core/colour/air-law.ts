/**
 * What air does to a colour on its way to the eye, in linear light. Pure.
 *
 * Source: Koschmieder (1924): I = J t + A (1 − t), t = exp(−beta d); visual range at 2 % contrast, AMS
 * Glossary of Meteorology; meteorological optical range at 5 %, WMO-No. 8.
 */

/** ln(1 / 0.02): visual range times extinction. */
export const VISUAL_RANGE_CONSTANT = Math.log(50);
/** ln(1 / 0.05): meteorological optical range times extinction. */
export const OPTICAL_RANGE_CONSTANT = Math.log(20);

/** Share of light that comes through. @param extinctionPerKm beta. @param distanceKm d ≥ 0. */
export function transmission(extinctionPerKm: number, distanceKm: number): number {
  return Math.exp(-extinctionPerKm * distanceKm);
}

/** One linear channel of a thing seen through air. @param through transmission, 0 (all air) to 1 (none). */
export function seenThroughAir(thing: number, air: number, through: number): number {
  return thing * through + air * (1 - through);
}

/** Extinction per km for a visual range at 2 % contrast. */
export function extinctionFromVisualRange(visualRangeKm: number): number {
  return VISUAL_RANGE_CONSTANT / visualRangeKm;
}
