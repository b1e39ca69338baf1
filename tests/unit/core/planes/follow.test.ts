/**
 * Following a ridge: the line between two clicks keeps to the strongest edge, on rendered landscapes whose ridges are
 * known, and costs no more than any other line (checked against a slow method on small grids).
 */
import { describe, expect, test } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { type EdgeCosts, edgeCosts, MOST_COST } from '#server/core/planes/follow/edge-cost.ts';
import { FollowTree, WAY_COST } from '#server/core/planes/follow/follow-tree.ts';
import parameters from '../../../fixtures/scenes/parameters.json' with { type: 'json' };
import { encodeScene, renderScene, type SceneParameters } from '../../../fixtures/scenes/render-scene.ts';

/** Half a per cent of the width: finer than the band that measuring leaves out along a ridge. */
const NEAR = 0.005;

/** Scenes whose planes are nearly of one colour and roughly textured: there the hand must click more often. */
const CLOSE = ['scene 1', 'scene 4', 'scene 7', 'scene 10'];

const scenes = (parameters as { scenes: SceneParameters[] }).scenes;

/** The same scene, smaller. */
function small(scene: SceneParameters): SceneParameters {
  return { ...scene, widthPx: 640, heightPx: Math.round((640 * scene.heightPx) / scene.widthPx) };
}

/** Rows where the label changes from one plane to the next, by column: the true ridge. */
function ridgeOf(labels: Uint8Array, columns: number, rows: number, near: number): (number | null)[] {
  return Array.from({ length: columns }, (_, x) => {
    for (let y = 1; y < rows; y++) {
      const [above, here] = [labels[(y - 1) * columns + x], labels[y * columns + x]];
      if (here === near && above === near - 1) return y;
    }
    return null;
  });
}

describe('a line between two clicks on a ridge', () => {
  test.each(scenes.map((scene) => ({ name: scene.name, scene })))('keeps to it in $name', ({ scene }) => {
    const rendered = renderScene(small(scene));
    const { widthPx, heightPx, labels } = rendered;
    const costs = edgeCosts(encodedRaster(widthPx, heightPx, encodeScene(rendered)));
    for (let near = 1; near < rendered.names.length; near++) {
      const ridge = ridgeOf(labels, widthPx, heightPx, near);
      const columns = ridge.flatMap((row, x) => (row === null ? [] : [x]));
      const [first, last] = [columns[0] ?? 0, columns.at(-1) ?? 0];
      // Only where the two planes meet in one piece is there one ridge to follow.
      if (columns.length !== last - first + 1 || columns.length < widthPx / 4) continue;
      // Five clicks a ridge, as a hand would set them; more where the line is seen to stray.
      const clicks = CLOSE.includes(scene.name) ? 9 : 5;
      const stops = Array.from({ length: clicks }, (_, at) =>
        Math.round(first + (at * (last - first)) / (clicks - 1)),
      );
      const line = stops.slice(1).flatMap((x, at) => {
        const before = stops[at] ?? first;
        const place = (column: number): [number, number] => [
          (column + 0.5) / widthPx,
          (ridge[column] ?? 0) / heightPx,
        ];
        return new FollowTree(costs, place(before)).lineTo(place(x));
      });
      const off = line.map(([x, y]) => {
        const row = ridge[Math.min(widthPx - 1, Math.floor(x * widthPx))] ?? null;
        return row === null ? 0 : Math.abs(y * heightPx - row) / widthPx;
      });
      off.sort((p, q) => p - q);
      const { half, most } = CLOSE.includes(scene.name)
        ? { half: 0.02, most: 0.04 }
        : { half: NEAR, most: NEAR };
      expect(off[Math.floor(off.length * 0.5)], `${rendered.names[near]}`).toBeLessThan(half);
      expect(off[Math.floor(off.length * 0.9)], `${rendered.names[near]}`).toBeLessThan(most);
    }
  });
});

describe('the least cost', () => {
  const grid = (columns: number, rows: number, seed: number): EdgeCosts => {
    let state = seed;
    const next = () => {
      state = (Math.imul(state, 1103515245) + 12345) & 0x7fffffff;
      return state / 0x7fffffff;
    };
    const costs = Uint8Array.from({ length: columns * rows }, () => 1 + Math.floor(next() * (MOST_COST - 1)));
    return { columns, rows, costs };
  };
  /** Bellman 1958, Ford 1956: every cell relaxed until nothing changes. */
  const slowest = ({ columns, rows, costs }: EdgeCosts, start: number): number[] => {
    const best = new Array<number>(columns * rows).fill(Number.POSITIVE_INFINITY);
    best[start] = 0;
    for (let changed = true; changed; ) {
      changed = false;
      for (let cell = 0; cell < best.length; cell++) {
        for (let other = 0; other < best.length; other++) {
          const dx = Math.abs((cell % columns) - (other % columns));
          const dy = Math.abs(Math.floor(cell / columns) - Math.floor(other / columns));
          if (Math.max(dx, dy) !== 1) continue;
          const total = (best[other] ?? 0) + (dx + dy === 2 ? 7 : 5) * ((costs[cell] ?? 0) + WAY_COST);
          if (total >= (best[cell] ?? 0)) continue;
          best[cell] = total;
          changed = true;
        }
      }
    }
    return best;
  };
  const costOf = ({ columns, rows, costs }: EdgeCosts, line: readonly (readonly [number, number])[]) => {
    const cells = line.map(([x, y]) => [Math.floor(x * columns), Math.floor(y * rows)] as const);
    return cells.slice(1).reduce((sum, [x, y], at) => {
      const [px, py] = cells[at] ?? [x, y];
      const step = Math.abs(x - px) + Math.abs(y - py);
      return sum + (step === 2 ? 7 : step * 5) * ((costs[y * columns + x] ?? 0) + WAY_COST);
    }, 0);
  };

  test.each([1, 2, 3, 4])('is what the line costs, grid %i', (seed) => {
    const costs = grid(9, 8, seed);
    const [from, to]: [number, number][] = [
      [0.5 / 9, 0.5 / 8],
      [8.5 / 9, 7.5 / 8],
    ];
    if (!from || !to) throw new Error('Two ends.');
    const tree = new FollowTree(costs, from);
    const least = slowest(costs, 0);
    expect(costOf(costs, tree.lineTo(to))).toBe(least.at(-1));
    // Other places from the same stop, nearer and farther, in any order.
    for (const cell of [40, 3, 70, 11, 3]) {
      const goal: [number, number] = [((cell % 9) + 0.5) / 9, (Math.floor(cell / 9) + 0.5) / 8];
      expect(tree.costTo(goal)).toBe(least[cell]);
      expect(costOf(costs, tree.lineTo(goal))).toBe(least[cell]);
    }
  });
});

describe('even ground', () => {
  const grey = encodedRaster(80, 60, new Uint8Array(80 * 60 * 3).fill(128));

  test('is crossed straight', () => {
    const line = new FollowTree(edgeCosts(grey), [0.1, 0.5]).lineTo([0.9, 0.5]);
    for (const [, y] of line) expect(Math.abs(y - 0.5)).toBeLessThan(0.02);
  });

  test('a line from a place to itself is that place twice', () => {
    expect(new FollowTree(edgeCosts(grey), [0.4, 0.3]).lineTo([0.4, 0.3])).toEqual([
      [0.4, 0.3],
      [0.4, 0.3],
    ]);
  });
});
