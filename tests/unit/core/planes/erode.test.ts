/** Rims taken off exactly, against looking at every pixel. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { erodeLabels, labelsOfBlocks } from '#server/core/planes/erode.ts';

/** The definition: out when any pixel of another label lies nearer than the radius. */
function plainErosion(labels: Uint8Array, width: number, radius: number): number[] {
  return Array.from(labels, (label, pixel) => {
    const [x, y] = [pixel % width, Math.floor(pixel / width)];
    const near = labels.some(
      (other, at) => other !== label && Math.hypot((at % width) - x, Math.floor(at / width) - y) < radius,
    );
    return near ? 255 : label;
  });
}

describe('taking off the rim', () => {
  it('agrees with the definition on any label map', () => {
    const maps = fc
      .record({ width: fc.integer({ min: 1, max: 24 }), height: fc.integer({ min: 1, max: 16 }) })
      .chain(({ width, height }) =>
        fc.record({
          width: fc.constant(width),
          height: fc.constant(height),
          radius: fc.double({ min: 0.2, max: 8, noNaN: true }),
          labels: fc.uint8Array({ minLength: width * height, maxLength: width * height, max: 3 }),
          // Few labels in large patches: where planes have an inside.
          patch: fc.integer({ min: 1, max: 9 }),
        }),
      );
    fc.assert(
      fc.property(maps, ({ width, height, radius, labels, patch }) => {
        const patched = labels.map((_, at) => {
          const [x, y] = [Math.floor((at % width) / patch), Math.floor(at / width / patch)];
          const label = labels[Math.min(labels.length - 1, y * width + x)] as number;
          return label === 3 ? 255 : label;
        });
        expect([...erodeLabels(patched, width, height, radius)]).toEqual(
          plainErosion(patched, width, radius),
        );
      }),
      { numRuns: 150 },
    );
  });

  it('treats the border of the picture as no boundary', () => {
    const labels = new Uint8Array(30 * 20);
    expect(erodeLabels(labels, 30, 20, 6)).toEqual(labels);
  });

  it('gives a block to a plane when all its pixels belong to it', () => {
    const labels = Uint8Array.of(0, 0, 1, 0, 1, 0, 0, 0, 0, 1, 2, 2, 3, 2, 3);
    expect([...labelsOfBlocks(labels, 5, 3, 2)]).toEqual([0, 255, 1, 2, 255, 3]);
    expect(labelsOfBlocks(labels, 5, 3, 1)).toBe(labels);
  });
});
