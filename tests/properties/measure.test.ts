/** What must hold for any pair: exposure, names, mirrors, start points. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { MeasureDocument } from '#server/core/contract/measures.ts';
import { Setup } from '#server/core/contract/setup.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { measurePair } from '#server/core/measure/measure-pair.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import parameters from '#tests/fixtures/scenes/parameters.json' with { type: 'json' };
import {
  encodeScene,
  renderScene,
  type Scene,
  type SceneParameters,
} from '#tests/fixtures/scenes/render-scene.ts';

/** The frozen scenes at a third of their size. */
const SMALL: SceneParameters[] = parameters.scenes.map((scene) => ({
  ...scene,
  widthPx: 180,
  heightPx: 121,
}));
const sceneAt = fc
  .integer({ min: 0, max: SMALL.length - 1 })
  .map((at) => renderScene(SMALL[at] as SceneParameters));
const RUNS = { numRuns: 12 };
/** A dozen scenes are rendered and measured a test. */
const PATIENT_MS = 120_000;

function setupOf(scene: Scene, names = scene.names, flip = (point: [number, number]) => point) {
  const planes = names.map((name, at) => ({
    name,
    kind: scene.kinds[at],
    reference: (scene.outlines[at] as [number, number][]).map(flip),
  }));
  return Setup.parse({ planes });
}

const raster = (scene: Scene): EncodedRaster =>
  encodedRaster(scene.widthPx, scene.heightPx, encodeScene(scene));
const exposed = (scene: Scene, gain: number): Scene => ({
  ...scene,
  linear: scene.linear.map((light) => Math.min(1, light * gain)),
});

function measure(reference: EncodedRaster, painting: EncodedRaster, setup: Setup): MeasureDocument {
  return measurePair({ reference: { raster: reference }, painting: { raster: painting }, setup });
}

describe('measuring', () => {
  it(
    'moves the key with the exposure, not the order of the planes',
    () => {
      fc.assert(
        fc.property(sceneAt, fc.double({ min: 0.45, max: 0.9, noNaN: true }), (scene, gain) => {
          const { fit, planes, steps } = measure(raster(scene), raster(exposed(scene, gain)), setupOf(scene));
          for (const { gap } of planes) expect(gap?.mid ?? 0).toBeLessThan(0);
          for (const step of steps) {
            const [r, p] = [step.reference?.mid ?? 0, step.painting.mid ?? 0];
            // A step under a third of an L* can drown in the rounding to 8 bits.
            if (Math.abs(r) > 0.33) expect(Math.sign(p)).toBe(Math.sign(r));
          }
          if (fit.span !== null) expect(fit.span).toBeGreaterThan(0);
        }),
        RUNS,
      );
    },
    PATIENT_MS,
  );

  it(
    'has neither gap nor fault between a picture and itself',
    () => {
      fc.assert(
        fc.property(sceneAt, (scene) => {
          const { planes, fit } = measure(raster(scene), raster(scene), setupOf(scene));
          for (const { gap } of planes) {
            for (const figure of Object.values(gap ?? {})) expect(figure === null || figure === 0).toBe(true);
          }
          if (fit.span !== null) expect(fit.span).toBeCloseTo(1, 9);
          if (fit.key !== null) expect(fit.key).toBeCloseTo(0, 6);
          for (const { recession } of planes) {
            for (const ratio of Object.values(recession ?? {}))
              if (ratio !== null) expect(ratio).toBeCloseTo(1, 9);
          }
        }),
        RUNS,
      );
    },
    PATIENT_MS,
  );

  it(
    'changes nothing but names when planes are renamed',
    () => {
      fc.assert(
        fc.property(
          sceneAt,
          fc.array(fc.string({ minLength: 1, maxLength: 12 }), { minLength: 6, maxLength: 6 }),
          (scene, words) => {
            const names = scene.names.map((_, at) => words[at] as string);
            const image = raster(scene);
            const plain = measure(image, image, setupOf(scene));
            const renamed = measure(image, image, setupOf(scene, names));
            // Readings, cards and observations speak of planes by their names.
            const unnamed = ({
              planes,
              steps,
              readings,
              works,
              cards: _cards,
              observations: _observations,
              ...rest
            }: MeasureDocument) => ({
              ...rest,
              works: works !== null,
              readings: readings.map(({ id, severity }) => ({ id, severity })),
              planes: planes.map(({ name: _name, ...plane }) => plane),
              steps: steps.map(({ far: _far, near: _near, ...step }) => step),
            });
            expect(unnamed(renamed)).toEqual(unnamed(plain));
            expect(renamed.planes.map(({ name }) => name)).toEqual(names);
          },
        ),
        RUNS,
      );
    },
    PATIENT_MS,
  );

  it(
    'gives a mirrored picture the same figures',
    () => {
      fc.assert(
        fc.property(sceneAt, (scene) => {
          const mirrored = encodeScene(scene);
          const straight = encodeScene(scene);
          for (let pixel = 0; pixel < scene.labels.length; pixel++) {
            const x = pixel % scene.widthPx;
            const from = (pixel - x + scene.widthPx - 1 - x) * 3;
            mirrored.set(straight.subarray(from, from + 3), pixel * 3);
          }
          const flip = ([x, y]: [number, number]): [number, number] => [1 - x, y];
          const one = measure(raster(scene), raster(scene), setupOf(scene));
          const image = encodedRaster(scene.widthPx, scene.heightPx, mirrored);
          const other = measure(image, image, setupOf(scene, scene.names, flip));
          one.planes.forEach(({ painting }, at) => {
            const seen = other.planes[at]?.painting;
            for (const key of [
              'dark',
              'mid',
              'light',
              'chroma',
              'strong',
              'a',
              'b',
              'airDistance',
            ] as const) {
              expect(Math.abs((seen?.[key] ?? 0) - (painting[key] ?? 0)), key).toBeLessThan(0.1);
            }
            expect(seen?.share).toBeCloseTo(painting.share, 3);
          });
        }),
        RUNS,
      );
    },
    PATIENT_MS,
  );
});

describe('the label map', () => {
  const point = fc.tuple(
    fc.double({ min: -0.2, max: 1.2, noNaN: true }),
    fc.double({ min: -0.2, max: 1.2, noNaN: true }),
  );
  const outline = fc.array(point, { minLength: 3, maxLength: 9 });

  it('gives every pixel one of the planes or none', () => {
    fc.assert(
      fc.property(fc.array(outline, { maxLength: 5 }), (outlines) => {
        const labels = drawLabelMap(23, 17, outlines);
        expect(labels).toHaveLength(23 * 17);
        expect(labels.every((label) => label === 255 || label < outlines.length)).toBe(true);
      }),
    );
  });

  it('does not care where an outline starts or which way it runs', () => {
    fc.assert(
      fc.property(outline, fc.nat(8), (points, start) => {
        const at = start % points.length;
        const turned = [...points.slice(at), ...points.slice(0, at)];
        const plain = drawLabelMap(31, 19, [points]);
        expect(drawLabelMap(31, 19, [turned])).toEqual(plain);
        // Run backwards, a crossing right at a pixel's centre may round to its other side.
        const reversed = drawLabelMap(31, 19, [[...points].reverse()]);
        expect(reversed.filter((label, pixel) => label !== plain[pixel]).length).toBeLessThanOrEqual(1);
      }),
    );
  });
});
