/** Any air, strength, conditions and handles: figures are finite, in range and ordered. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CONDITIONS, PlannedPlane } from '#server/core/contract/setup.ts';
import { planLadder } from '#server/core/plan/ladder/plan-ladder.ts';
import { risingRow } from '#server/core/plan/ladder/pool-adjacent.ts';
import type { LadderWishes } from '#server/core/plan/ladder/wishes.ts';
import { hazed, madeUp } from './made-up.ts';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const colour = fc.record({ L: number(2, 96), a: number(-30, 30), b: number(-30, 30) });
const anyAir = fc.record({ L: number(-40, 160), a: number(-150, 150), b: number(-150, 150) });
const handle = fc.record(
  {
    mid: number(-120, 120),
    dark: number(-50, 150),
    light: number(-50, 150),
    chroma: number(-1, 20),
    warmCool: number(-200, 200),
  },
  { requiredKeys: [] },
);
const wishes: fc.Arbitrary<LadderWishes> = fc.record({
  count: fc.option(fc.integer({ min: 1, max: 8 })),
  air: fc.oneof(
    anyAir,
    fc.constantFrom('photograph', 'blue', 'blue-violet', 'red-violet', 'blue-green', 'warm', null),
  ),
  strength: number(0, 50),
  conditions: fc.subarray([...CONDITIONS]),
  handles: fc.dictionary(fc.constantFrom('far', 'middle', 'near', 'sky'), handle),
});

/** Random planes are measured once each: a dozen pictures serve all runs. */
const pictures = fc
  .sample(
    fc.record({ air: colour, patches: fc.array(colour, { minLength: 3, maxLength: 3 }), sky: fc.boolean() }),
    {
      numRuns: 12,
      seed: 6,
    },
  )
  .map(({ air, patches, sky }) => {
    const land = ['far', 'middle', 'near'].map((name, at) => ({
      name,
      colours: patches.map((patch) => hazed(patch, air, (at + 1) / 3)),
    }));
    const all = sky ? [{ name: 'sky', kind: 'sky' as const, colours: [air] }, ...land] : land;
    return madeUp(all, sky ? air : null);
  });

describe('any planned ladder', () => {
  it('has figures that are finite, in range and ordered', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pictures), wishes, (picture, wished) => {
        const { ladder, notes } = planLadder(picture, wished);
        expect(ladder.map(({ name }) => name)).toEqual(picture.planes.map(({ name }) => name));
        for (const rung of ladder) {
          expect(PlannedPlane.parse(rung)).toEqual(rung);
          const { dark, mid, light, chroma, strong, warmCool, airDistance } = rung;
          expect(dark).toBeGreaterThanOrEqual(0);
          expect(mid).toBeGreaterThanOrEqual(dark);
          expect(light).toBeGreaterThanOrEqual(mid);
          expect(light).toBeLessThanOrEqual(100.01);
          expect(chroma).toBeGreaterThanOrEqual(0);
          expect(strong).toBeGreaterThanOrEqual(chroma);
          // The strongest colour of sRGB is its blue, C* 134.
          expect(strong).toBeLessThanOrEqual(134);
          expect(Math.abs(warmCool)).toBeLessThanOrEqual(134 ** 1.07);
          expect(airDistance ?? Number.NaN).toBeGreaterThanOrEqual(0);
        }
        for (const note of notes) expect(note).toMatch(/^[A-Z0-9].*[.?]$/s);
      }),
      { numRuns: 300 },
    );
  });

  it('is the same for the same picture and wishes', () => {
    fc.assert(
      fc.property(fc.constantFrom(...pictures), wishes, (picture, wished) => {
        expect(planLadder(picture, wished)).toEqual(planLadder(picture, wished));
      }),
      { numRuns: 50 },
    );
  });
});

/** The best rising row by looking at every way of cutting a row into blocks of one value. */
function bestByLooking(values: number[], weights: number[]): number {
  let best = Number.POSITIVE_INFINITY;
  for (let cuts = 0; cuts < 2 ** (values.length - 1); cuts++) {
    const blocks: number[][] = [[]];
    values.forEach((_, at) => {
      if (at > 0 && (cuts >> (at - 1)) & 1) blocks.push([]);
      blocks.at(-1)?.push(at);
    });
    const means = blocks.map((block) => {
      const weight = block.reduce((sum, at) => sum + (weights[at] as number), 0);
      return block.reduce((sum, at) => sum + (weights[at] as number) * (values[at] as number), 0) / weight;
    });
    if (means.some((mean, at) => at > 0 && mean < (means[at - 1] as number))) continue;
    const cost = blocks.reduce(
      (sum, block, which) =>
        sum +
        block.reduce(
          (inner, at) =>
            inner + (weights[at] as number) * ((values[at] as number) - (means[which] as number)) ** 2,
          0,
        ),
      0,
    );
    best = Math.min(best, cost);
  }
  return best;
}

describe('isotonic regression', () => {
  it('gives the textbook rows', () => {
    expect(risingRow([], [])).toEqual([]);
    expect(risingRow([1, 2, 3], [1, 1, 1])).toEqual([1, 2, 3]);
    expect(risingRow([3, 1], [1, 1])).toEqual([2, 2]);
    expect(risingRow([1, 4, 2, 3, 5], [1, 1, 1, 1, 1])).toEqual([1, 3, 3, 3, 5]);
    expect(risingRow([4, 0], [1, 3])).toEqual([1, 1]);
  });

  it('rises, and no rising row is nearer', () => {
    const row = fc.array(fc.tuple(number(0, 3), number(0.1, 2)), { minLength: 1, maxLength: 7 });
    fc.assert(
      fc.property(row, (pairs) => {
        const [values, weights] = [pairs.map(([value]) => value), pairs.map(([, weight]) => weight)];
        const found = risingRow(values, weights);
        for (let at = 1; at < found.length; at++) {
          expect(found[at]).toBeGreaterThanOrEqual((found[at - 1] as number) - 1e-12);
        }
        const cost = found.reduce(
          (sum, value, at) => sum + (weights[at] as number) * (value - (values[at] as number)) ** 2,
          0,
        );
        expect(cost).toBeLessThanOrEqual(bestByLooking(values, weights) + 1e-9);
      }),
      { numRuns: 200 },
    );
  });
});
