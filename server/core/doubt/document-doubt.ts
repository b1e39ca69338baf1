/**
 * Doubt beside every figure of a document: planes, gaps, steps and recession.
 *
 * In the flow: compared pair + sampling + grade -> [document-doubt] -> document. Two planes of one photograph
 * share most of its error: a difference of them keeps 0.6 of the grade's deviation; ratios go by first-order
 * propagation of their logarithm. Pure.
 */
import type { Grade } from '../capture/grade.ts';
import {
  GAP_KEYS,
  type MeasureDocument,
  type PlaneMeasures,
  type PlaneResult,
  type Recession,
  STEP_KEYS,
  type Step,
  type StepKey,
} from '../contract/measures.ts';
import type { PictureMeasures } from '../measure/measure-planes.ts';
import { type Deviations, deviationsOf, intervalOf, RELATION, withDoubt } from './intervals.ts';

type Intervals = Record<string, [number, number]>;
type Side = 'reference' | 'painting';

/** One plane's deviations: with the grade's share, and the bootstrap's alone. */
interface PlaneDoubt {
  readonly whole: Deviations;
  readonly drawn: Deviations;
}

function doubtsOf(measures: PictureMeasures | null, grade: Grade | null): (PlaneDoubt | null)[] {
  return (
    measures?.planes.map((figures, at) => {
      const sampling = measures.sampling[at];
      if (!sampling) return null;
      return {
        whole: deviationsOf(figures, sampling, measures.air, grade),
        drawn: deviationsOf(figures, sampling, measures.air, null),
      };
    }) ?? []
  );
}

/** The part of a deviation that a plane does not share with others of its picture. */
function own(doubt: PlaneDoubt, key: keyof Deviations): number {
  const [whole, drawn] = [doubt.whole[key] ?? 0, doubt.drawn[key] ?? 0];
  const graded = Math.sqrt(Math.max(0, whole ** 2 - drawn ** 2));
  return Math.hypot((graded * RELATION) / Math.SQRT2, drawn);
}

function gapDoubt(plane: PlaneResult, painting: PlaneDoubt, reference: PlaneDoubt | null): Intervals {
  const found: Intervals = {};
  for (const key of GAP_KEYS) {
    const value = plane.gap?.[key] ?? null;
    if (value === null) continue;
    found[key] = intervalOf(value, Math.hypot(painting.whole[key] ?? 0, reference?.whole[key] ?? 0));
  }
  return found;
}

function stepDoubt(
  step: Step,
  painting: readonly [PlaneDoubt, PlaneDoubt],
  reference: readonly [PlaneDoubt | null, PlaneDoubt | null],
): NonNullable<Step['doubt']> {
  const found: NonNullable<Step['doubt']> = { painting: {}, gap: {} };
  const drawn = (doubt: PlaneDoubt | null, key: StepKey): number => doubt?.drawn[key] ?? 0;
  for (const key of STEP_KEYS) {
    const [value, gap] = [step.painting[key], step.gap?.[key] ?? null];
    const deviation = Math.hypot(own(painting[0], key), own(painting[1], key));
    if (value !== null) found.painting[key] = intervalOf(value, deviation);
    if (gap !== null) {
      found.gap[key] = intervalOf(
        gap,
        Math.hypot(deviation, drawn(reference[0], key), drawn(reference[1], key)),
      );
    }
  }
  return found;
}

/** Figure behind each ratio of recession, and whether the ratio is one of logarithms. */
const RATIOS = [
  ['darks', 'dark', false],
  ['air', 'airDistance', false],
  ['spread', 'spread', true],
  ['chroma', 'strong', true],
] as const;
const FLOOR = 2;

interface FarNear {
  readonly figures: readonly [PlaneMeasures, PlaneMeasures];
  readonly doubts: readonly [PlaneDoubt, PlaneDoubt];
}

/** Deviation of (far − near), or of ln(far / near). */
function relationDeviation(
  { figures, doubts }: FarNear,
  key: 'dark' | 'airDistance' | 'spread' | 'strong',
  log: boolean,
): number {
  const parts = doubts.map((doubt, at) => {
    const size = log ? Math.max(FLOOR, figures[at]?.[key] ?? FLOOR) : 1;
    return own(doubt, key) / size;
  });
  return Math.hypot(...parts);
}

/** ratio = top / bottom: the target's bottom is exact but for its bootstrap. */
function recessionDoubt(recession: Recession, painting: FarNear, reference: FarNear | null): Intervals {
  const found: Intervals = {};
  for (const [name, key, log] of RATIOS) {
    const ratio = recession[name];
    if (ratio === null || !reference) continue;
    const [far, near] = reference.figures.map((figures) => figures[key] ?? 0) as [number, number];
    const bottom = log ? Math.log(Math.max(FLOOR, far) / Math.max(FLOOR, near)) : far - near;
    if (bottom === 0) continue;
    const drawn = reference.doubts.map(
      ({ drawn: own }, at) =>
        (own[key] ?? 0) / (log ? Math.max(FLOOR, reference.figures[at]?.[key] ?? FLOOR) : 1),
    );
    const top = relationDeviation(painting, key, log);
    found[name] = intervalOf(ratio, Math.hypot(top, ratio * Math.hypot(...drawn)) / Math.abs(bottom));
  }
  return found;
}

/** Far and nearest plane of one picture with their doubts; null where either is missing. */
function farNear(
  planes: readonly PlaneResult[],
  doubts: readonly (PlaneDoubt | null)[],
  far: number,
  near: number,
  side: Side,
): FarNear | null {
  const [a, b] = [planes[far]?.[side], planes[near]?.[side]];
  const [p, q] = [doubts[far], doubts[near]];
  return a && b && p && q ? { figures: [a, b], doubts: [p, q] } : null;
}

/** The document with its doubt; measures must hold their sampling. @param grade null: taken as exact. */
export function addDoubt(
  document: MeasureDocument,
  reference: PictureMeasures | null,
  painting: PictureMeasures,
  grade: Grade | null,
): MeasureDocument {
  const onPainting = doubtsOf(painting, grade);
  const onReference = doubtsOf(reference, null);
  // Only a document compared with the reference knows its doubt; a plan is the painter's own figures.
  const compared = document.target === 'reference' ? onReference : [];
  const nearest = document.planes.findLastIndex(({ recession }, at) => recession === null && onPainting[at]);
  const planes = document.planes.map((plane, at): PlaneResult => {
    const doubt = onPainting[at];
    const [own, target] = [onPainting[at] ?? null, onReference[at] ?? null];
    const known = {
      ...plane,
      reference: plane.reference && target ? withDoubt(plane.reference, target.whole) : plane.reference,
      painting: own ? withDoubt(plane.painting, own.whole) : plane.painting,
    };
    if (!doubt) return known;
    const pair = farNear(document.planes, onPainting, at, nearest, 'painting');
    const recession =
      plane.recession && pair
        ? recessionDoubt(plane.recession, pair, farNear(document.planes, compared, at, nearest, 'reference'))
        : {};
    return { ...known, doubt: { gap: gapDoubt(plane, doubt, compared[at] ?? null), recession } };
  });
  const steps = document.steps.map((step, at): Step => {
    const [far, near] = [onPainting[at], onPainting[at + 1]];
    if (!far || !near) return step;
    return {
      ...step,
      doubt: stepDoubt(step, [far, near], [compared[at] ?? null, compared[at + 1] ?? null]),
    };
  });
  return { ...document, planes, steps };
}
