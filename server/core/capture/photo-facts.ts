/**
 * What is known about how a painting was photographed, before any plane is looked at.
 *
 * In the flow: photographed -> [photo-facts] -> grade, readings. Shares are 0..1. Types only.
 */

export interface PhotoFacts {
  /** Neutral cards that the colours rest on. */
  readonly cards: number;
  /** Cards left out because they are clipped. */
  readonly clippedCards: number;
  /** Whether a border of one colour around the painting told the fall-off of the light. */
  readonly border: boolean;
  /** 1 − least / most light over the painting, before correction; null when nothing tells. */
  readonly unevenness: number | null;
  /** Largest distance of two cards in a*, b*; null under two. */
  readonly cardsApart: number | null;
  /** Largest departure of a corner from a right angle, degrees; null without corners. */
  readonly crookedDeg: number | null;
  /** |side ratio seen / side ratio typed − 1|; null without corners or size. */
  readonly sideRatioError: number | null;
  /** Shorter side of the painting in the photo, pixels. */
  readonly shortSidePx: number;
  /** Whether the painting reaches over nearly all of the photo, across or down: stepping closer is no help then. */
  readonly fillsPhoto: boolean;
  /** Whether even the hardest edges are wide; null when the painting is too small or has none. */
  readonly soft: boolean | null;
  /** Glare pixels / pixels of the painting. */
  readonly glareShare: number;
  /** Whether the painter noted wet paint; null when nothing was noted. */
  readonly wet: boolean | null;
  /** What could not be used, in whole sentences. */
  readonly notes: readonly string[];
}
