/** Planes of measure documents for tests, with figures made up so that the answers can be worked out in the head. */
import {
  GAP_KEYS,
  type PlaneGap,
  type PlaneMeasures,
  type PlaneResult,
} from '#server/core/contract/measures.ts';

/** A plane of given darks, middle and lights (L*), everything else not taken. */
export function plane(dark: number | null, mid: number | null, light: number | null): PlaneMeasures {
  return {
    ...{ share: 0.25, dark, mid, light, spread: null, munsellValue: null, chroma: null, strong: null },
    ...{ hue: null, a: null, b: null, warmCool: null, detail: null, edge: null, hueShares: null },
    ...{ airDistance: null, airShare: null, doubt: {}, notes: [], colours: null },
  };
}

export function gap(known: Partial<PlaneGap>): PlaneGap {
  const nothing = Object.fromEntries(GAP_KEYS.map((key) => [key, null])) as PlaneGap; // All keys are there.
  return { ...nothing, ...known };
}

export function result(
  name: string,
  reference: PlaneMeasures | null,
  painting: PlaneMeasures,
  known: Partial<PlaneGap> | null = null,
): PlaneResult {
  return { name, reference, painting, gap: known ? gap(known) : null, recession: null };
}
