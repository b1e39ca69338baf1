/** Rendered scenes made ready for planning, and small made-up planes. */
import type { LabColour, PlaneKind } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { type PictureToPlan, pictureToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import {
  encodeScene,
  type Scene,
  type SceneParameters,
  type ScenePlane,
} from '#tests/fixtures/scenes/render-scene.ts';

/** The frozen scenes at a small size. */
export const SMALL: SceneParameters[] = parameters.scenes.map((scene) => ({
  ...scene,
  widthPx: 240,
  heightPx: 180,
}));

export function rasterOf(scene: Scene): EncodedRaster {
  return encodedRaster(scene.widthPx, scene.heightPx, encodeScene(scene));
}

export function toPlan(scene: Scene): PictureToPlan {
  const prepared = prepareMeasurable({ raster: rasterOf(scene) });
  const planes = scene.names.map((name, at) => ({
    name,
    kind: scene.kinds[at] as PlaneKind,
    outline: scene.outlines[at] as [number, number][],
  }));
  return pictureToPlan(prepared, measurePlanes(prepared, planes, null), planes);
}

/** A wooded scene whose planes hold black specks; `through` far to near. */
export function speckled(through: readonly number[], air: LabColour): SceneParameters {
  return {
    name: 'speckled',
    seed: 11,
    widthPx: 400,
    heightPx: 280,
    air,
    zenith: { L: air.L - 8, a: air.a, b: air.b - 8 },
    skyTexture: 0,
    planes: through.map(
      (t, at): ScenePlane => ({
        name: `wood ${at + 1}`,
        kind: 'wood',
        colour: { L: 45, a: -10, b: 24 },
        through: t,
        texture: { lightness: 6, colour: 3, grainPx: 6 },
        ridge: { height: 0.3 + 0.7 * (at / through.length), swell: 0.02, waves: 2, phase: at, points: 20 },
        specks: { everyPx: 8, sizePx: 5 },
      }),
    ),
  };
}
