/** Closing a hole from around it: what is known comes back, nothing else changes, and the search finds what looking finds. */
import { describe, expect, it } from 'vitest';
import { randomBelow } from '#server/core/doubt/random.ts';
import { fillHole } from '#server/core/plan/rearrange/fill-hole.ts';
import type { FillLevel } from '#server/core/plan/rearrange/fill-levels.ts';
import {
  improveMatches,
  RADIUS,
  startMatches,
  weighMatches,
  wholePatches,
} from '#server/core/plan/rearrange/nearest-patches.ts';
import { masked, type Painter, painted } from './painted.ts';

const [WIDTH, HEIGHT] = [160, 120];
const disc = masked(WIDTH, HEIGHT, (x, y) => Math.hypot(x - 80, y - 60) < 20);
const MOTIF: readonly [number, number, number] = [200, 30, 30];

/** Fills where a red disc stood, and says how far each filled channel is from the truth. */
function apart(truth: Painter): { apart: number[]; untouched: boolean } {
  const whole = painted(WIDTH, HEIGHT, truth);
  const covered = painted(WIDTH, HEIGHT, (x, y) => (disc[y * WIDTH + x] ? MOTIF : truth(x, y)));
  const { raster } = fillHole(covered, disc);
  const away: number[] = [];
  let untouched = true;
  raster.samples.forEach((code, at) => {
    const off = Math.abs(code - (whole.samples[at] as number));
    if (disc[Math.floor(at / 3)]) away.push(off);
    else if (off > 0) untouched = false;
  });
  return { apart: away.sort((one, other) => one - other), untouched };
}

const share = (sorted: readonly number[], part: number) =>
  sorted[Math.floor((sorted.length - 1) * part)] as number;

describe('a hole', () => {
  it('in one colour is closed with it', () => {
    const { apart: off, untouched } = apart(() => [90, 120, 150]);
    expect(off.at(-1)).toBeLessThanOrEqual(1);
    expect(untouched).toBe(true);
  });

  it('in a sky that grows paler downwards shows no step', () => {
    const { apart: off } = apart((_, y) => [100 + y / 2, 120 + y / 2, 160 + y / 2]);
    expect(off.at(-1)).toBeLessThanOrEqual(6);
  });

  it('across a horizon keeps it straight', () => {
    const { apart: off } = apart((_, y) => (y < 60 ? [170, 190, 210] : [70, 90, 50]));
    expect(share(off, 0.95)).toBeLessThanOrEqual(12);
  });

  it('across stripes goes on with them', () => {
    const { apart: off } = apart((x) => (Math.floor(x / 8) % 2 === 0 ? [60, 70, 60] : [140, 150, 120]));
    expect(share(off, 0.9)).toBeLessThanOrEqual(20);
  });

  it('is closed in the same way each time', () => {
    const rough: Painter = (x, y) => [(x * 37 + y * 91) % 256, (x * 11 + y * 7) % 256, (x * y) % 256];
    const picture = painted(WIDTH, HEIGHT, rough);
    expect(fillHole(picture, disc).raster.samples).toEqual(fillHole(picture, disc).raster.samples);
  });

  it('that is the whole picture, or nothing, leaves it as it is', () => {
    const picture = painted(40, 30, (x) => [x, x, x]);
    expect(fillHole(picture, new Uint8Array(1200)).raster.samples).toEqual(picture.samples);
    expect(fillHole(picture, new Uint8Array(1200).fill(1)).raster.samples).toEqual(picture.samples);
  });

  it('says where its colours came from: never from the hole itself', () => {
    const picture = painted(WIDTH, HEIGHT, (x, y) => [(x * 3) % 256, (y * 5) % 256, (x + y) % 256]);
    const { from } = fillHole(picture, disc);
    from.forEach((source, at) => {
      expect(disc[source]).toBe(0);
      if (!disc[at]) expect(source).toBe(at);
    });
  });
});

describe('the nearest patches', () => {
  it('are as near as looking at every one finds them, for nine in ten within a tenth (Barnes et al. 2009)', () => {
    const random = randomBelow(7);
    const [columns, rows] = [44, 36];
    const level: FillLevel = {
      columns,
      rows,
      colours: Float32Array.from({ length: columns * rows * 3 }, (_, at) => {
        const [x, y] = [Math.floor(at / 3) % columns, Math.floor(at / 3 / columns)];
        return 128 + 60 * Math.sin(x / 3) + 40 * Math.cos(y / 4) + random(20);
      }),
      hole: masked(columns, rows, (x, y) => x > 18 && x < 26 && y > 14 && y < 22),
    };
    const search = { level, whole: wholePatches(level), random };
    const matches = startMatches(search, null);
    for (let turn = 0; turn < 24; turn++) improveMatches(search, matches, turn % 2 === 0);
    weighMatches(level, matches);
    const found = Float32Array.from(matches.cost);
    const best = found.slice();
    [...search.whole.keys()]
      .filter((at) => search.whole[at])
      .forEach((candidate) => {
        matches.from.fill(candidate);
        weighMatches(level, matches);
        matches.cost.forEach((cost, at) => {
          best[at] = Math.min(best[at] as number, cost);
        });
      });
    const near = [...found].filter((cost, at) => cost <= 1.1 * (best[at] as number)).length;
    expect(near / found.length).toBeGreaterThanOrEqual(0.9);
  });

  it('lie whole in the picture and outside the hole', () => {
    const hole = masked(30, 30, (x, y) => x > 12 && x < 18 && y > 12 && y < 18);
    const whole = wholePatches({ columns: 30, rows: 30, colours: new Float32Array(2700), hole });
    whole.forEach((is, at) => {
      const [x, y] = [at % 30, Math.floor(at / 30)];
      let clear = x >= RADIUS && y >= RADIUS && x < 30 - RADIUS && y < 30 - RADIUS;
      for (let dy = -RADIUS; clear && dy <= RADIUS; dy++) {
        for (let dx = -RADIUS; dx <= RADIUS; dx++) if (hole[(y + dy) * 30 + x + dx]) clear = false;
      }
      expect(is).toBe(clear ? 1 : 0);
    });
  });
});
