/**
 * How much of each pixel belongs to one plane, following the picture's own edges: 1 inside, 0 outside, soft between.
 *
 * In the flow: label map + lightness -> [guided-weights] -> soft planes. Pure.
 * Source: He, Sun & Tang (2010, 2013), "Guided image filtering", equations 5, 6 and 8, with a grey guide. The filter is
 * linear in its input, so the weights of planes that add up to 1 still do; farther from an edge than two radii they
 * are exactly 0 or 1.
 */
import { boxMean } from './box-mean.ts';

/** Variance of lightness (0..1) above which an edge counts as one: 1 L*, squared. */
const EDGE_VARIANCE = 0.01 ** 2;

export interface Guide {
  readonly widthPx: number;
  readonly heightPx: number;
  /** L* / 100 of every pixel. */
  readonly values: Float32Array;
  readonly mean: Float32Array;
  readonly variance: Float32Array;
  readonly radiusPx: number;
}

/** @param lightness L* of every pixel. */
export function guideOf(lightness: Float32Array, widthPx: number, radiusPx: number): Guide {
  const heightPx = lightness.length / widthPx;
  const values = lightness.map((value) => value / 100);
  const size = { widthPx, heightPx };
  const mean = boxMean({ ...size, values }, radiusPx);
  const square = boxMean({ ...size, values: values.map((value) => value * value) }, radiusPx);
  const variance = square.map((value, at) => Math.max(0, value - (mean[at] as number) ** 2));
  return { ...size, values, mean, variance, radiusPx };
}

/** @param inside 1 where the plane is, else 0. @returns 0..1 a pixel. */
export function guidedWeights(guide: Guide, inside: Float32Array): Float32Array {
  const { widthPx, heightPx, values, mean, variance, radiusPx } = guide;
  const size = { widthPx, heightPx };
  const part = boxMean({ ...size, values: inside }, radiusPx);
  const both = boxMean({ ...size, values: inside.map((one, at) => one * (values[at] as number)) }, radiusPx);
  const slope = both.map((product, at) => {
    const shared = product - (mean[at] as number) * (part[at] as number);
    return shared / ((variance[at] as number) + EDGE_VARIANCE);
  });
  const rest = part.map((value, at) => value - (slope[at] as number) * (mean[at] as number));
  const slopes = boxMean({ ...size, values: slope }, radiusPx);
  const rests = boxMean({ ...size, values: rest }, radiusPx);
  return rests.map((value, at) =>
    Math.min(1, Math.max(0, (slopes[at] as number) * (values[at] as number) + value)),
  );
}
