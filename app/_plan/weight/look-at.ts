/**
 * Weight and shapes of what is planned from: the photograph, a frame of it, or the picture as it was rearranged.
 *
 * In the flow: plan worker -> [look-at] -> beam, list of what to look at. Pure.
 */
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { pointInFrame, pointOfFrame, rasterInFrame } from '#server/core/plan/in-frame.ts';
import type { OutlinedPlane } from '#server/core/plan/shapes/shape-scene.ts';
import type { Suggestion } from '#server/core/plan/shapes/suggestion.ts';
import { weighAndLook } from '#server/core/plan/weigh-and-look.ts';
import type { Balance } from '#server/core/plan/weight/balance.ts';

export interface ToLookAt {
  /** Far to near, 0..1 of the photograph; none are known where it is empty. */
  planes: readonly OutlinedPlane[];
  /** 0..1 of the photograph. */
  focus: FractionPoint | null;
  box: Box;
  /** The rearranged picture in place of the photograph, whole; null = as it was taken. */
  rearranged: EncodedRaster | null;
}

export interface LookedAt {
  balance: Balance;
  /** Places in 0..1 of the photograph. */
  suggestions: Suggestion[];
}

/** @param picture whole. */
export function lookAt(picture: EncodedRaster, { planes, focus, box }: ToLookAt): LookedAt {
  const inside = planes.map((plane) => ({
    ...plane,
    outline: plane.outline.map((point) => pointInFrame(point, box)),
  }));
  const found = weighAndLook(rasterInFrame(picture, box), {
    planes: inside,
    focus: focus && pointInFrame(focus, box),
    meant: [],
  });
  return {
    balance: found.balance,
    suggestions: found.readings.map((reading) => ({
      ...reading,
      at: reading.at.map((point) => pointOfFrame(point, box)),
    })),
  };
}
