/**
 * Adding patches to planes and taking them away: whatever the planes, patches and strokes, outlines stay valid, nothing
 * falls bare, and only what lies under the hand changes. Examples with known outcomes beside the random ones.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { gridOf, widened } from '#server/core/planes/edit/grid.ts';
import { layersOf, type Ring } from '#server/core/planes/edit/layers.ts';
import type { Patches, Stroke } from '#server/core/planes/edit/patches.ts';
import { paintedOver } from '#server/core/planes/edit/regions.ts';
import { drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';
import { GRID, patches, place, planes, under, WHOLE } from './some-planes.ts';

const RUNS = { numRuns: 60 };
/** A line may be this many cells off where it was tidied. */
const TIDY = 3;

const strokes = fc.record({
  rings: planes,
  grounds: patches,
  from: place,
  to: place,
  plane: fc.integer({ min: 0, max: 3 }),
  way: fc.constantFrom<Stroke['way']>('add', 'away'),
});

function edited(rings: readonly Ring[], grounds: Patches, stroke: Stroke): Ring[] | null {
  const outcome = paintedOver(rings, grounds, stroke);
  return 'trouble' in outcome ? null : rings.map((ring, at) => outcome.rings.get(at) ?? ring);
}

const seenOf = (rings: readonly Ring[], times = 1) =>
  drawLabelMap(GRID.columns * times, GRID.rows * times, rings);

describe('whatever is painted over', () => {
  test('every outline stays one that core accepts', () => {
    fc.assert(
      fc.property(strokes, ({ rings, grounds, from, to, plane, way }) => {
        const after = edited(rings, grounds, { plane, way, picked: under(grounds, from, to) });
        for (const ring of after ?? []) expect(() => checkOutline('it', ring)).not.toThrow();
      }),
      RUNS,
    );
  });

  test('no part of a picture that belonged to a plane falls bare, looked at three times as closely', () => {
    fc.assert(
      fc.property(strokes, ({ rings, grounds, from, to, plane, way }) => {
        const after = edited(rings, grounds, { plane, way, picked: under(grounds, from, to) });
        if (after) expect(seenOf(after, 3).includes(NO_PLANE)).toBe(false);
      }),
      RUNS,
    );
  });

  test('elsewhere no more changes than what the stroke cut off, and that is less than the stroke', () => {
    fc.assert(
      fc.property(strokes, ({ rings, grounds, from, to, plane, way }) => {
        const picked = under(grounds, from, to);
        const after = edited(rings, grounds, { plane, way, picked });
        if (!after) return;
        const [was, is] = [seenOf(rings), seenOf(after)];
        const asked = grounds.labels.map((patch) => (picked.has(patch) ? 1 : 0));
        const near = widened(Uint8Array.from(asked), GRID, TIDY);
        const elsewhere = was.filter((label, cell) => near[cell] === 0 && label !== is[cell]).length;
        expect(elsewhere).toBeLessThanOrEqual(asked.filter((each) => each === 1).length);
      }),
      RUNS,
    );
  });

  test('a plane grows when it is added to and shrinks when it is taken from, never the other way', () => {
    fc.assert(
      fc.property(strokes, ({ rings, grounds, from, to, plane, way }) => {
        const after = edited(rings, grounds, { plane, way, picked: under(grounds, from, to) });
        if (!after) return;
        const shows = (of: readonly Ring[]) => seenOf(of).filter((label) => label === plane).length;
        const more = shows(after) - shows(rings);
        // Tidying may give back a few cells along the border.
        if (way === 'add') expect(more).toBeGreaterThan(-25);
        else expect(more).toBeLessThan(25);
      }),
      RUNS,
    );
  });

  test('points of outlines far from the hand stay exactly where they were', () => {
    fc.assert(
      fc.property(strokes, ({ rings, grounds, from, to, plane, way }) => {
        const after = edited(rings, grounds, { plane, way, picked: under(grounds, from, to) });
        if (!after) return;
        const [was, is] = [seenOf(rings), seenOf(after)];
        const moved = widened(
          Uint8Array.from(was, (label, cell) => (label === is[cell] ? 0 : 1)),
          GRID,
          12,
        );
        const still = ([x, y]: readonly [number, number]) => {
          const column = Math.min(GRID.columns - 1, Math.floor(x * GRID.columns));
          return moved[Math.min(GRID.rows - 1, Math.floor(y * GRID.rows)) * GRID.columns + column] === 0;
        };
        let [kept, all] = [0, 0];
        rings.forEach((ring, at) => {
          for (const point of ring.filter(still)) {
            all++;
            if (after[at]?.some(([x, y]) => Math.hypot(x - point[0], y - point[1]) < 1e-9)) kept++;
          }
        });
        // A spike thinner than a cell may be lost; all else stays.
        expect(all - kept).toBeLessThanOrEqual(Math.ceil(0.12 * all));
      }),
      RUNS,
    );
  });
});

/** Square patches of ten cells; numbers run row by row. */
const SQUARES: Patches = (() => {
  const grid = gridOf(200, 100);
  const labels = Int32Array.from({ length: 200 * 100 }, (_, cell) => {
    return Math.floor((cell % 200) / 10) + 20 * Math.floor(cell / 200 / 10);
  });
  return { grid, labels, colours: new Float32Array(3 * 200) };
})();
const at = (column: number, row: number) => column + 20 * row;
const HILL: Ring = [
  [0, 0.5],
  [1, 0.5],
  [1, 1],
  [0, 1],
];
const MEADOW: Ring = [
  [0, 0.8],
  [1, 0.8],
  [1, 1],
  [0, 1],
];
const LAND = [WHOLE, HILL, MEADOW];

function changedTo(rings: readonly (Ring | null)[], stroke: Stroke): number[] {
  const outcome = paintedOver(rings, SQUARES, stroke);
  if ('trouble' in outcome) throw new Error(outcome.trouble);
  const { seen } = layersOf(
    rings.map((ring, plane) => outcome.rings.get(plane) ?? ring),
    SQUARES.grid,
  );
  // The middle of each square tells what it belongs to now.
  return Array.from({ length: 200 }, (_, square) => {
    return seen[(Math.floor(square / 20) * 10 + 5) * 200 + (square % 20) * 10 + 5] as number;
  });
}

describe('a plane', () => {
  test('takes from a farther one what is added to it', () => {
    const squares = changedTo(LAND, { plane: 1, way: 'add', picked: new Set([at(4, 4), at(5, 4)]) });
    expect([squares[at(4, 4)], squares[at(5, 4)], squares[at(6, 4)]]).toEqual([1, 1, 0]);
  });

  test('takes from a nearer one what is added to it', () => {
    const squares = changedTo(LAND, { plane: 0, way: 'add', picked: new Set([at(4, 5), at(5, 5)]) });
    expect([squares[at(4, 5)], squares[at(5, 5)], squares[at(6, 5)]]).toEqual([0, 0, 1]);
  });

  test('gives what is taken from it to the plane beside it, farther or nearer', () => {
    const up = changedTo(LAND, { plane: 1, way: 'away', picked: new Set([at(4, 5)]) });
    expect(up[at(4, 5)]).toBe(0);
    const down = changedTo(LAND, { plane: 1, way: 'away', picked: new Set([at(4, 7)]) });
    expect(down[at(4, 7)]).toBe(2);
  });

  test.each([
    ['sky', 0, 0],
    ['meadow', 50, 2],
  ])('gives a patch between two others to the one that it is like: %s', (_, lightness, host) => {
    const strip = [WHOLE, HILL, HILL.map(([x, y]): [number, number] => [x, y === 0.5 ? 0.6 : y])];
    const colours = new Float32Array(3 * 200);
    for (let square = 0; square < 200; square++) colours[3 * square] = square < 100 ? 0 : 50;
    colours[3 * at(4, 5)] = lightness;
    const outcome = paintedOver(
      strip,
      { ...SQUARES, colours },
      { plane: 1, way: 'away', picked: new Set([at(4, 5)]) },
    );
    if ('trouble' in outcome) throw new Error(outcome.trouble);
    const { seen } = layersOf(
      strip.map((ring, plane) => outcome.rings.get(plane) ?? ring),
      SQUARES.grid,
    );
    expect(seen[55 * 200 + 45]).toBe(host);
  });

  test('may begin where it had no outline at all', () => {
    const squares = changedTo([WHOLE, null, MEADOW], {
      plane: 1,
      way: 'add',
      picked: new Set([at(4, 5), at(5, 5)]),
    });
    expect([squares[at(4, 5)], squares[at(5, 5)], squares[at(6, 5)]]).toEqual([1, 1, 0]);
  });
});

describe('nothing is done, and it is said why,', () => {
  const trouble = (stroke: Stroke) => paintedOver(LAND, SQUARES, stroke);
  test('when a patch hangs on nothing of the plane', () => {
    expect(trouble({ plane: 2, way: 'add', picked: new Set([at(9, 6)]) })).toEqual({
      trouble: 'apart',
      plane: 2,
    });
  });

  test('when a patch lies in the middle of another plane', () => {
    expect(trouble({ plane: 0, way: 'add', picked: new Set([at(9, 6)]) })).toEqual({
      trouble: 'inside',
      plane: 0,
    });
  });

  test('when a patch is the plane’s already', () => {
    expect(trouble({ plane: 0, way: 'add', picked: new Set([at(9, 1)]) })).toEqual({
      trouble: 'nothing',
      plane: 0,
    });
  });

  test('when a plane would be gone', () => {
    const all = new Set(Array.from({ length: 60 }, (_, square) => 100 + square));
    expect(trouble({ plane: 0, way: 'add', picked: all })).toEqual({ trouble: 'swallows', plane: 1 });
  });
});
