/** Rendered landscapes with known answers: tolerances of the measuring rules, truth from independent code. */
import { converter, differenceCiede2000 } from 'culori';
import { describe, expect, it } from 'vitest';
import { labFromRgb } from '#server/core/colour/lab.ts';
import type { PlaneKind } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import {
  encodeScene,
  linearOfLab,
  renderScene,
  type Scene,
  type SceneParameters,
} from '#tests/fixtures/scenes/render-scene.ts';
import { truthOf } from '#tests/fixtures/scenes/truth.ts';

const LIGHTNESS = 0.5;
const CHROMA = 0.7;
const HUE_DEG = 3;
/** Chroma from which hue is compared. */
const HUE_CHROMA = 8;
const SHARE = 0.005;
const AIR_SHARE = 0.08;
/** Long side above which the plain dark channel takes too long. */
const LARGE_PX = 1000;

const scenes: SceneParameters[] = parameters.scenes;

function measured(scene: Scene) {
  const prepared = prepareMeasurable({
    raster: encodedRaster(scene.widthPx, scene.heightPx, encodeScene(scene)),
  });
  const planes = scene.names.map((name, at) => ({
    name,
    kind: scene.kinds[at] as PlaneKind,
    outline: scene.outlines[at] as [number, number][],
  }));
  return measurePlanes(prepared, planes, null);
}

function hueAway(p: number, q: number): number {
  const away = Math.abs(p - q) % 360;
  return Math.min(away, 360 - away);
}

describe.each(scenes)('rendered $name', (scene) => {
  it('gives every plane within the tolerances of its truth', () => {
    const rendered = renderScene(scene);
    const large = scene.widthPx > LARGE_PX;
    const truth = truthOf(rendered, !large);
    const found = measured(rendered);
    truth.planes.forEach((plane, at) => {
      const figures = found.planes[at];
      const near = (
        key: 'dark' | 'mid' | 'light' | 'chroma' | 'strong' | 'share',
        tolerance: number,
      ): void => {
        const away = Math.abs((figures?.[key] ?? Number.NaN) - plane[key]);
        expect(away, `${rendered.names[at]} ${key}`).toBeLessThanOrEqual(tolerance);
      };
      near('dark', LIGHTNESS);
      near('mid', LIGHTNESS);
      near('light', LIGHTNESS);
      near('chroma', CHROMA);
      near('strong', CHROMA);
      near('share', SHARE);
      if (plane.chroma > HUE_CHROMA) {
        expect(
          hueAway(figures?.hue ?? Number.NaN, plane.hue),
          `${rendered.names[at]} hue`,
        ).toBeLessThanOrEqual(HUE_DEG);
      }
      if (plane.airShare !== null) {
        const away = Math.abs((figures?.airShare ?? Number.NaN) - plane.airShare);
        expect(away, `${rendered.names[at]} airShare`).toBeLessThanOrEqual(AIR_SHARE);
      }
    });
    const air = [found.air?.L, found.air?.a, found.air?.b];
    truth.air.forEach((figure, at) => {
      expect(Math.abs((air[at] ?? Number.NaN) - figure), 'air').toBeLessThanOrEqual(LIGHTNESS);
    });
  }, 300_000);
});

describe('the rendered scenes', () => {
  it('have textured neighbours under 6 dE00 apart in at least a third', () => {
    const difference = differenceCiede2000();
    const toLab = converter('lab65');
    const seen = (scene: SceneParameters, at: number) => {
      const plane = scene.planes[at] as SceneParameters['planes'][number];
      const air = linearOfLab(scene.air);
      const [r, g, b] = linearOfLab(plane.colour).map(
        (own, channel) => own * plane.through + (air[channel] as number) * (1 - plane.through),
      );
      return toLab({ mode: 'lrgb', r: r as number, g: g as number, b: b as number });
    };
    const close = scenes.filter((scene) =>
      scene.planes
        .slice(1)
        .every(
          (plane, at) => plane.texture.lightness > 0 && difference(seen(scene, at), seen(scene, at + 1)) < 6,
        ),
    );
    expect(close.length * 3).toBeGreaterThanOrEqual(scenes.length);
  });
});

describe('the share of air', () => {
  it.each([0.3, 0.55, 0.8])('is 1 − t where every window holds a black speck (t %d)', (through) => {
    const scene: SceneParameters = {
      name: 'specks',
      seed: 7,
      widthPx: 640,
      heightPx: 420,
      air: { L: 78, a: -1, b: -8 },
      zenith: { L: 66, a: -3, b: -20 },
      skyTexture: 0,
      planes: [
        {
          name: 'wood',
          kind: 'wood',
          colour: { L: 45, a: -8, b: 18 },
          through,
          texture: { lightness: 4, colour: 2, grainPx: 4 },
          ridge: { height: 0.4, swell: 0.02, waves: 2, phase: 1, points: 20 },
          specks: { everyPx: 12, sizePx: 7 },
        },
      ],
    };
    const share = measured(renderScene(scene)).planes[1]?.airShare ?? Number.NaN;
    expect(Math.abs(share - (1 - through))).toBeLessThanOrEqual(AIR_SHARE);
  });
});

describe('flat planes', () => {
  it('have the colour they were painted with, exactly where nothing varies', () => {
    const scene: SceneParameters = {
      ...(scenes[0] as SceneParameters),
      skyTexture: 0,
      planes: (scenes[0] as SceneParameters).planes.map((plane) => ({
        ...plane,
        through: 1,
        texture: { ...plane.texture, lightness: 0, colour: 0 },
      })),
    };
    const { planes } = measured(renderScene(scene));
    scene.planes.forEach((plane, at) => {
      const [r, g, b] = linearOfLab(plane.colour);
      const expected = labFromRgb([r, g, b]);
      const found = planes[at + 1];
      // One 8-bit code is at most 0.4 L* and 0.6 of a* or b* here.
      expect(Math.abs((found?.mid ?? Number.NaN) - expected.L)).toBeLessThanOrEqual(0.25);
      expect(found?.spread ?? Number.NaN).toBeLessThanOrEqual(0.05);
      expect(Math.abs((found?.a ?? Number.NaN) - expected.a)).toBeLessThanOrEqual(0.6);
      expect(Math.abs((found?.b ?? Number.NaN) - expected.b)).toBeLessThanOrEqual(0.6);
    });
  });
});
