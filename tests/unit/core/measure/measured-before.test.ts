/** Remembering what was measured changes no figure and forgets what no longer holds. */
import { describe, expect, it } from 'vitest';
import { Setup, type SetupInput } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import { measuredBefore } from '#server/core/measure/measured-before.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';

const WIDTH = 240;
const HEIGHT = 160;

function preparedOf(seed: number) {
  const samples = Uint8Array.from({ length: WIDTH * HEIGHT * 3 }, (_, at) => (at * seed + (at >> 7)) % 251);
  return prepareMeasurable({ raster: encodedRaster(WIDTH, HEIGHT, samples) });
}

const [reference, painting] = [preparedOf(7), preparedOf(11)];

/** Two planes that meet at `edge`; on the painting at `painted`, where it has an outline of its own. */
function setupOf(edge: number, painted?: number, more: Partial<SetupInput> = {}) {
  const band = (from: number, to: number): [number, number][] => [
    [0, from],
    [1, from],
    [1, to],
    [0, to],
  ];
  const own = (from: number, to: number) => (painted === undefined ? {} : { painting: band(from, to) });
  return Setup.parse({
    planes: [
      { name: 'sky', kind: 'sky', reference: band(0, edge), ...own(0, painted ?? 0) },
      { name: 'field', reference: band(edge, 1), ...own(painted ?? 0, 1) },
    ],
    ...more,
  });
}

describe('measuring with a memory', () => {
  it.each([
    ['an outline on the painting moved', setupOf(0.4, 0.5)],
    ['an outline on the reference moved', setupOf(0.45, 0.42)],
    ['the painting follows the reference', setupOf(0.45)],
    ['the air was picked', setupOf(0.4, 0.42, { air: { reference: { L: 80, a: -2, b: -8 } } })],
  ])('gives the figures of measuring afresh when %s', (_, changed) => {
    const measure = measuredBefore();
    measurePrepared(reference, painting, setupOf(0.4, 0.42), { measure });
    expect(measurePrepared(reference, painting, changed, { measure })).toEqual(
      measurePrepared(reference, painting, changed),
    );
  });

  it('hands out what it knows until outlines, kinds, air or pixels are others', () => {
    const measure = measuredBefore();
    const planes = setupOf(0.4).planes.map(({ name, kind, reference: outline }) => ({ name, kind, outline }));
    const known = measure(painting, planes, null);
    expect(measure({ ...painting, facts: null }, structuredClone(planes), null)).toBe(known);
    expect(measure(reference, planes, null)).not.toBe(known);
    expect(measure(painting, planes, null, { sampling: true })).not.toBe(known);
    const asWater = planes.map((plane) => ({ ...plane, kind: 'water' as const }));
    expect(measure(painting, asWater, null)).not.toBe(known);
    expect(measure(painting, planes, { L: 80, a: -2, b: -8 })).not.toBe(known);
    expect(measure(painting, planes, null)).toEqual(known);
  });
});
