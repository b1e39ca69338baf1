/** What the hand moves on a photo, boxes drawn on cards, typed numbers, glare and clipping as shapes. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { overlayShapes } from '#app/_photo/overlay-shapes.ts';
import {
  boxBetween,
  movedPhoto,
  type PhotoPart,
  type PhotoParts,
  partUnder,
  STARTING_CORNERS,
  usualBox,
  withCorner,
} from '#app/_photo/photo-parts.ts';
import { lengthOf, percentOf } from '#app/_photo/typed-number.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';

const anywhere = fc.double({ min: -2, max: 2, noNaN: true });

describe('photo corrections under the hand', () => {
  test('one corner moves and three stay; two people at two corners keep both', () => {
    const parts: PhotoParts = { corners: STARTING_CORNERS, cards: [] };
    const mine = movedPhoto(parts, { kind: 'corner', at: 0 }, 0.02, 0.03).corners;
    const theirs = withCorner(STARTING_CORNERS, 2, [0.9, 0.9]);
    const both = withCorner(theirs, 0, mine?.[0] ?? [9, 9]);
    expect(both[0]).toEqual([expect.closeTo(0.08, 9), expect.closeTo(0.09, 9)]);
    expect(both[2]).toEqual([0.9, 0.9]);
  });

  test('a card never leaves the photo nor turns inside out, and the other cards stay', () => {
    const still = [0.1, 0.1, 0.2, 0.2] as [number, number, number, number];
    fc.assert(
      fc.property(anywhere, anywhere, (dx, dy) => {
        for (const kind of ['card', 'card-edge'] as const) {
          const parts: PhotoParts = { corners: null, cards: [still, [0.4, 0.4, 0.6, 0.6]] };
          const { cards } = movedPhoto(parts, { kind, at: 1 }, dx, dy);
          const [x0, y0, x1, y1] = cards[1] ?? [1, 1, 0, 0];
          expect(cards[0]).toEqual(still);
          expect(Math.min(x0, y0)).toBeGreaterThanOrEqual(0);
          expect(Math.max(x1, y1)).toBeLessThanOrEqual(1);
          expect(x1 - x0).toBeGreaterThan(0);
          expect(y1 - y0).toBeGreaterThan(0);
        }
      }),
    );
  });

  test('a box is drawn in any direction, stays on the photo, and a twitch draws none', () => {
    expect(boxBetween([0.5, 0.5], [0.3, 0.7])).toEqual([0.3, 0.5, 0.5, 0.7]);
    expect(boxBetween([0.9, 0.9], [1.4, 1.2])).toEqual([0.9, 0.9, 1, 1]);
    expect(boxBetween([0.5, 0.5], [0.505, 0.7])).toBeNull();
  });

  test('a box of usual size lies inside the photo wherever it was tapped', () => {
    for (const tapped of [
      [0, 0],
      [1, 1],
      [0.5, 0.99],
    ] as FractionPoint[]) {
      const [x0, y0, x1, y1] = usualBox(tapped);
      expect(Math.min(x0, y0)).toBeGreaterThanOrEqual(0);
      expect(Math.max(x1, y1)).toBeLessThanOrEqual(1);
      expect(x1 - x0).toBeCloseTo(y1 - y0, 9);
    }
  });
});

describe('what the hand takes', () => {
  const parts: PhotoParts = { corners: STARTING_CORNERS, cards: [[0.4, 0.4, 0.6, 0.6]] };
  const taken = (point: FractionPoint): PhotoPart | null =>
    partUnder(parts, {
      away: ([x, y]) => Math.hypot(x - point[0], y - point[1]) * 500,
      reachPx: 12,
      point,
    });

  test('is the nearest corner, the edge of a card, or the card anywhere inside its box', () => {
    expect(taken([0.07, 0.05])).toEqual({ kind: 'corner', at: 0 });
    expect(taken([0.605, 0.595])).toEqual({ kind: 'card-edge', at: 0 });
    expect(taken([0.43, 0.57])).toEqual({ kind: 'card', at: 0 });
    expect(taken([0.3, 0.8])).toBeNull();
  });
});

describe('typed numbers', () => {
  test('have a comma or a point, and a percent sign or none', () => {
    expect(lengthOf(' 40,5 ')).toBe(40.5);
    expect(percentOf('18 %')).toBe(18);
    expect(percentOf('90.5%')).toBe(90.5);
  });

  test('are refused when they are none, zero or beyond what a card reflects', () => {
    expect([lengthOf(''), lengthOf('wide'), lengthOf('-3'), lengthOf('0')]).toEqual([null, null, null, null]);
    expect([percentOf('0'), percentOf('101'), percentOf('%')]).toEqual([null, null, null]);
  });
});

describe('glare and clipping as shapes', () => {
  test('cover the cells of their runs, cut where rows end', () => {
    // Rows of 4: two free, then five of glare over the row's end, one free, one crushed, three free.
    const shapes = overlayShapes({ columns: 4, rows: 3, runs: [0, 2, 3, 5, 0, 1, 2, 1, 0, 3] });
    expect(shapes.glare.path).toBe('M2 0h2v1h-2zM0 1h3v1h-3z');
    expect(shapes.glare.share).toBeCloseTo(5 / 12, 9);
    expect(shapes.crushed.path).toBe('M0 2h1v1h-1z');
    expect(shapes.blown).toEqual({ path: '', share: 0 });
  });
});
