/** Motifs lifted and laid on, ridges bent: what moves, what stays, and that the order of steps is safe. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendSources } from '#server/core/plan/rearrange/bend-ridge.ts';
import { checkMotif, checkPlaced, footOf } from '#server/core/plan/rearrange/check-motif.ts';
import { drawnLoop } from '#server/core/plan/rearrange/drawn-loop.ts';
import { rearranged } from '#server/core/plan/rearrange/rearrange.ts';
import { ridgeLine } from '#server/core/plan/rearrange/ridge-line.ts';
import { isProblem } from '#server/core/problem.ts';
import { aBend, aMotif, codeAt, painted, twoPlanes } from './painted.ts';

const GROUND = [110, 120, 130] as const;
/** A white tower, 20 by 40 pixels, its foot at (60, 120); its left half a little darker. */
const tower = painted(240, 160, (x, y) => {
  if (x < 50 || x >= 70 || y < 80 || y >= 120) return GROUND;
  return x < 60 ? [200, 200, 200] : [240, 240, 240];
});
const planes = twoPlanes(tower, 100);
const AROUND = [44 / 240, 74 / 160, 76 / 240, 120 / 160] as const;
const light = (picture: ReturnType<typeof painted>) => {
  let count = 0;
  for (let at = 0; at < picture.samples.length; at += 3) if ((picture.samples[at] as number) > 160) count++;
  return count;
};

describe('a photograph', () => {
  it('without steps is itself', () => {
    expect(rearranged(tower, planes, { motifs: [], bends: [] }).raster).toBe(tower);
  });

  it('whose motif stands where it was is itself, to the last bit', () => {
    const { raster, labels } = rearranged(tower, planes, { motifs: [aMotif(AROUND)], bends: [] });
    expect(raster.samples).toEqual(tower.samples);
    expect(labels).toEqual(planes.labels);
  });

  it('is never written to', () => {
    const before = tower.samples.slice();
    rearranged(tower, planes, { motifs: [aMotif(AROUND, { move: [0.3, 0] })], bends: [aBend()] });
    expect(tower.samples).toEqual(before);
  });
});

describe('a motif', () => {
  it('that was moved stands there, and its place is closed', () => {
    const { raster } = rearranged(tower, planes, { motifs: [aMotif(AROUND, { move: [0.5, 0] })], bends: [] });
    expect(codeAt(raster, 175, 100)).toEqual([200, 200, 200]);
    expect(codeAt(raster, 185, 100)).toEqual([240, 240, 240]);
    for (let x = 45; x < 75; x += 3) {
      for (const code of codeAt(raster, x, 100)) expect(code).toBeLessThan(140);
    }
    expect(codeAt(raster, 120, 20)).toEqual([...GROUND]);
  });

  it('that was mirrored has its sides changed over', () => {
    const motif = aMotif(AROUND, { move: [0.5, 0], mirrored: true });
    const { raster } = rearranged(tower, planes, { motifs: [motif], bends: [] });
    expect(codeAt(raster, 175, 100)).toEqual([240, 240, 240]);
    expect(codeAt(raster, 185, 100)).toEqual([200, 200, 200]);
  });

  it.each([0.5, 1.5, 2])('that was enlarged by %s grows about its foot by the square of it', (scale) => {
    const motif = aMotif(AROUND, { scale, move: [0.3, 0] });
    const { raster } = rearranged(tower, planes, { motifs: [motif], bends: [] });
    expect(light(raster) / (800 * scale ** 2)).toBeGreaterThan(0.95);
    expect(light(raster) / (800 * scale ** 2)).toBeLessThan(1.05);
    // The foot stays on its line.
    const x = 60 + 72;
    expect((codeAt(raster, x + 3, 117)[0] as number) > 180).toBe(true);
    expect((codeAt(raster, x + 3, 123)[0] as number) < 160).toBe(true);
  });

  it('of one plane alone leaves the rest of its loop where it is', () => {
    const map = {
      labels: planes.labels.map((_, at) => (at % 240 >= 60 && at % 240 < 70 ? 1 : 0)),
      planeIds: ['left', 'right'],
    };
    const motif = aMotif(AROUND, { move: [0.5, 0], planeId: 'right' });
    const { raster } = rearranged(tower, map, { motifs: [motif], bends: [] });
    expect(codeAt(raster, 185, 100)).toEqual([240, 240, 240]);
    expect(codeAt(raster, 175, 100)).toEqual([...GROUND]);
    expect(codeAt(raster, 54, 100)).toEqual([200, 200, 200]);
  });

  it('takes its planes along', () => {
    const map = {
      labels: planes.labels.map((_, at) => {
        const [x, y] = [at % 240, Math.floor(at / 240)];
        return x >= 50 && x < 70 && y >= 80 && y < 120 ? 1 : 0;
      }),
      planeIds: ['ground', 'tower'],
    };
    const motif = aMotif(AROUND, { move: [0.5, 0] });
    const { labels } = rearranged(tower, map, { motifs: [motif], bends: [] });
    expect(labels[100 * 240 + 180]).toBe(1);
    expect(labels[100 * 240 + 60]).toBe(0);
  });

  it('may stand anywhere in the order where nothing overlaps, and put off it is as if it were not there', () => {
    const one = aMotif(AROUND, { move: [0.5, 0] });
    const other = aMotif([0.7, 0.1, 0.8, 0.2], { move: [-0.2, 0], name: 'Other' });
    const both = rearranged(tower, planes, { motifs: [one, other], bends: [] });
    const turned = rearranged(tower, planes, { motifs: [other, one], bends: [] });
    expect(turned.raster.samples).toEqual(both.raster.samples);
  });
});

describe('a bent ridge', () => {
  const hills = painted(200, 160, (_, y) => (y < 80 ? [180, 190, 200] : [60, 80, 50]));
  const map = twoPlanes(hills, 80);
  const ridgeIn = (picture: ReturnType<typeof painted>, x: number) =>
    Array.from({ length: 160 }, (_, y) => y).find((y) => (codeAt(picture, x, y)[0] as number) < 120) ?? 160;

  it.each([0.1, -0.1])('goes up or down by what was asked where it is bent most (%s)', (lift) => {
    const { raster, labels } = rearranged(hills, map, { motifs: [], bends: [aBend({ lift })] });
    expect(Math.abs(ridgeIn(raster, 100) - (80 - lift * 160))).toBeLessThanOrEqual(1);
    expect(ridgeIn(raster, 30)).toBe(80);
    const top = Array.from({ length: 160 }, (_, y) => y).find((y) => labels[y * 200 + 100] === 1);
    expect(Math.abs((top ?? 0) - ridgeIn(raster, 100))).toBeLessThanOrEqual(1);
  });

  it('never folds a column over itself, and leaves the border of the picture filled', () => {
    const any = fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      reach: fc.double({ min: 0.02, max: 1, noNaN: true }),
      lift: fc.double({ min: -0.35, max: 0.35, noNaN: true }),
      height: fc.double({ min: 0.02, max: 0.98, noNaN: true }),
    });
    fc.assert(
      fc.property(any, ({ height, ...change }) => {
        const line: [number, number][] = [
          [0, height],
          [1, height],
        ];
        for (const source of bendSources(aBend({ ...change, line }), 24, 150)) {
          if (!source) continue;
          source.forEach((from, row) => {
            expect(from).toBeGreaterThanOrEqual(0);
            expect(from).toBeLessThanOrEqual(149);
            if (row > 0) expect(from).toBeGreaterThanOrEqual((source[row - 1] as number) - 1e-4);
          });
        }
      }),
      { numRuns: 200 },
    );
  });

  it('is the upper edge of the plane that it belongs to', () => {
    const line = ridgeLine([
      [0, 0.6],
      [0.5, 0.2],
      [1, 0.6],
      [1, 1],
      [0, 1],
    ]);
    for (const [x, y] of line) expect(Math.abs(y - (0.2 + 0.8 * Math.abs(x - 0.5)))).toBeLessThan(1e-6);
    expect(line.length).toBeGreaterThan(50);
  });
});

describe('what can’t be lifted', () => {
  const size = { width: 4000, height: 3000 };
  const sentence = (attempt: () => void): string => {
    try {
      attempt();
    } catch (thrown) {
      if (isProblem(thrown)) return thrown.message;
      throw thrown;
    }
    return '';
  };

  it.each([
    [
      'outside',
      [
        [0.9, 0.2],
        [1.2, 0.2],
        [1, 0.5],
      ],
      /leaves the picture on the right/,
    ],
    [
      'too small',
      [
        [0.5, 0.5],
        [0.505, 0.5],
        [0.505, 0.505],
        [0.5, 0.505],
      ],
      /6 by 5 pixels; at least 12/,
    ],
    [
      'crossing itself',
      [
        [0.2, 0.2],
        [0.6, 0.6],
        [0.6, 0.2],
        [0.2, 0.6],
      ],
      /crosses itself/,
    ],
    [
      'enclosing nothing',
      [
        [0.2, 0.2],
        [0.6, 0.2],
      ],
      /encloses nothing/,
    ],
  ] as [string, [number, number][], RegExp][])('is said with its reason: %s', (_, outline, says) => {
    expect(sentence(() => checkMotif(outline, size))).toMatch(says);
  });

  it('is nothing else', () => {
    expect(
      sentence(() =>
        checkMotif(
          [
            [0, 0],
            [1, 0],
            [1, 1],
            [0, 1],
          ],
          size,
        ),
      ),
    ).toBe('');
    expect(
      footOf([
        [0.2, 0.1],
        [0.4, 0.1],
        [0.3, 0.5],
      ])[1],
    ).toBe(0.5);
  });

  it('may not leave the picture either', () => {
    const outline = aMotif(AROUND).outline;
    expect(sentence(() => checkPlaced({ outline, move: [0.95, 0], scale: 1 }))).toMatch(/leave the picture/);
    expect(sentence(() => checkPlaced({ outline, move: [0.5, 0.1], scale: 1 }))).toBe('');
  });
});

describe('a loop drawn by hand', () => {
  it('keeps its shape with fewer points', () => {
    const drawn = Array.from({ length: 900 }, (_, at): [number, number] => {
      const turn = (at / 900) * 2 * Math.PI;
      return [0.5 + 0.2 * Math.cos(turn), 0.5 + 0.3 * Math.sin(turn)];
    });
    const loop = drawnLoop(drawn);
    expect(loop.length).toBeLessThan(200);
    for (const [x, y] of loop) {
      expect(Math.abs(((x - 0.5) / 0.2) ** 2 + ((y - 0.5) / 0.3) ** 2 - 1)).toBeLessThan(0.02);
    }
    expect(drawnLoop([])).toEqual([]);
  });
});
