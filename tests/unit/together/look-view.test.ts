/** A shared view: screens of any size show all of what is seen, in the middle. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mirroredFrame, plainFrame, squaredFrame } from '#app/_easel/frame.ts';
import { placementOf, toFraction } from '#app/_easel/view-transform.ts';
import { type Lens, seenThrough, viewOf } from '#app/_together/look-view.ts';
import { squareToCorners } from '#server/core/geometry/homography.ts';
import { invert3 } from '#server/core/geometry/matrix3.ts';

const side = fc.integer({ min: 120, max: 2400 });
const size = fc.record({ width: side, height: side });
const share = fc.double({ min: 0, max: 1, noNaN: true });
const view = fc.record({
  middleX: share,
  middleY: share,
  zoom: fc.double({ min: 1, max: 24, noNaN: true }),
});

/** What of the shown picture lies in the window, 0..1. */
function shownIn({ window, frame }: Lens, at: ReturnType<typeof viewOf>) {
  const placement = placementOf(at, window, frame.size);
  const [left, top] = toFraction(placement, 0, 0);
  const [right, bottom] = toFraction(placement, window.width, window.height);
  return { left, top, right, bottom };
}

describe('a shared view', () => {
  test('shows all that the other sees, on a window of any shape', () => {
    fc.assert(
      fc.property(view, size, size, size, fc.boolean(), (at, picture, one, two, mirrored) => {
        const frame = mirrored ? mirroredFrame(plainFrame(picture)) : plainFrame(picture);
        const seen = seenThrough(at, { window: one, frame });
        if (!seen) return;
        const here = { window: two, frame };
        const [x, y] = frame.shown(seen.middle);
        const { left, top, right, bottom } = shownIn(here, viewOf(seen, here));
        expect(left).toBeLessThanOrEqual(x - seen.width / 2 + 1e-9);
        expect(right).toBeGreaterThanOrEqual(x + seen.width / 2 - 1e-9);
        expect(top).toBeLessThanOrEqual(y - seen.height / 2 + 1e-9);
        expect(bottom).toBeGreaterThanOrEqual(y + seen.height / 2 - 1e-9);
      }),
    );
  });

  test('is the very same view on a window of the same size', () => {
    fc.assert(
      fc.property(view, size, size, (at, picture, window) => {
        const lens = { window, frame: plainFrame(picture) };
        const seen = seenThrough(at, lens);
        if (!seen) return;
        const before = shownIn(lens, at);
        const after = shownIn(lens, viewOf(seen, lens));
        for (const edge of ['left', 'top', 'right', 'bottom'] as const) {
          expect(after[edge]).toBeCloseTo(before[edge], 6);
        }
      }),
    );
  });

  test('the same spot of the picture stands in the middle, mirrored for one and not for the other', () => {
    const picture = { width: 1600, height: 1200 };
    const plain = { window: { width: 900, height: 700 }, frame: plainFrame(picture) };
    const mirrored = { window: { width: 390, height: 300 }, frame: mirroredFrame(plainFrame(picture)) };
    const seen = seenThrough({ middleX: 0.3, middleY: 0.6, zoom: 6 }, plain);
    if (!seen) throw new Error('The window has a size.');
    expect(seen.middle[0]).toBeCloseTo(0.3, 6);
    const there = viewOf(seen, mirrored);
    expect(there.middleX).toBeCloseTo(0.7, 6);
    expect(there.middleY).toBeCloseTo(0.6, 6);
  });

  test('travels through a squared painting in the original’s own coordinates', () => {
    const corners: Parameters<typeof squareToCorners>[0] = [
      [0.1, 0.08],
      [0.92, 0.12],
      [0.88, 0.95],
      [0.06, 0.9],
    ];
    const frame = squaredFrame({ width: 1300, height: 1000 }, invert3(squareToCorners(corners)));
    const seen = seenThrough(
      { middleX: 0.5, middleY: 0.5, zoom: 4 },
      { window: { width: 800, height: 600 }, frame },
    );
    if (!seen) throw new Error('The window has a size.');
    const [x, y] = frame.shown(seen.middle);
    expect(x).toBeCloseTo(0.5, 6);
    expect(y).toBeCloseTo(0.5, 6);
  });

  test('a window without a size sees nothing', () => {
    const frame = plainFrame({ width: 100, height: 100 });
    expect(
      seenThrough({ middleX: 0.5, middleY: 0.5, zoom: 1 }, { window: { width: 0, height: 0 }, frame }),
    ).toBeNull();
  });
});
