/** The small parts of the preview against their definitions, written out plainly. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labFromRgb, rgbFromLab } from '#server/core/colour/lab.ts';
import { boxMean } from '#server/core/plan/preview/box-mean.ts';
import { grownLabels } from '#server/core/plan/preview/grown-labels.ts';
import { guidedWeights, guideOf } from '#server/core/plan/preview/guided-weights.ts';
import { type CurvePoint, monotoneCurve } from '#server/core/plan/preview/monotone-curve.ts';
import { CURVE_STEPS, litColour, NO_AIR_CHANGE } from '#server/core/plan/preview/plane-light.ts';
import { BARE, eachPlane, softPlanes } from '#server/core/plan/preview/soft-planes.ts';
import { masked, painted } from '../rearrange/painted.ts';

const [WIDTH, HEIGHT] = [23, 17];
const values = Float32Array.from({ length: WIDTH * HEIGHT }, (_, at) => ((at * 37) % 101) / 101);

/** The mean over the window around each pixel, one pixel after the other. */
function plainMean(field: Float32Array, radius: number): Float32Array {
  return field.map((_, at) => {
    const [x, y] = [at % WIDTH, Math.floor(at / WIDTH)];
    let [sum, count] = [0, 0];
    for (let v = Math.max(0, y - radius); v <= Math.min(HEIGHT - 1, y + radius); v++) {
      for (let u = Math.max(0, x - radius); u <= Math.min(WIDTH - 1, x + radius); u++, count++) {
        sum += field[v * WIDTH + u] as number;
      }
    }
    return sum / count;
  });
}

describe('a mean over a window', () => {
  it.each([0, 1, 3, 30])('is the mean of its pixels (radius %i)', (radius) => {
    const found = boxMean({ widthPx: WIDTH, heightPx: HEIGHT, values }, radius);
    plainMean(values, radius).forEach((mean, at) => {
      expect(Math.abs((found[at] as number) - mean)).toBeLessThan(1e-5);
    });
  });
});

describe('weights that follow the picture', () => {
  it('are the guided filter of He, Sun & Tang (2010), equations 5, 6 and 8', () => {
    const [radius, eps] = [2, 0.01 ** 2];
    const inside = Float32Array.from(masked(WIDTH, HEIGHT, (x, y) => x + y > 18));
    const product = (one: Float32Array, other: Float32Array) =>
      one.map((value, at) => value * (other[at] as number));
    const [mean, part] = [plainMean(values, radius), plainMean(inside, radius)];
    const variance = plainMean(product(values, values), radius).map(
      (each, at) => each - (mean[at] as number) ** 2,
    );
    const covariance = plainMean(product(values, inside), radius).map(
      (each, at) => each - (mean[at] as number) * (part[at] as number),
    );
    const slope = covariance.map((each, at) => each / ((variance[at] as number) + eps));
    const rest = part.map((each, at) => each - (slope[at] as number) * (mean[at] as number));
    const [slopes, rests] = [plainMean(slope, radius), plainMean(rest, radius)];
    const lightness = values.map((value) => value * 100);
    const found = guidedWeights(guideOf(lightness, WIDTH, radius), inside);
    found.forEach((weight, at) => {
      const wanted = (slopes[at] as number) * (values[at] as number) + (rests[at] as number);
      expect(Math.abs(weight - Math.min(1, Math.max(0, wanted)))).toBeLessThan(1e-3);
    });
  });

  it('add up to one at every pixel, and are whole inside a plane', () => {
    const picture = painted(120, 90, (x, y) => [(x * 7 + y) % 256, (y * 5) % 256, (x + y * 3) % 256]);
    const labels = Uint8Array.from({ length: 120 * 90 }, (_, at) => {
      const [x, y] = [at % 120, Math.floor(at / 120)];
      if (x > 100 && y < 40) return 255;
      return y < 30 + x / 10 ? 0 : 1;
    });
    const soft = softPlanes(picture, labels, 2);
    for (let pixel = 0; pixel < labels.length; pixel++) {
      let sum = 0;
      const seen: number[] = [];
      eachPlane(soft, pixel, (plane, weight) => {
        sum += weight;
        seen.push(plane);
      });
      expect(sum).toBeCloseTo(1, 6);
      for (const plane of seen) expect([0, 1, BARE]).toContain(plane);
    }
    const only: number[] = [];
    eachPlane(soft, 80 * 120 + 60, (plane) => only.push(plane));
    expect(only).toEqual([1]);
  });
});

describe('gaps between outlines', () => {
  it('go to the nearest plane, as far as they reach', () => {
    const labels = Uint8Array.from({ length: 30 }, (_, at) => (at < 10 ? 0 : at < 20 ? 255 : 1));
    expect([...grownLabels(labels, 30, 3).subarray(8, 22)]).toEqual(
      [0, 0, 0, 0, 0, 255, 255, 255, 255, 1, 1, 1, 1, 1].slice(0, 14),
    );
    expect(grownLabels(labels, 30, 5)).not.toContain(255);
  });
});

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe('a curve through figures', () => {
  const rising = fc
    .array(fc.tuple(number(1, 30), number(0, 30)), { minLength: 1, maxLength: 4 })
    .map((steps) => {
      const points: CurvePoint[] = [[0, 0]];
      for (const [along, up] of steps) {
        const [x, y] = points.at(-1) as CurvePoint;
        points.push([x + along, y + up]);
      }
      return points;
    });

  it('never falls, stays between its points, and passes through them', () => {
    fc.assert(
      fc.property(rising, (points) => {
        const [most, top] = points.at(-1) as CurvePoint;
        const curve = monotoneCurve(points, most, 2001);
        for (let at = 1; at < curve.length; at++) {
          expect(curve[at]).toBeGreaterThanOrEqual((curve[at - 1] as number) - 1e-4);
        }
        for (const [x, y] of points) {
          const near = curve[Math.round((x / most) * 2000)] as number;
          const slack =
            (most / 2000) *
            3 *
            Math.max(
              1,
              ...points.slice(1).map(([u, v], at) => {
                const [u0, v0] = points[at] as CurvePoint;
                return (v - v0) / (u - u0);
              }),
            );
          expect(Math.abs(near - y)).toBeLessThanOrEqual(slack + 1e-3);
        }
        expect(Math.max(...curve)).toBeLessThanOrEqual(top + 1e-4);
      }),
      { numRuns: 200 },
    );
  });

  it('through points of the diagonal is the diagonal', () => {
    const curve = monotoneCurve(
      [
        [0, 0],
        [13, 13],
        [40, 40],
        [100, 100],
      ],
      100,
      101,
    );
    curve.forEach((value, at) => {
      expect(value).toBeCloseTo(at, 4);
    });
  });
});

describe('a light that changes nothing', () => {
  it('gives every colour of a screen back', () => {
    const straight = (most: number) =>
      Float32Array.from({ length: CURVE_STEPS }, (_, at) => (at / (CURVE_STEPS - 1)) * most);
    const still = {
      detail: 1,
      air: NO_AIR_CHANGE,
      lightness: straight(100),
      chroma: straight(160),
      shift: [0, 0] as const,
    };
    const seen = new Float64Array(3);
    fc.assert(
      fc.property(number(0, 1), number(0, 1), number(0, 1), (red, green, blue) => {
        litColour(still, [red, green, blue], 0, seen);
        for (const [at, light] of [red, green, blue].entries()) expect(seen[at]).toBeCloseTo(light, 5);
      }),
    );
  });

  it('moves lightness, chroma and warmth by what it says, where a screen can show it', () => {
    const straight = (most: number, by: number, up = 0) =>
      Float32Array.from({ length: CURVE_STEPS }, (_, at) => (at / (CURVE_STEPS - 1)) * most * by + up);
    const seen = new Float64Array(3);
    const own = { L: 50, a: 6, b: 10 };
    const light = {
      detail: 1,
      air: NO_AIR_CHANGE,
      lightness: straight(100, 0.8, 5),
      chroma: straight(160, 0.5),
      shift: [2, 3] as const,
    };
    litColour(light, rgbFromLab(own), 0, seen);
    const found = labFromRgb([...seen] as [number, number, number]);
    expect(found.L).toBeCloseTo(45, 2);
    expect(found.a).toBeCloseTo(5, 2);
    expect(found.b).toBeCloseTo(8, 2);
  });
});
