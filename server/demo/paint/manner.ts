/**
 * How each plane is painted: brushes from big to small, their direction, their load.
 *
 * Sizes are in pixels of a canvas 1600 px wide. Common practice, no source: big brushes first, fewer small ones
 * far away, upright dabs for trees, sweeps along the ground. Pure: tables only.
 */

export interface Layer {
  readonly halfWidthPx: number;
  /** Half length over half width. */
  readonly elongation: number;
  /** Distance between strokes over half width. */
  readonly spacing: number;
  /** A stroke is laid only where the canvas is farther than this from what is wanted (dE*ab); 0 = everywhere. */
  readonly threshold: number;
  readonly opacity: number;
  readonly dryness: number;
  readonly thickness: number;
  /** Standard direction, degrees clockwise from rightward. */
  readonly directionDeg: number;
  /** 0 = always the standard direction, 1 = along the forms of the scene. */
  readonly alongForms: number;
  readonly jitterDeg: number;
  /** Half the range by which a colour may stray on the brush: lightness, and each of a*, b*. */
  readonly strayL: number;
  readonly strayAb: number;
}

export interface Manner {
  readonly layers: readonly Layer[];
  /** How far paint may run over the plane behind, in pixels, and how much of the edge is lost (0..1). */
  readonly raggedPx: number;
  readonly lost: number;
  /** Brushes grow from `far` at the plane's top to `near` at its foot. */
  readonly scaleFar: number;
  readonly scaleNear: number;
}

const lay = (halfWidthPx: number, rest: Partial<Layer> & Pick<Layer, 'directionDeg'>): Layer => ({
  halfWidthPx,
  elongation: 2.8,
  spacing: 1.15,
  threshold: 0,
  opacity: 0.93,
  dryness: 0.35,
  thickness: 0.5,
  alongForms: 0.5,
  jitterDeg: 18,
  strayL: 1.6,
  strayAb: 2,
  ...rest,
});

/** Far to near: sky, massif, rust wood, meadow. */
// biome-ignore format: a table reads best with one brush to a line
export const MANNERS: readonly Manner[] = [
  {
    raggedPx: 0,
    lost: 0,
    scaleFar: 1,
    scaleNear: 0.85,
    layers: [
      lay(42, { dryness: 0, spacing: 1.5, directionDeg: -14, alongForms: 0.2, jitterDeg: 50, elongation: 1.9, strayL: 0.7, thickness: 0.3 }),
      lay(26, { directionDeg: -10, alongForms: 0.3, jitterDeg: 48, elongation: 2, spacing: 1.45, strayL: 0.8, thickness: 0.32 }),
      lay(16, { directionDeg: -8, alongForms: 0.4, jitterDeg: 40, threshold: 1.8, dryness: 0.6, thickness: 0.36, strayL: 0.7 }),
      lay(9, { directionDeg: -6, alongForms: 0.6, jitterDeg: 36, threshold: 3.5, dryness: 0.7, thickness: 0.4, strayL: 0.6 }),
    ],
  },
  {
    raggedPx: 1.6,
    lost: 0.5,
    scaleFar: 0.85,
    scaleNear: 1.15,
    layers: [
      lay(24, { dryness: 0, spacing: 1.5, directionDeg: 62, alongForms: 0.3, jitterDeg: 26, thickness: 0.35 }),
      lay(13, { spacing: 1.35, directionDeg: 58, alongForms: 0.6, jitterDeg: 26, strayL: 1.3, thickness: 0.4 }),
      lay(7.5, { directionDeg: 56, alongForms: 0.8, threshold: 3.4, spacing: 1.25, dryness: 0.5, elongation: 2.3, strayL: 1.2 }),
      lay(4.4, { directionDeg: 54, alongForms: 0.9, threshold: 5.5, spacing: 1.3, dryness: 0.55, elongation: 2.4, thickness: 0.65 }),
    ],
  },
  {
    raggedPx: 4,
    lost: 0.6,
    scaleFar: 0.8,
    scaleNear: 1.1,
    layers: [
      lay(20, { dryness: 0, spacing: 1.45, directionDeg: -82, alongForms: 0.2, jitterDeg: 26, elongation: 2, strayL: 2, strayAb: 4 }),
      lay(11, { spacing: 1.3, directionDeg: -78, alongForms: 0.35, jitterDeg: 34, elongation: 1.9, strayL: 2.2, strayAb: 5, thickness: 0.55 }),
      lay(6.2, { directionDeg: -74, alongForms: 0.55, jitterDeg: 36, threshold: 4.5, spacing: 1.15, elongation: 2, dryness: 0.5, thickness: 0.7, strayL: 1.8, strayAb: 5 }),
      lay(3.4, { directionDeg: -70, alongForms: 0.75, jitterDeg: 30, threshold: 7, spacing: 1.3, elongation: 2.6, dryness: 0.4, thickness: 0.8, strayL: 1.8, strayAb: 4 }),
    ],
  },
  {
    raggedPx: 2,
    lost: 0.35,
    scaleFar: 0.5,
    scaleNear: 1.3,
    layers: [
      lay(32, { dryness: 0, spacing: 1.5, directionDeg: 9, alongForms: 0.15, jitterDeg: 16, elongation: 2.6, strayL: 2, strayAb: 3, thickness: 0.4 }),
      lay(18, { spacing: 1.35, directionDeg: 12, alongForms: 0.25, jitterDeg: 30, elongation: 2.2, strayL: 2.4, strayAb: 4, thickness: 0.45 }),
      lay(9.5, { directionDeg: -40, alongForms: 0.2, jitterDeg: 60, threshold: 3.6, spacing: 1.35, elongation: 1.8, dryness: 0.6, thickness: 0.55, strayL: 1.8, strayAb: 3.5 }),
      lay(5, { directionDeg: -68, alongForms: 0.3, jitterDeg: 34, threshold: 7, spacing: 1.6, elongation: 2.2, dryness: 0.6, thickness: 0.7, strayL: 1.8, strayAb: 3 }),
    ],
  },
];
