/** The shared view: what is under the hand stays there, edges are held, and points go there and back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  copyFor,
  panned,
  placementOf,
  toFraction,
  toScreen,
  WHOLE,
  ZOOM_MOST,
  zoomedAt,
} from '#app/_easel/view-transform.ts';

const size = fc.record({
  width: fc.integer({ min: 50, max: 5000 }),
  height: fc.integer({ min: 50, max: 5000 }),
});
const view = fc.record({
  middleX: fc.double({ min: 0, max: 1, noNaN: true }),
  middleY: fc.double({ min: 0, max: 1, noNaN: true }),
  zoom: fc.double({ min: 1, max: ZOOM_MOST, noNaN: true }),
});
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('the view of the easel', () => {
  test('the whole picture fits its window, touches two of its sides and stands in the middle', () => {
    fc.assert(
      fc.property(size, size, (window, picture) => {
        const { left, top, width, height } = placementOf(WHOLE, window, picture);
        expect(Math.max(width / window.width, height / window.height)).toBeCloseTo(1, 9);
        expect(left + width / 2).toBeCloseTo(window.width / 2, 6);
        expect(top + height / 2).toBeCloseTo(window.height / 2, 6);
        expect(width / height).toBeCloseTo(picture.width / picture.height, 6);
      }),
    );
  });

  test('a point of the screen and its place in the picture lead to each other', () => {
    fc.assert(
      fc.property(view, size, size, share, share, (seen, window, picture, x, y) => {
        const placement = placementOf(seen, window, picture);
        const there = toScreen(placement, [x, y]);
        const [backX, backY] = toFraction(placement, there.x, there.y);
        expect(backX).toBeCloseTo(x, 9);
        expect(backY).toBeCloseTo(y, 9);
      }),
    );
  });

  test('zooming in keeps what is under the hand under the hand, when the picture already fills the window', () => {
    const [window, picture] = [
      { width: 800, height: 600 },
      { width: 1600, height: 1200 },
    ];
    fc.assert(
      fc.property(share, share, fc.double({ min: 1, max: 4, noNaN: true }), (x, y, factor) => {
        const before = { middleX: 0.5, middleY: 0.5, zoom: 2 };
        const hand = { x: x * window.width, y: y * window.height };
        const under = toFraction(placementOf(before, window, picture), hand.x, hand.y);
        const after = zoomedAt(before, window, picture, { factor, ...hand });
        const now = toFraction(placementOf(after, window, picture), hand.x, hand.y);
        expect(now[0]).toBeCloseTo(under[0], 9);
        expect(now[1]).toBeCloseTo(under[1], 9);
      }),
    );
  });

  test('a picture larger than its window never leaves empty space beside it, however it is panned', () => {
    fc.assert(
      fc.property(view, size, size, fc.integer({ min: -9000, max: 9000 }), (seen, window, picture, by) => {
        const { left, width } = placementOf(panned(seen, window, picture, by, by), window, picture);
        if (width > window.width) {
          expect(left).toBeLessThanOrEqual(1e-6);
          expect(left + width).toBeGreaterThanOrEqual(window.width - 1e-6);
        }
      }),
    );
  });

  test('zoom stays between the whole picture and its most', () => {
    const window = { width: 300, height: 300 };
    const at = { x: 10, y: 10 };
    expect(zoomedAt(WHOLE, window, window, { factor: 0.01, ...at }).zoom).toBe(1);
    expect(zoomedAt(WHOLE, window, window, { factor: 1e6, ...at }).zoom).toBe(ZOOM_MOST);
  });

  test('two pictures of different shape show the same place in their middle', () => {
    const seen = { middleX: 0.4, middleY: 0.6, zoom: 5 };
    const window = { width: 500, height: 400 };
    for (const picture of [
      { width: 3000, height: 2000 },
      { width: 2000, height: 2100 },
    ]) {
      const [x, y] = toFraction(placementOf(seen, window, picture), 250, 200);
      expect([x, y]).toEqual([expect.closeTo(0.4, 9), expect.closeTo(0.6, 9)]);
    }
  });

  test('the copy is the smallest that is sharp enough, else the largest', () => {
    const sizes = [640, 1280, 2560] as const;
    expect(copyFor(sizes, 300)).toBe(640);
    expect(copyFor(sizes, 900)).toBe(1280);
    expect(copyFor(sizes, 9000)).toBe(2560);
  });
});
