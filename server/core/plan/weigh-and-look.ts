/**
 * What weighs in a picture and what its shapes suggest, in one call: for a photograph, a frame of it, or a picture that
 * was rearranged.
 *
 * In the flow: raster + outlines -> [weigh-and-look] -> weight panel, plan. Without planes the contours are left out and
 * the weight is told all the same. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { EncodedRaster } from '../image/raster.ts';
import { type RidgeFacts, ridgeFacts } from './shapes/ridges.ts';
import { type OutlinedPlane, type ShapeScene, shapeScene } from './shapes/shape-scene.ts';
import { suggestionsOf } from './shapes/suggest.ts';
import type { Suggestion } from './shapes/suggestion.ts';
import { type Balance, weighPicture } from './weight/balance.ts';

export interface Looked {
  readonly balance: Balance;
  /** Far to near. */
  readonly ridges: readonly RidgeFacts[];
  /** Suggestions about shapes; muted ones last. */
  readonly readings: readonly Suggestion[];
}

/** What to look at, beside the pixels. */
export interface LookSource {
  /** Far to near, 0..1 of the picture, checked before; empty = none are known. */
  readonly planes: readonly OutlinedPlane[];
  /** Marked by the painter, 0..1; null where none is. */
  readonly focus: FractionPoint | null;
  /** Readings that the painter meant: `K4` everywhere, `K4/far ridge` on one plane. */
  readonly meant: readonly string[];
}

/** @param raster of any size; figures are those of the plate to within what shrinking leaves. */
export function weighAndLook(
  raster: EncodedRaster,
  { planes, focus, meant }: LookSource,
): Looked & { readonly scene: ShapeScene } {
  const weighed = weighPicture(raster);
  const scene = shapeScene(raster, planes, weighed, focus);
  return {
    scene,
    balance: weighed.balance,
    ridges: ridgeFacts(scene),
    readings: suggestionsOf(scene, meant),
  };
}
