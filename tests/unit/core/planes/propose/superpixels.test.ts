/**
 * Superpixels against their definition: a plain reading of algorithm 1 and equation 3 of Achanta et al. (2012), and
 * the compactness of Schick, Fischer & Stiefelhagen (2012), "Measuring and evaluating the compactness of superpixels".
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { COMPACTNESS, superpixels } from '#server/core/planes/propose/superpixels.ts';
import { workingCopy } from '#server/core/planes/propose/working-copy.ts';

function pictureOf(width: number, height: number, seed: number, contrast: number) {
  let state = seed * 2 + 1;
  const samples = Uint8Array.from({ length: width * height * 3 }, (_, at) => {
    state = (state * 48271) % 2147483647;
    const x = Math.floor(at / 3) % width;
    return Math.min(255, 60 + (x > width / 2 ? 90 : 0) + (contrast * state) / 2147483647);
  });
  return workingCopy(encodedRaster(width, height, samples));
}

/** Whether each number names one 4-connected piece. @returns pixels of each piece. */
function pieces(labels: Int32Array, width: number, count: number): number[] {
  const sizes = new Array<number>(count).fill(0);
  const seen = new Uint8Array(labels.length);
  labels.forEach((label, start) => {
    if (seen[start]) return;
    expect(sizes[label], `piece ${label}`).toBe(0);
    const stack = [start];
    seen[start] = 1;
    for (let at = stack.pop(); at !== undefined; at = stack.pop()) {
      sizes[label] = (sizes[label] as number) + 1;
      const x = at % width;
      for (const other of [x > 0 ? at - 1 : -1, x < width - 1 ? at + 1 : -1, at - width, at + width]) {
        if (other >= 0 && other < labels.length && !seen[other] && labels[other] === label) {
          seen[other] = 1;
          stack.push(other);
        }
      }
    }
  });
  return sizes;
}

/** Sum over superpixels of their share times 4π area / perimeter². */
function compactnessOf(labels: Int32Array, width: number, height: number, count: number): number {
  const [areas, rims] = [new Array<number>(count).fill(0), new Array<number>(count).fill(0)];
  labels.forEach((label, at) => {
    areas[label] = (areas[label] as number) + 1;
    const [x, y] = [at % width, Math.floor(at / width)];
    const open = [
      x === 0 || labels[at - 1] !== label,
      x === width - 1 || labels[at + 1] !== label,
      y === 0 || labels[at - width] !== label,
      y === height - 1 || labels[at + width] !== label,
    ];
    rims[label] = (rims[label] as number) + open.filter(Boolean).length;
  });
  return areas.reduce(
    (sum, area, label) =>
      sum + (area / labels.length) * ((4 * Math.PI * area) / (rims[label] as number) ** 2),
    0,
  );
}

describe('superpixels', () => {
  it('are numbered without a gap, each in one piece, none under a quarter of the asked size but at the start', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 8, max: 70 }),
        fc.integer({ min: 8, max: 70 }),
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 0, max: 1e6 }),
        fc.integer({ min: 0, max: 120 }),
        (width, height, wanted, seed, contrast) => {
          const copy = pictureOf(width, height, seed, contrast);
          const { labels, count, step } = superpixels(copy.lab, copy.edge, width, height, wanted);
          const sizes = pieces(labels, width, count);
          expect(Math.min(...sizes)).toBeGreaterThan(0);
          expect(sizes.slice(1).every((size) => size >= Math.floor((step * step) / 4))).toBe(true);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('are as compact as squares where nothing varies: 4π area / perimeter² of a square is π/4', () => {
    const copy = pictureOf(96, 96, 1, 0);
    const flat = { ...copy.lab, lightness: copy.lab.lightness.map(() => 50) };
    const { labels, count } = superpixels(flat, new Float32Array(96 * 96), 96, 96, 64);
    expect(count).toBe(64);
    expect(compactnessOf(labels, 96, 96, count)).toBeCloseTo(Math.PI / 4, 1);
  });

  it('give each pixel to the nearest centre by equation 3, as a plain reading of the paper does', () => {
    const [width, height, wanted] = [60, 48, 30];
    const copy = pictureOf(width, height, 5, 12);
    const { labels, count, step } = superpixels(copy.lab, copy.edge, width, height, wanted);
    const sums = Array.from({ length: count }, () => [0, 0, 0, 0, 0, 0]);
    const cuesAt = (at: number): number[] => [
      copy.lab.lightness[at] as number,
      copy.lab.a[at] as number,
      copy.lab.b[at] as number,
      at % width,
      Math.floor(at / width),
    ];
    labels.forEach((label, at) => {
      const sum = sums[label] as number[];
      [...cuesAt(at), 1].forEach((value, cue) => {
        sum[cue] = (sum[cue] as number) + value;
      });
    });
    const centres = sums.map((sum) => sum.slice(0, 5).map((value) => value / (sum[5] as number)));
    const distance = (p: number[], q: number[]): number => {
      const squares = p.map((value, cue) => (value - (q[cue] as number)) ** 2) as [
        number,
        number,
        number,
        number,
        number,
      ];
      const colour = squares[0] + squares[1] + squares[2];
      return Math.sqrt(colour + ((squares[3] + squares[4]) / step ** 2) * COMPACTNESS ** 2);
    };
    const agreeing = labels.filter((label, at) => {
      const own = distance(cuesAt(at), centres[label] as number[]);
      // Ten rounds need not have settled, and strays were joined: a pixel may be nearly as near elsewhere.
      return centres.every((centre) => distance(cuesAt(at), centre) >= own - 1.5);
    });
    expect(agreeing.length / labels.length).toBeGreaterThan(0.95);
  });
});
