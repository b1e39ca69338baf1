/**
 * The painting under a soft light from the upper left, as a phone would see it: the paint's relief and a trace of
 * the weave.
 *
 * In the flow: painter -> [finish] -> encoder. Pure.
 */
import type { Canvas } from './canvas.ts';
import { blurred, type Field, type LabFields } from './field.ts';

/** L* that a slope of one thickness a pixel adds or takes. */
const RELIEF_L = 9;
/** Most that relief may add or take, L*. */
const RELIEF_MOST_L = 3.2;
/** L* of the weave where the paint is thinnest. */
const WEAVE_L = 1.6;

/** CIELAB of the painting as photographed; every coordinate still unrounded. */
export function photographed(canvas: Canvas, tooth: Field): LabFields {
  const { width, height } = canvas;
  const relief = blurred({ width, height, values: canvas.thickness }, 0.8).values;
  const L = new Float32Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = y * width + x;
      const here = relief[at] as number;
      const left = x > 0 ? (relief[at - 1] as number) : here;
      const above = y > 0 ? (relief[at - width] as number) : here;
      const slope = (here - left) * 0.6 + (here - above) * 0.8;
      const lit = Math.min(Math.max(slope * RELIEF_L * 4, -RELIEF_MOST_L), RELIEF_MOST_L);
      const bare = Math.max(0, 1 - here * 1.6);
      const threads = ((tooth.values[at] as number) - 0.5) * WEAVE_L * (0.25 + bare);
      L[at] = Math.min(Math.max((canvas.L[at] as number) + lit + threads, 0), 99);
    }
  }
  const field = (values: Float32Array): Field => ({ width, height, values });
  return { L: field(L), a: field(canvas.a), b: field(canvas.b) };
}
