/**
 * Paints the plan's picture beside the page: rearranged, and in the planned light where that is asked for.
 *
 * In the flow: preview-line -> [preview worker] -> the page's canvas, which was handed over to it. With WebGL where there
 * is any, else by the server's own pure code. IO: messages; HTTP, for two copies of the picture; an off-screen canvas.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import type { Rearranging } from '#server/core/contract/rearranging.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import type { PlanGround, PlanWish } from '#server/core/plan/ladder/plan-ground.ts';
import { type Copies, LitGround } from '#server/core/plan/preview/lit-ground.ts';
import type { PlaneLight } from '#server/core/plan/preview/plane-light.ts';
import { relight } from '#server/core/plan/preview/relight.ts';
import { isProblem } from '#server/core/problem.ts';
import { GlPainter } from './gl-painter.ts';

export interface PreviewQuestion {
  /** Handed over once, with the first question. */
  canvas: OffscreenCanvas | null;
  /** Addresses of the copies, whole: the one that is shown, and the lossless small one. */
  shown: string;
  small: string;
  ground: PlanGround;
  steps: Rearranging;
  /** Null = in the photograph's own light. */
  wish: PlanWish | null;
}

/** `by` says how it was painted; `small` is the rearranged picture for weight and shapes, null where nothing is. */
export type PreviewAnswer = { by: 'webgl' | 'plain'; small: EncodedRaster | null } | { sentence: string };

const SMALL_PX = 640;
let canvas: OffscreenCanvas | null = null;
let gl: GlPainter | null = null;
const grounds = new Map<string, LitGround>();

function takeCanvas(given: OffscreenCanvas): void {
  canvas = given;
  try {
    gl = new GlPainter(given);
  } catch {
    gl = null;
  }
}

/** Of the newest photograph alone: a ground takes some 30 MB. */
function groundOf(address: string): LitGround {
  const ground = grounds.get(address) ?? new LitGround();
  grounds.clear();
  grounds.set(address, ground);
  return ground;
}

function put(raster: EncodedRaster): void {
  const context = canvas?.getContext('2d');
  if (!canvas || !context) throw new Error('This browser gives no canvas to paint on.');
  canvas.width = raster.widthPx;
  canvas.height = raster.heightPx;
  const image = new ImageData(raster.widthPx, raster.heightPx);
  for (let from = 0, to = 0; from < raster.samples.length; from += 3, to += 4) {
    image.data[to] = raster.samples[from] ?? 0;
    image.data[to + 1] = raster.samples[from + 1] ?? 0;
    image.data[to + 2] = raster.samples[from + 2] ?? 0;
    image.data[to + 3] = 255;
  }
  context.putImageData(image, 0, 0);
}

/** Every other pixel: enough to weigh a picture by. */
function half({ widthPx, heightPx, samples }: EncodedRaster): EncodedRaster {
  const every = Math.max(1, Math.round(Math.max(widthPx, heightPx) / SMALL_PX));
  const [columns, rows] = [Math.floor(widthPx / every), Math.floor(heightPx / every)];
  const small = new Uint8Array(columns * rows * 3);
  for (let y = 0, to = 0; y < rows; y++) {
    for (let x = 0; x < columns; x++, to += 3) {
      const from = (y * every * widthPx + x * every) * 3;
      small.set(samples.subarray(from, from + 3), to);
    }
  }
  return { encoding: 'srgb8', widthPx: columns, heightPx: rows, samples: small };
}

function paint(
  ground: LitGround,
  copies: Copies,
  { ground: plan, steps, wish }: PreviewQuestion,
): PreviewAnswer {
  const picture = ground.arranged(copies, plan.planes, steps).raster;
  const small = picture === copies.shown ? null : half(picture);
  const lit = wish && plan.planes.length > 0 ? ground.ground(copies, plan, steps) : null;
  const lights: (PlaneLight | null)[] = lit && wish ? ground.lights(copies, plan, steps, wish) : [];
  if (gl && lit) gl.paint(lit, lights);
  else if (gl) gl.show(picture);
  else put(lit ? relight(lit, lights) : picture);
  return { by: gl ? 'webgl' : 'plain', small };
}

answerQuestions(async (question: PreviewQuestion): Promise<PreviewAnswer> => {
  if (question.canvas) takeCanvas(question.canvas);
  const [shown, small] = await Promise.all([copyAt(question.shown), copyAt(question.small)]);
  try {
    return paint(groundOf(question.shown), { shown, small }, question);
  } catch (thrown) {
    if (isProblem(thrown)) return { sentence: thrown.message };
    throw thrown;
  }
});
