/** Rendered landscapes with known planes: overlap with the number given, and the number the program chooses. */
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { proposePlanes } from '#server/core/planes/propose/propose.ts';
import { meanOverlap } from '#tests/fixtures/proposals/overlap.ts';
import { isCloseScene, proposalScenes } from '#tests/fixtures/proposals/scenes.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import { encodeScene, renderScene, type SceneParameters } from '#tests/fixtures/scenes/render-scene.ts';

const OVERLAP = 0.93;
const RIGHT_NUMBER = 0.8;
const PATIENT_MS = 300_000;

const measuringScenes: readonly SceneParameters[] = parameters.scenes;

function proposed(parameters: SceneParameters): { overlap: number; chosen: number; truth: number } {
  const scene = renderScene(parameters);
  const { widthPx, heightPx } = scene;
  const proposals = proposePlanes(encodedRaster(widthPx, heightPx, encodeScene(scene)));
  const truth = scene.names.length;
  const planes = proposals.alternatives.find(({ asked }) => asked === truth)?.planes ?? [];
  const found = drawLabelMap(
    widthPx,
    heightPx,
    planes.map(({ outline }) => outline),
  );
  return {
    overlap: meanOverlap(found, planes.length, scene.labels, truth),
    chosen: proposals.chosen.planes.length,
    truth,
  };
}

describe.each([
  ['scenes drawn for proposals', proposalScenes],
  ['scenes drawn for measuring', measuringScenes],
])('planes proposed for %s', (_, scenes) => {
  it(
    'overlap the true ones by 0.93 on average when the number is given, and have the right number in 80 %',
    () => {
      const results = scenes.map(proposed);
      const overlap = results.reduce((sum, result) => sum + result.overlap, 0) / results.length;
      const right = results.filter(({ chosen, truth }) => chosen === truth).length / results.length;
      expect(overlap).toBeGreaterThanOrEqual(OVERLAP);
      expect(right).toBeGreaterThanOrEqual(RIGHT_NUMBER);
    },
    PATIENT_MS,
  );
});

describe('the scenes drawn for proposals', () => {
  it('have textured neighbours 2 to 6 dE00 apart in at least a third', () => {
    expect(proposalScenes.filter(isCloseScene).length * 3).toBeGreaterThanOrEqual(proposalScenes.length);
  });
});
