/** A frame under the hand: whatever is pulled, it stays inside, keeps its format, and its fixed side does not move. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import {
  FRAME_PARTS,
  LEAST_SIDE,
  movedFrame,
  pulledFrame,
  refittedFrame,
} from '#server/core/plan/crops/edit-frame.ts';

const share = (least: number, most: number) => fc.double({ min: least, max: most, noNaN: true });
const aBox = fc
  .tuple(share(0, 0.7), share(0, 0.7), share(0.1, 0.3), share(0.1, 0.3))
  .map(([x, y, wide, high]): Box => [x, y, x + wide, y + high]);
const aPull = fc.tuple(share(-1.5, 1.5), share(-1.5, 1.5));
const aRatio = share(0.4, 2.5);
const inside = (box: Box) => {
  for (const side of box) {
    expect(side).toBeGreaterThanOrEqual(0);
    expect(side).toBeLessThanOrEqual(1);
  }
  expect(box[2]).toBeGreaterThan(box[0]);
  expect(box[3]).toBeGreaterThan(box[1]);
};
const ratioOf = ([x0, y0, x1, y1]: Box) => (x1 - x0) / (y1 - y0);

describe('a frame under the hand', () => {
  it('moved whole keeps its size and stays inside', () => {
    fc.assert(
      fc.property(aBox, aPull, (box, [dx, dy]) => {
        const moved = movedFrame(box, dx, dy);
        inside(moved);
        expect(moved[2] - moved[0]).toBeCloseTo(box[2] - box[0], 9);
        expect(moved[3] - moved[1]).toBeCloseTo(box[3] - box[1], 9);
      }),
    );
    expect(movedFrame([0.2, 0.2, 0.5, 0.5], 0.1, -0.1)).toEqual([
      expect.closeTo(0.3),
      expect.closeTo(0.1),
      expect.closeTo(0.6),
      expect.closeTo(0.4),
    ]);
  });

  it('pulled freely moves the pulled sides alone, and keeps a least size', () => {
    fc.assert(
      fc.property(aBox, fc.constantFrom(...FRAME_PARTS), aPull, (box, part, pull) => {
        const now = pulledFrame(box, part, pull, null);
        inside(now);
        expect(now[2] - now[0]).toBeGreaterThanOrEqual(LEAST_SIDE - 1e-9);
        if (!part.includes('w')) expect(now[0]).toBe(box[0]);
        if (!part.includes('e')) expect(now[2]).toBe(box[2]);
        if (!part.includes('n')) expect(now[1]).toBe(box[1]);
        if (!part.includes('s')) expect(now[3]).toBe(box[3]);
      }),
    );
    expect(pulledFrame([0.2, 0.2, 0.5, 0.5], 'e', [0.2, 0.3], null)).toEqual([0.2, 0.2, 0.7, 0.5]);
  });

  it('pulled in its format keeps it, whatever is pulled and however far', () => {
    fc.assert(
      fc.property(aBox, fc.constantFrom(...FRAME_PARTS), aPull, aRatio, (any, part, pull, ratio) => {
        const box = refittedFrame(any, ratio);
        const now = pulledFrame(box, part, pull, ratio);
        inside(now);
        expect(ratioOf(now)).toBeCloseTo(ratio, 6);
        if (part.includes('e')) expect(now[0]).toBeCloseTo(box[0], 9);
        if (part.includes('w')) expect(now[2]).toBeCloseTo(box[2], 9);
        if (part.includes('s')) expect(now[1]).toBeCloseTo(box[1], 9);
        if (part.includes('n')) expect(now[3]).toBeCloseTo(box[3], 9);
      }),
    );
  });

  it('put into another format keeps its middle and its size where there is room', () => {
    const wide = refittedFrame([0.3, 0.3, 0.7, 0.7], 2);
    expect(ratioOf(wide)).toBeCloseTo(2, 9);
    expect((wide[0] + wide[2]) / 2).toBeCloseTo(0.5, 9);
    expect((wide[2] - wide[0]) * (wide[3] - wide[1])).toBeCloseTo(0.16, 9);
    fc.assert(
      fc.property(aBox, aRatio, (box, ratio) => {
        const now = refittedFrame(box, ratio);
        inside(now);
        expect(ratioOf(now)).toBeCloseTo(ratio, 6);
      }),
    );
  });
});
