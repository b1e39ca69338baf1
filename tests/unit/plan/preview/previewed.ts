/** Rendered scenes with their plan and its preview. */
import type { PlaneKind } from '#server/core/contract/setup.ts';
import type { EncodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes, type PictureMeasures } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { pictureToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';
import { type LadderPlan, planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import type { LadderWishes } from '#server/core/plan/ladder/wishes.ts';
import {
  type PreviewGround,
  previewGround,
  previewLights,
} from '#server/core/plan/preview/preview-ground.ts';
import { relight } from '#server/core/plan/preview/relight.ts';
import type { Scene } from '#tests/fixtures/scenes/render-scene.ts';
import { rasterOf } from '../ladder/a-picture.ts';

export interface Previewed {
  raster: EncodedRaster;
  plan: LadderPlan;
  measured: PictureMeasures;
  ground: PreviewGround;
  shown: EncodedRaster;
  /** The preview, measured like any picture. */
  again: PictureMeasures;
}

export function planesOf(scene: Scene) {
  return scene.names.map((name, at) => ({
    name,
    kind: scene.kinds[at] as PlaneKind,
    outline: scene.outlines[at] as [number, number][],
  }));
}

/** @param byAir false = the preview is told the rungs alone. */
export function previewed(scene: Scene, wishes: Partial<LadderWishes>, byAir = true): Previewed {
  const raster = rasterOf(scene);
  const planes = planesOf(scene);
  const prepared = prepareMeasurable({ raster });
  const measured = measurePlanes(prepared, planes, null);
  const plan = planLadder(pictureToPlan(prepared, measured, planes), wishes);
  const ground = previewGround(raster, measured.labels, planes.length);
  const wanted = planes.map(({ name }) => {
    const at = plan.ladder.findIndex((rung) => rung.name === name);
    const rung = plan.ladder[at];
    return rung ? { rung, before: null, change: byAir ? (plan.changes[at] ?? null) : null } : null;
  });
  const shown = relight(ground, previewLights(ground, wanted));
  const again = measurePlanes(prepareMeasurable({ raster: shown }), planes, plan.air);
  return { raster, plan, measured, ground, shown, again };
}
