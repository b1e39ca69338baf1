/**
 * Planes carried to paintings of rendered scenes: crops, wider views, motifs shifted, painted anew in other colours.
 *
 * The thresholds of carrying were chosen on the scenes of `tests/fixtures/scenes`; these here were only reported on.
 */
import { describe, expect, it } from 'vitest';
import { carriedResult, together, wrongShare } from '#tests/fixtures/carry/carried.ts';
import { CARRY_KINDS, type CarryKind, carryCase } from '#tests/fixtures/carry/cases.ts';
import { paintScene } from '#tests/fixtures/carry/paint-scene.ts';
import { isCloseScene, proposalScenes } from '#tests/fixtures/proposals/scenes.ts';

const PATIENT_MS = 300_000;
const OVERLAP: Record<CarryKind, number> = { crops: 0.9, shifts: 0.9, repainted: 0.9 };
/** Among fewer wrong places than this nothing can be said about which were called unsure. */
const TELLING = 50;

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

describe.each(CARRY_KINDS.map((kind) => ({ kind })))('planes carried to $kind', ({ kind }) => {
  it(
    'overlap the true ones by 0.9 on average, and ridges called unsure are wrong more often than the others',
    () => {
      const results = proposalScenes.map((scene, at) => {
        const drawn = carryCase(kind, 100 + at, scene.planes.length + 1, isCloseScene(scene));
        return carriedResult(paintScene(scene, drawn));
      });
      const fitted = mean(results.map((result) => result.fitted));
      expect(fitted).toBeGreaterThanOrEqual(OVERLAP[kind]);
      expect(fitted).toBeGreaterThan(mean(results.map((result) => result.before)) + 0.1);
      const { sure, unsure } = together(results.map(({ ridges }) => ridges));
      expect(wrongShare(sure)).toBeLessThan(0.08);
      if (sure.wrong + unsure.wrong < TELLING) return;
      expect(wrongShare(unsure)).toBeGreaterThan(2 * wrongShare(sure));
    },
    PATIENT_MS,
  );
});
