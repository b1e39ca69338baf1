/** Random planes and patches for the tests of editing outlines: ridges, blobs, and patches round random middles. */
import fc from 'fast-check';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { type Grid, gridOf } from '#server/core/planes/edit/grid.ts';
import type { Ring } from '#server/core/planes/edit/layers.ts';
import type { Patches } from '#server/core/planes/edit/patches.ts';

export const GRID: Grid = gridOf(150, 100);

export const WHOLE: Ring = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

const share = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** What lies below a ridge of random heights round a middle height. */
export const ridge = (height: number) =>
  fc.array(share(height - 0.12, height + 0.12), { minLength: 3, maxLength: 14 }).map((heights): Ring => {
    const line = heights.map((y, at): FractionPoint => [at / (heights.length - 1), y]);
    return [...line, [1, 1], [0, 1]];
  });

/** A blob that sees all of itself from its middle, so that it never crosses itself. */
export const blob = fc
  .record({
    middle: fc.tuple(share(0.2, 0.8), share(0.2, 0.8)),
    radii: fc.array(share(0.06, 0.3), { minLength: 5, maxLength: 16 }),
  })
  .map(
    ({ middle: [x, y], radii }): Ring =>
      radii.map((radius, at): FractionPoint => {
        const angle = (2 * Math.PI * at) / radii.length;
        const held = (value: number) => Math.min(1, Math.max(0, value));
        return [held(x + radius * Math.cos(angle)), held(y + radius * Math.sin(angle))];
      }),
  );

/** Sky over all of it, two ridges and something round before them. */
export const planes = fc
  .tuple(ridge(0.35), ridge(0.65), blob)
  .map(([far, near, round]): Ring[] => [WHOLE, far, near, round]);

/** Patches of about 7 cells a side, uneven as real ones are. */
export const patches = fc
  .record({ seed: fc.integer({ min: 1, max: 2 ** 31 - 2 }), side: fc.integer({ min: 5, max: 11 }) })
  .map(({ seed, side }): Patches => {
    const { columns, rows } = GRID;
    const [across, down] = [Math.ceil(columns / side), Math.ceil(rows / side)];
    let state = seed;
    const next = () => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return state / 2 ** 32;
    };
    const middles = Array.from({ length: across * down }, (_, at) => [
      ((at % across) + next()) * side,
      (Math.floor(at / across) + next()) * side,
    ]);
    // The nearest middle lies in a square nearby.
    const around = [-1, 0, 1].flatMap((v) => [-1, 0, 1].map((u) => [u, v] as const));
    const labels = Int32Array.from({ length: columns * rows }, (_, cell) => {
      const [x, y] = [cell % columns, Math.floor(cell / columns)];
      let [best, least] = [0, Number.POSITIVE_INFINITY];
      for (const [u, v] of around) {
        const [column, row] = [Math.floor(x / side) + u, Math.floor(y / side) + v];
        if (column < 0 || row < 0 || column >= across || row >= down) continue;
        const [mx = 0, my = 0] = middles[row * across + column] ?? [];
        const off = (x - mx) ** 2 + (y - my) ** 2;
        if (off < least) [best, least] = [row * across + column, off];
      }
      return best;
    });
    return {
      grid: GRID,
      labels,
      colours: Float32Array.from({ length: middles.length * 3 }, () => 100 * next()),
    };
  });

/** The patches that a stroke from one place to another runs over. */
export function under({ labels }: Patches, from: FractionPoint, to: FractionPoint): Set<number> {
  const picked = new Set<number>();
  const { columns, rows } = GRID;
  for (let step = 0; step <= 200; step++) {
    const along = step / 200;
    const x = Math.min(columns - 1, Math.floor((from[0] + along * (to[0] - from[0])) * columns));
    const y = Math.min(rows - 1, Math.floor((from[1] + along * (to[1] - from[1])) * rows));
    picked.add(labels[y * columns + x] as number);
  }
  return picked;
}

export const place = fc.tuple(share(0, 0.999), share(0, 0.999));
