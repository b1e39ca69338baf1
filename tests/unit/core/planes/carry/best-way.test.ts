/** The best line through a band is the cheapest of all lines, counted one by one; doubt rises where two are alike. */
import { describe, expect, it } from 'vitest';
import { type BandCosts, bestWay } from '#server/core/planes/carry/best-way.ts';

/** As in the module: what one cell of bending costs, and how far a line bends from one sample to the next. */
const BEND_COST = 0.16;
const MOST_BEND = 2;

function costOf({ samples, band, costs }: BandCosts, offsets: readonly number[]): number {
  let sum = 0;
  for (let sample = 0; sample < samples; sample++) {
    const offset = offsets[sample] ?? 0;
    sum += costs[sample * (2 * band + 1) + offset + band] ?? 0;
    if (sample > 0) sum += BEND_COST * Math.abs(offset - (offsets[sample - 1] ?? 0));
  }
  return sum;
}

/** Every line that may be. */
function* lines(samples: number, band: number, from: number[] = []): Generator<number[]> {
  if (from.length === samples) return yield from;
  const last = from.at(-1);
  for (let offset = -band; offset <= band; offset++) {
    if (last === undefined || Math.abs(offset - last) <= MOST_BEND)
      yield* lines(samples, band, [...from, offset]);
  }
}

function drawn(samples: number, band: number, seed: number): BandCosts {
  let state = seed;
  const next = () => {
    state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
    return state / 0x7fffffff;
  };
  return { samples, band, costs: Float64Array.from({ length: samples * (2 * band + 1) }, next) };
}

describe('the best line', () => {
  it.each([1, 2, 3, 4, 5])('costs no more than any other, drawing %i', (seed) => {
    const band = drawn(5, 3, seed);
    const least = Math.min(...[...lines(5, 3)].map((line) => costOf(band, line)));
    expect(costOf(band, [...bestWay(band, 1).offsets])).toBeCloseTo(least, 9);
  });

  it('is sure of one deep valley and unsure between two alike', () => {
    const valley = (...at: number[]): BandCosts => ({
      samples: 30,
      band: 8,
      costs: Float64Array.from({ length: 30 * 17 }, (_, cell) => (at.includes((cell % 17) - 8) ? -1.5 : 0)),
    });
    const [one, two] = [bestWay(valley(3), 2), bestWay(valley(-5, 5), 2)];
    expect([...one.offsets]).toEqual(new Array(30).fill(3));
    expect(Math.max(...one.elsewhere)).toBeLessThan(0.05);
    for (const chance of two.elsewhere) expect(chance).toBeCloseTo(0.5, 1);
  });

  it('says nothing of even ground', () => {
    const even: BandCosts = { samples: 20, band: 8, costs: new Float64Array(20 * 17) };
    expect(Math.min(...bestWay(even, 2).elsewhere)).toBeGreaterThan(0.4);
  });
});
