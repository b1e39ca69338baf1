/**
 * The pictures inside one photograph: frames in every format, ranked, each with its reasons.
 *
 * In the flow: shape scene -> [propose-crops] -> plan. The best come first, but each next one also for showing something
 * else than those before it. Source: Poore 1903, ch. IV (one wide photograph may hold three pictures). Pure.
 */

import { drawLabelMap } from '../../planes/label-map.ts';
import { say } from '../../say/say.ts';
import type { ShapeScene } from '../shapes/shape-scene.ts';
import { LEAST_CROP_PX } from './check-crop.ts';
import { type Box, cropScene, nearestPlane } from './crop-scene.ts';
import { canvasesFor, FORMATS } from './formats.ts';
import type { Judged } from './judge.ts';
import { reasonsFor } from './reasons.ts';
import { bestFrames, overlapOf } from './search.ts';

/**
 * What a frame loses in rank for its overlap with one ranked before it, in units of the score; and for each part of the
 * overlap beyond which both are nearly one picture in two formats.
 */
const SAME_AGAIN = 0.6;
const NEARLY = { overlap: 0.75, loses: 2 } as const;

/** A frame that leaves out less than this share of the photograph is no picture found inside it, and comes last. */
const LEAST_LEFT_OUT = 0.05;
const WHOLE: Box = [0, 0, 1, 1];

export interface Crop {
  readonly format: string;
  /** x0, y0, x1, y1 in 0..1 of the picture; edges on whole pixels of its plate. */
  readonly box: Box;
  /** Share of the frame that is sky, and that is the nearest plane, 0..1, counted on the plate. */
  readonly sky: number;
  readonly foreground: number;
  readonly reasons: readonly string[];
}

export interface Crops {
  readonly crops: readonly Crop[];
  /** Whole sentences about what could not be proposed. */
  readonly notes: readonly string[];
}

/** Shares of a frame by counting every pixel of the plate. */
function countShares(scene: ShapeScene, labels: Uint8Array, box: Box): { sky: number; foreground: number } {
  const { widthPx, heightPx } = scene.picture;
  const nearest = nearestPlane(scene);
  const [left, right] = [Math.round(box[0] * widthPx), Math.round(box[2] * widthPx)];
  const [top, bottom] = [Math.round(box[1] * heightPx), Math.round(box[3] * heightPx)];
  let [sky, foreground] = [0, 0];
  for (let y = top; y < bottom; y++) {
    for (let x = left, at = y * widthPx + left; x < right; x++, at++) {
      const label = labels[at] as number;
      if (scene.planes[label]?.kind === 'sky') sky++;
      if (label === nearest) foreground++;
    }
  }
  const pixels = (right - left) * (bottom - top);
  return { sky: sky / pixels, foreground: foreground / pixels };
}

interface Ranked {
  readonly format: string;
  readonly ratio: number;
  readonly judged: Judged;
}

function isNearlyWhole({ judged }: Ranked): boolean {
  return overlapOf(judged.box, WHOLE) > 1 - LEAST_LEFT_OUT;
}

/** Pictures inside the photograph first, then what is nearly the photograph itself. */
function inOrder(frames: readonly Ranked[]): Ranked[] {
  const ranked = inRank(frames);
  return [...ranked.filter((frame) => !isNearlyWhole(frame)), ...ranked.filter(isNearlyWhole)];
}

/** By score, each next one losing for what those before it show already. */
function inRank(frames: readonly Ranked[]): Ranked[] {
  const left = frames.map((frame) => ({ frame, seen: 0 }));
  const ranked: Ranked[] = [];
  while (left.length > 0) {
    const worth = (at: number): number => {
      const candidate = left[at] as (typeof left)[number];
      const { frame, seen } = candidate;
      return frame.judged.score - SAME_AGAIN * seen - NEARLY.loses * Math.max(0, seen - NEARLY.overlap);
    };
    const best = left.reduce((most, _, at) => (worth(at) > worth(most) ? at : most), 0);
    const [taken] = left.splice(best, 1) as [(typeof left)[number]];
    ranked.push(taken.frame);
    for (const other of left) {
      other.seen = Math.max(other.seen, overlapOf(other.frame.judged.box, taken.frame.judged.box));
    }
  }
  return ranked;
}

/**
 * @param scene planes may be none: shares are 0 then.
 * @param longSidePx of the photograph itself: pixels left to paint from are counted in it. Left out = the plate's.
 */
export function proposeCrops(scene: ShapeScene, longSidePx?: number): Crops {
  const { widthPx, heightPx } = scene.picture;
  if (Math.min(widthPx, heightPx) < LEAST_CROP_PX) {
    return {
      crops: [],
      notes: [
        say`The picture has ${widthPx} by ${heightPx} pixels, and a frame needs ${LEAST_CROP_PX} on its shorter side; no frames are proposed. Take a larger photograph.`,
      ],
    };
  }
  const seen = cropScene(scene);
  if (seen.things.length === 0) {
    const note = say`Nothing in the picture stands out from its ground, so no frame is better than another; none is proposed.`;
    return { crops: [], notes: [note] };
  }
  const frames = FORMATS.flatMap(({ name, ratio, frames: most }) =>
    bestFrames(seen, ratio, most).map((judged): Ranked => ({ format: name, ratio, judged })),
  );
  const labels = drawLabelMap(
    widthPx,
    heightPx,
    scene.planes.map(({ outline }) => outline),
  );
  const enlarged = longSidePx === undefined ? 1 : longSidePx / Math.max(widthPx, heightPx);
  const crops = inOrder(frames).map(({ format, ratio, judged }): Crop => {
    const shares = countShares(scene, labels, judged.box);
    return {
      format,
      box: judged.box,
      ...shares,
      reasons: reasonsFor({ ...judged, ...shares }, seen, { canvases: canvasesFor(ratio), enlarged }),
    };
  });
  return { crops, notes: [] };
}
