/**
 * Prepares what frames are judged by, beside the page: which plane lies where, what weighs where.
 *
 * In the flow: use-crop-scene -> [frame worker] -> figures of the frame under the hand. On the lossless small copy;
 * planes are proposed where none is outlined. IO: messages; HTTP.
 */
import { answerQuestions } from '#app/_workers/answer-questions.ts';
import { copyAt } from '#app/_workers/copies.ts';
import { type CropScene, cropScene } from '#server/core/plan/crops/crop-scene.ts';
import { type OutlinedPlane, shapeScene } from '#server/core/plan/shapes/shape-scene.ts';
import { weighPicture } from '#server/core/plan/weight/balance.ts';
import { proposePlanes } from '#server/core/planes/propose/propose.ts';

export interface SceneQuestion {
  /** Of the lossless copy, whole. */
  address: string;
  /** Far to near; none = they are proposed. */
  planes: readonly OutlinedPlane[];
}

answerQuestions(async ({ address, planes }: SceneQuestion): Promise<CropScene> => {
  const raster = await copyAt(address);
  const outlined = planes.length > 0 ? planes : proposePlanes(raster).chosen.planes;
  return cropScene(shapeScene(raster, outlined, weighPicture(raster), null));
});
