/**
 * What a person wishes of a planned ladder. Types only.
 */
import type { Condition, LabColour } from '../../contract/setup.ts';
import type { LikelyAir } from '../air/likely-airs.ts';

/** What a person does to one plane by hand, after the air. */
export interface PlaneHandle {
  /** Shift of the whole plane, L*. */
  readonly mid?: number;
  /** The darks (5th percentile) wished for, L*; never above the plane's middle. */
  readonly dark?: number;
  /** Factor on chroma, 0 or more. */
  readonly chroma?: number;
  /** Shift of `warmCool`, + warmer. */
  readonly warmCool?: number;
}

export interface LadderWishes {
  /** Number of planes, sky included; null = as many as there are (fewer in fog and at night). */
  readonly count: number | null;
  /** Colour of the planned air; null = the photograph's own, warm under a low sun. */
  readonly air: 'photograph' | LikelyAir | LabColour | null;
  /** Air to add: 0 = as the photograph, 1 = usual. */
  readonly strength: number;
  readonly conditions: readonly Condition[];
  /** By name of the plane. */
  readonly handles: Readonly<Record<string, PlaneHandle>>;
}

export const USUAL_WISHES: LadderWishes = {
  count: null,
  air: null,
  strength: 1,
  conditions: [],
  handles: {},
};
