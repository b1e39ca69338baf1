/**
 * What the readings need beyond the figures of each plane: facts about a whole picture and about its capture.
 *
 * In the flow: `facts/` computes them from a label map and Lab rasters -> readings. The per-plane figures
 * themselves come from the measure document. Shares are 0..1 of the picture, lightness is CIE L* (D65),
 * positions are 0..1 of the picture. Types only.
 */
import type { FractionPoint } from '../contract/setup.ts';

/** Percentiles of L* over the whole picture (clean pixels), Hyndman & Fan type 7. */
export interface LightnessEnds {
  L1: number;
  L2: number;
  L98: number;
  L99: number;
}

/**
 * The picture squinted at and cut into three values at thirds of its own range L2..L98, so that neither
 * exposure nor key changes the map. The three shares add up to 1.
 */
export interface ValueMapFacts {
  dark: number;
  middle: number;
  light: number;
  /** Share of the picture that lies in connected patches (4 neighbours) of less than 0.5 % of the picture. */
  spots: number;
  /** Which of the three values most of the spots belong to; null when there are none. */
  spotValue: 'dark' | 'middle' | 'light' | null;
  /** Middle of the densest region of spots, on a grid of 3 by 3; null when there are none. */
  spotAt: FractionPoint | null;
}

/** Median colour of one part of a plane. */
export interface PartColour {
  L: number;
  a: number;
  b: number;
  /** C*ab of (a, b). */
  chroma: number;
  /** C^1.07 cos(h - 50 deg) of (a, b), as in the measure document. */
  warmCool: number;
}

/** Light and shade of one plane. */
export interface LightShadeFacts {
  name: string;
  /** Pixels at or above the plane's 70th percentile of L*; null when the plane has under 200 clean pixels. */
  lights: PartColour | null;
  /** Pixels at or below the plane's 30th percentile of L*. */
  shadows: PartColour | null;
  /** Share of the whole picture that lies in this plane with C* < 3 and L* < 22. */
  deadShare: number;
  /** Median C* of the plane's pixels at or below its 10th percentile of L*; null as above. */
  darkChroma: number | null;
}

/** Hardness of the edge between a plane and whatever lies behind it, split by the painter's focus. */
export interface EdgeFocusFacts {
  /** The nearer plane, whose top edge this is. */
  near: string;
  /** Median edge figure (L* per % of the picture's width) within 0.2 of the width of the focus; null = none. */
  inside: number | null;
  /** The same outside of it. */
  outside: number | null;
}

/** A small strong spot of colour. */
export interface AccentFacts {
  plane: string;
  at: FractionPoint;
  /** Share of the picture, 0.0002..0.01. */
  share: number;
  chroma: number;
  /** Degrees, 0..360. */
  hueDeg: number;
  /** 90th percentile of C* of the plane it lies in. */
  planeStrong: number;
  /** True when another patch within 25 degrees of its hue lies elsewhere (over 10 % of the width away). */
  echoed: boolean;
}

/** Facts of one picture. Lists are far to near, like the planes of the document. */
export interface SideFacts {
  ends: LightnessEnds | null;
  valueMap: ValueMapFacts | null;
  lightShade: LightShadeFacts[];
  edges: EdgeFocusFacts[];
  accents: AccentFacts[];
}

/** What is known about how the painting was photographed. Null means: not known, and nothing is said. */
export interface CaptureFacts {
  /** Whether a grey or white reference stands in the picture. */
  neutral: boolean | null;
  /** Largest share of a sky plane, 0..1, with a channel at 254 or more before shrinking. */
  clippedSky: number | null;
  /** Share of the painting with all channels at 1 or less. */
  clippedDarks: number | null;
  /** The plane with most glare, and its share of that plane. */
  glare: { plane: string; share: number } | null;
  /** Change of light across the picture, 0..1 of its mean. */
  unevenness: number | null;
  /** Largest departure of a corner from a right angle, degrees. */
  crookedDeg: number | null;
  /** |measured side ratio / typed side ratio - 1|. */
  sideRatioError: number | null;
  /** Short side of the painting in the photo, pixels. */
  shortSidePx: number | null;
  /** Whether the painting reaches over nearly all of the photo, across or down. */
  fillsPhoto: boolean | null;
  /** True when the photo is out of focus or shaken. */
  soft: boolean | null;
  /** Largest distance between two cards in the a*b* plane. */
  cardsApart: number | null;
  /** True when the painter noted wet paint, or matt and glossy patches were seen. */
  wet: boolean | null;
  /** True when the reference shows halos or treats sky and land separately. */
  toneMapped: boolean | null;
}

/** Everything the readings take besides document and setup. `reference` is null when painted from life. */
export interface PictureFacts {
  reference: SideFacts | null;
  painting: SideFacts;
  capture: CaptureFacts;
}
