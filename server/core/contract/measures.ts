/**
 * The document that measuring a painting yields: what `GET …/measures/:pictureId` answers and what the
 * headless command prints. Planes run far to near. Types only.
 *
 * A measure that could not be taken is null and its reason stands in `notes`.
 */
import type { AdjustmentCard, Observation, ReadingForm } from './critique.ts';
import type { LabColour } from './setup.ts';

export type HueFamily = 'red' | 'orange' | 'yellow' | 'green' | 'blue' | 'violet';

/** Figures of one plane in one picture. Units: CIE L* (0..100), C*ab, degrees, shares 0..1. */
export interface PlaneMeasures {
  /** Plane area / picture area, before erosion, 0..1. */
  share: number;
  /** 5th, 50th and 95th percentile of L*. */
  dark: number | null;
  mid: number | null;
  light: number | null;
  /** light − dark. */
  spread: number | null;
  /** ASTM D1535 value of mid's luminance, 0..10. */
  munsellValue: number | null;
  /** 50th and 90th percentile of C*ab. */
  chroma: number | null;
  strong: number | null;
  /** Angle of the mean (a*, b*), degrees 0..360; null when that mean is shorter than 3. */
  hue: number | null;
  /** Medians of a* and b*. */
  a: number | null;
  b: number | null;
  /** C^1.07 · cos(h − 50°) of the medians; + warm, − cool. */
  warmCool: number | null;
  /** RMS of fine L* detail over max(spread, 10); null on small pictures. */
  detail: number | null;
  /** L* contrast across the boundary to the farther plane per % of picture width of its rise. */
  edge: number | null;
  /** Share of pixels with C* ≥ 8 by hue family. */
  hueShares: Record<HueFamily, number> | null;
  /** dE*ab (1976) from the medians to the air colour. */
  airDistance: number | null;
  /** Dark-channel share of air, 0..1. */
  airShare: number | null;
  /** 90 % interval of each figure, where doubt has been worked out. */
  doubt: Record<string, [number, number]>;
  notes: string[];
  /** sRGB hex colours of the plane's darks, middle and lights, for drawing only. */
  colours: { dark: string; mid: string; light: string } | null;
}

/** The figures for which painting − target makes sense. */
export const GAP_KEYS = [
  'share',
  'dark',
  'mid',
  'light',
  'spread',
  'munsellValue',
  'chroma',
  'strong',
  'hue',
  'a',
  'b',
  'warmCool',
  'detail',
  'edge',
  'airDistance',
  'airShare',
] as const;
export type GapKey = (typeof GAP_KEYS)[number];
export type PlaneGap = Record<GapKey, number | null>;

/** 1 = as the target, ≤ 0.5 too little, > 1.6 more air than the target. Null for the sky and the nearest plane. */
export interface Recession {
  darks: number | null;
  spread: number | null;
  chroma: number | null;
  air: number | null;
}

export const STEP_KEYS = ['mid', 'dark', 'light', 'chroma', 'warmCool'] as const;
export type StepKey = (typeof STEP_KEYS)[number];
export type StepFigures = Record<StepKey, number | null>;

/** near − far of two neighbouring planes. */
export interface Step {
  far: string;
  near: string;
  reference: StepFigures | null;
  painting: StepFigures;
  gap: StepFigures | null;
  /** 90 % intervals of the painting's step and of the step gap, where doubt has been worked out. */
  doubt?: { painting: Record<string, [number, number]>; gap: Record<string, [number, number]> };
}

/** What was planned for a plane: the figures that a plan carries, the others null. */
export interface PlannedFigures extends PlaneGap {
  /** For drawing only. */
  colours: PlaneMeasures['colours'];
}

export interface PlaneResult {
  name: string;
  /** Null when the board has no reference (painted from life). */
  reference: PlaneMeasures | null;
  painting: PlaneMeasures;
  /** Where the target is a plan: what was planned, null where it has no rung. Left out where it is none. */
  planned?: PlannedFigures | null;
  gap: PlaneGap | null;
  recession: Recession | null;
  /** 90 % intervals of the gap and of the recession, where doubt has been worked out. */
  doubt?: { gap: Record<string, [number, number]>; recession: Record<string, [number, number]> };
}

export interface Reading {
  id: string;
  /** Whether it departs from the target, asks about what the target shows too, or has no target to go by. */
  form?: ReadingForm;
  planes: string[];
  severity: number;
  sentence: string;
  why: string;
  source: string;
  muted: string | null;
}

/** Where glare and clipping lie, as a small picture over the squared painting, row by row. */
export interface CaptureOverlay {
  columns: number;
  rows: number;
  /** Pairs of value and length: 0 nothing, 1 blown, 2 crushed, 3 glare; lengths add up to columns × rows. */
  runs: number[];
}

export interface MeasureDocument {
  version: 1;
  target: 'reference' | 'plan' | 'none';
  units: { lightness: 'CIE L*, D65'; chroma: 'C*ab'; hue: 'degrees' };
  /** Null grade: no painting was photographed. `notes` are whole sentences about what could not be used. */
  capture: {
    grade: 'A' | 'B' | 'C' | null;
    reasons: string[];
    notes?: string[];
    /** Glare pixels / pixels of the painting, 0..1. */
    glareShare?: number;
    /** 1 − least / most light over the painting before correction; null when nothing tells. */
    unevenness?: number | null;
    overlay?: CaptureOverlay | null;
  };
  air: { reference: LabColour | null; painting: LabColour | null };
  planes: PlaneResult[];
  steps: Step[];
  fit: { key: number | null; span: number | null };
  readings: Reading[];
  priorities: string[];
  works: { plane: string; sentence: string } | null;
  /** All adjustment cards in rank order; those of `priorities` are open. */
  cards?: AdjustmentCard[];
  /** Neutral observations: never ranked, never faults. */
  observations?: Observation[];
}
