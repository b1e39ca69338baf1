/** Numbers on a sheet: none over another, all inside, each near what it is about. Properties over random fields. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { placeSigns } from '#server/core/sheet/place-signs.ts';

const FIELD = { width: 340, height: 250, radius: 9.5 };
const wanted = fc.array(
  fc.record({
    x: fc.double({ min: -50, max: 400, noNaN: true }),
    y: fc.double({ min: -50, max: 300, noNaN: true }),
  }),
  { maxLength: 12 },
);

describe('signs on a painting', () => {
  test('never lie over one another and never leave the picture', () => {
    fc.assert(
      fc.property(wanted, (places) => {
        const signs = placeSigns(places, FIELD);
        expect(signs).toHaveLength(places.length);
        signs.forEach((one, at) => {
          expect(one.x).toBeGreaterThanOrEqual(FIELD.radius - 1e-6);
          expect(one.x).toBeLessThanOrEqual(FIELD.width - FIELD.radius + 1e-6);
          expect(one.y).toBeGreaterThanOrEqual(FIELD.radius - 1e-6);
          expect(one.y).toBeLessThanOrEqual(FIELD.height - FIELD.radius + 1e-6);
          for (const two of signs.slice(at + 1))
            expect(Math.hypot(one.x - two.x, one.y - two.y)).toBeGreaterThanOrEqual(2 * FIELD.radius - 1e-6);
        });
      }),
    );
  });

  test('that are far apart inside the picture stay where they are wanted', () => {
    const places = [
      { x: 60, y: 60 },
      { x: 200, y: 60 },
      { x: 100, y: 200 },
    ];
    placeSigns(places, FIELD).forEach((sign, at) => {
      expect(sign).toMatchObject(places[at] ?? {});
      expect(sign.moved).toBe(0);
    });
  });

  test('on one and the same spot crowd around it no farther than twelve of their size need', () => {
    const signs = placeSigns(
      Array.from({ length: 12 }, () => ({ x: 170, y: 125 })),
      FIELD,
    );
    // Twelve discs packed in rings: two rings around the first one.
    for (const { moved } of signs) expect(moved).toBeLessThanOrEqual(5 * FIELD.radius);
  });

  test('that no picture could hold are given places inside all the same', () => {
    const signs = placeSigns(
      Array.from({ length: 9 }, () => ({ x: 5, y: 5 })),
      { width: 30, height: 12, radius: 9.5 },
    );
    for (const { x, y } of signs) {
      expect(x).toBeGreaterThanOrEqual(0);
      expect(x).toBeLessThanOrEqual(30);
      expect(y).toBe(6);
    }
  });
});
