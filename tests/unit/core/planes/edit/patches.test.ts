/** Patches of a picture: they keep to its edges, the hand's way picks those it runs over, and their shape can be shown. */
import { describe, expect, test } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { patchesOf } from '#server/core/planes/edit/patches.ts';
import { patchesUnder, shapeOf } from '#server/core/planes/edit/patches-under.ts';
import { betterLine } from '#server/core/planes/follow/better-line.ts';
import { edgeCosts } from '#server/core/planes/follow/edge-cost.ts';

const [WIDTH, HEIGHT] = [160, 120];
/** Light above, dark below; the edge runs from 0.4 at the left to 0.6 at the right, a step half-way. */
const edgeAt = (x: number) => (x < 80 ? 48 : 72);
const samples = Uint8Array.from({ length: WIDTH * HEIGHT * 3 }, (_, at) => {
  const [x, y] = [Math.floor(at / 3) % WIDTH, Math.floor(at / 3 / WIDTH)];
  return y < edgeAt(x) ? 200 : 60;
});
const picture = encodedRaster(WIDTH, HEIGHT, samples);
const patches = patchesOf(picture, 60);

describe('patches', () => {
  test('lie wholly on one side of a strong edge', () => {
    const light = new Map<number, Set<boolean>>();
    patches.labels.forEach((label, cell) => {
      const side = Math.floor(cell / WIDTH) < edgeAt(cell % WIDTH);
      light.set(label, (light.get(label) ?? new Set()).add(side));
    });
    const astride = [...light.values()].filter((sides) => sides.size > 1).length;
    expect(astride).toBe(0);
    expect(light.size).toBeGreaterThan(30);
  });

  test('under the hand are those that its way runs over, and none outside the picture', () => {
    const across = patchesUnder(patches, [
      [0.1, 0.2],
      [0.9, 0.2],
    ]);
    expect(across.size).toBeGreaterThan(4);
    expect(patchesUnder(patches, [[0.1, 0.2]]).size).toBe(1);
    expect(patchesUnder(patches, [[1.2, 0.2]]).size).toBe(0);
    for (const label of across) {
      const cell = patches.labels.indexOf(label);
      expect(Math.floor(cell / WIDTH)).toBeLessThan(72);
    }
  });

  test('have shapes that could be outlines', () => {
    const shape = shapeOf(patches, patchesUnder(patches, [[0.1, 0.2]]));
    expect(shape).toHaveLength(1);
    expect(() => checkOutline('it', shape[0] ?? [])).not.toThrow();
    expect(shapeOf(patches, new Set())).toEqual([]);
  });
});

describe('a line between two points that were pulled', () => {
  const costs = edgeCosts(picture);

  test('bends onto a clear edge between them', () => {
    const line = betterLine(costs, [0.3, 0.4], [0.6, 0.6]);
    expect(line?.some(([x, y]) => Math.abs(x - 0.48) < 0.03 && Math.abs(y - 0.4) < 0.03)).toBe(true);
  });

  test('stays straight over even ground, where it is short, and along the picture’s border', () => {
    expect(betterLine(costs, [0.1, 0.1], [0.4, 0.2])).toBeNull();
    expect(betterLine(costs, [0.3, 0.4], [0.32, 0.4])).toBeNull();
    expect(betterLine(costs, [0, 0.1], [0, 0.9])).toBeNull();
  });
});
