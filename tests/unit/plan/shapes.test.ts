/**
 * Suggestions about shapes on rendered landscapes: each fault of the trade's list drawn into some, none into as many.
 * Ranges and seeds were frozen before the rules were tuned; the cases counted here were not used for tuning.
 */
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { ridgeFacts } from '#server/core/plan/shapes/ridges.ts';
import { shapeScene } from '#server/core/plan/shapes/shape-scene.ts';
import { suggestionsOf } from '#server/core/plan/shapes/suggest.ts';
import { weighPicture } from '#server/core/plan/weight/balance.ts';
import { FAULTS, type ShapeCase, shapeCase } from '#tests/fixtures/plan/shape-cases.ts';

const CASES = Array.from({ length: 10 }, (_, at) => 4 + at);
const RIGHT = 0.9;
const PATIENT_MS = 600_000;

function sceneOf({ widthPx, heightPx, samples, planes }: ShapeCase, focus: [number, number] | null = null) {
  const raster = encodedRaster(widthPx, heightPx, samples);
  return shapeScene(raster, planes, weighPicture(raster), focus);
}
const suggested = (drawn: ShapeCase, focus: [number, number] | null = null, meant: string[] = []) =>
  suggestionsOf(sceneOf(drawn, focus), meant);

describe('on rendered landscapes', () => {
  it(`finds the fault in at least 90 % of ${FAULTS.length * CASES.length}, 9 of 10 of each kind`, {
    timeout: PATIENT_MS,
  }, () => {
    const found = FAULTS.map((fault) => {
      const hits = CASES.filter((number) =>
        suggested(shapeCase(fault, number)).some(({ kind }) => kind === fault),
      );
      return { fault, hits: hits.length };
    });
    for (const { fault, hits } of found) expect(hits, fault).toBeGreaterThanOrEqual(RIGHT * CASES.length);
    const all = found.reduce((sum, { hits }) => sum + hits, 0);
    expect(all / (FAULTS.length * CASES.length)).toBeGreaterThanOrEqual(RIGHT);
  });

  it(`says nothing at all about at least 90 % of as many clean ones`, { timeout: PATIENT_MS }, () => {
    const numbers = Array.from({ length: FAULTS.length * CASES.length }, (_, at) => 40 + at);
    const quiet = numbers.filter((number) => suggested(shapeCase(null, number)).length === 0);
    expect(quiet.length / numbers.length).toBeGreaterThanOrEqual(RIGHT);
  });
});

describe('a suggestion', () => {
  it('says in at most 30 words what to look at, why, from whom, and where on the picture', () => {
    for (const fault of FAULTS) {
      for (const { sentence, why, source, at, severity } of suggested(shapeCase(fault, 0))) {
        expect(sentence).toMatch(/^Look at /);
        expect(sentence.split(/\s+/).length).toBeLessThanOrEqual(30);
        expect(why).toMatch(/\.$/);
        expect(source).not.toBe('');
        expect(severity).toBeGreaterThanOrEqual(1);
        expect(severity).toBeLessThanOrEqual(3);
        expect(at.length).toBeGreaterThan(0);
        for (const place of at.flat()) expect(place >= 0 && place <= 1).toBe(true);
      }
    }
  });

  it('about stacked peaks lies where they were drawn', () => {
    const drawn = shapeCase('stacked-peaks', 0);
    const [stacked] = suggested(drawn).filter(({ kind }) => kind === 'stacked-peaks');
    const top = drawn.planes[1]?.outline.reduce((best, point) => (point[1] < best[1] ? point : best));
    expect(Math.abs((stacked?.at[0]?.[0] ?? 0) - (top?.[0] ?? 1))).toBeLessThan(0.02);
    expect(Math.abs((stacked?.at[0]?.[1] ?? 0) - (top?.[1] ?? 1))).toBeLessThan(0.01);
  });

  it('is muted where the painter meant it, everywhere or on one plane, and comes last', () => {
    const drawn = shapeCase('straight-ridge', 1);
    const [own] = suggested(drawn).filter(({ kind }) => kind === 'straight-ridge');
    expect(own?.muted).toBeNull();
    for (const meant of ['K4', `K4/${own?.planes[0]}`]) {
      expect(suggested(drawn, null, [meant]).at(-1)?.muted).toBe('The painter marked this as meant.');
    }
    expect(suggested(drawn, null, ['K4/no such plane']).every(({ muted }) => muted === null)).toBe(true);
  });

  it('about the focus needs one to be marked: 6 % from both centre lines, or 8 % from an edge', () => {
    const drawn = shapeCase(null, 0);
    const kinds = (x: number, y: number) => suggested(drawn, [x, y]).map(({ kind }) => kind);
    expect(suggested(drawn).some(({ id }) => id === 'K2')).toBe(false);
    expect(kinds(0.55, 0.45)).toContain('focus-centred');
    expect(kinds(0.57, 0.5)).not.toContain('focus-centred');
    expect(kinds(0.07, 0.4)).toContain('focus-at-edge');
    expect(kinds(0.4, 0.95)).toContain('focus-at-edge');
    expect(kinds(0.33, 0.62)).toEqual([]);
  });

  it('finds no straight run in water, and none where there are no planes', () => {
    const drawn = shapeCase('straight-ridge', 1);
    const water = {
      ...drawn,
      planes: drawn.planes.map((plane, at) => (at === 0 ? plane : { ...plane, kind: 'water' as const })),
    };
    expect(suggestionsOf(sceneOf(water), []).some(({ kind }) => kind === 'straight-ridge')).toBe(false);
    expect(suggestionsOf(sceneOf({ ...drawn, planes: [] }), []).filter(({ id }) => id === 'K4')).toEqual([]);
  });
});

it('ridges are listed far to near with the slope and the peak they were drawn with', () => {
  const drawn = shapeCase('stacked-peaks', 2);
  const facts = ridgeFacts(sceneOf(drawn));
  expect(facts.map(({ name }) => name)).toEqual(['far ridge', 'middle ridge', 'near slope']);
  for (const { span, slopeDeg, points } of facts) {
    expect(span).toBeGreaterThan(0.95);
    expect(Math.abs(slopeDeg)).toBeLessThan(6);
    expect(points.length).toBeGreaterThan(20);
  }
  expect(facts[0]?.peaks.length).toBeGreaterThan(0);
});
