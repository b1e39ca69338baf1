import { describe, expect, test } from 'vitest';
import { encodedRaster } from '#server/core/image/raster.ts';
import { boundariesOf } from '#server/core/measure/edge.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { accentFacts } from '#server/core/readings/facts/accents.ts';
import { captureFactsOf } from '#server/core/readings/facts/capture-facts.ts';
import { focusEdgeFacts } from '#server/core/readings/facts/focus-edges.ts';
import type { LabGrid } from '#server/core/readings/facts/lab-grid.ts';
import { lightShadeFacts } from '#server/core/readings/facts/light-shade.ts';
import { patchesOf } from '#server/core/readings/facts/patches.ts';
import { lightnessEnds, valueMapOf } from '#server/core/readings/facts/value-map.ts';

type Colour = [L: number, a: number, b: number];

/** A grid drawn by a rule from x, y in 0..1 to a colour and a label. */
function draw(columns: number, rows: number, rule: (x: number, y: number) => [Colour, number]): LabGrid {
  const size = columns * rows;
  const [L, a, b] = [new Float32Array(size), new Float32Array(size), new Float32Array(size)];
  const labels = new Uint8Array(size);
  for (let cell = 0; cell < size; cell++) {
    const [colour, label] = rule(
      ((cell % columns) + 0.5) / columns,
      (Math.floor(cell / columns) + 0.5) / rows,
    );
    [L[cell], a[cell], b[cell]] = colour;
    labels[cell] = label;
  }
  return { columns, rows, L, a, b, labels, names: ['sky', 'land'] };
}

const bands = (x: number, y: number): [Colour, number] => {
  if (y < 0.25) return [[90, 0, -6], 0];
  return x < 0.5 ? [[50, 2, 4], 1] : [[20, 0, 1], 1];
};

describe('the value map', () => {
  test('gives the shares of three flat bands', () => {
    const map = valueMapOf(draw(400, 300, bands));
    expect(map?.light).toBeCloseTo(0.25, 2);
    expect(map?.middle).toBeCloseTo(0.375, 2);
    expect(map?.dark).toBeCloseTo(0.375, 2);
    expect(map?.spots).toBeLessThan(0.01);
  });

  test('does not change when the whole picture is lifted or stretched', () => {
    const plain = valueMapOf(draw(400, 300, bands));
    const lifted = valueMapOf(
      draw(400, 300, (x, y) => {
        const [[L, a, b], label] = bands(x, y);
        return [[12 + 0.8 * L, a, b], label];
      }),
    );
    expect(lifted).toEqual(plain);
  });

  test('counts a checkerboard of small squares as spots and finds where it is', () => {
    const spotted = draw(400, 300, (x, y) => {
      const inCorner = x > 2 / 3 && y > 2 / 3;
      const odd = (Math.floor(x * 30) + Math.floor(y * 30)) % 2 === 0;
      if (inCorner && odd) return [[90, 0, 0], 1];
      return [[y < 0.2 ? 92 : 25, 0, 0], y < 0.2 ? 0 : 1];
    });
    const map = valueMapOf(spotted);
    expect(map?.spots).toBeGreaterThan(0.04);
    expect(map?.spots).toBeLessThan(0.08);
    expect(map?.spotValue).toBe('light');
    expect(map?.spotAt?.[0]).toBeCloseTo(5 / 6, 5);
    expect(map?.spotAt?.[1]).toBeCloseTo(5 / 6, 5);
  });

  test('is not drawn for a picture of one value', () => {
    expect(valueMapOf(draw(40, 30, () => [[50, 0, 0], 1]))).toBeNull();
    expect(lightnessEnds(new Float32Array())).toBeNull();
  });

  test('ends are the percentiles of lightness', () => {
    const ends = lightnessEnds(Float32Array.from({ length: 101 }, (_, at) => at));
    expect(ends).toEqual({ L1: 1, L2: 2, L98: 98, L99: 99 });
  });
});

describe('light and shade', () => {
  test('lights and shadows of a plane keep their own colours, and dead black is counted', () => {
    const grid = draw(100, 100, (x, y) => {
      if (y < 0.5) return [[85, -3, -12], 0];
      return x < 0.5 ? [[70, 8, 30], 1] : [[18, 1, -1], 1];
    });
    const [sky, land] = lightShadeFacts(grid, [0.5, 0.5]);
    expect(land?.lights?.L).toBeCloseTo(70, 3);
    expect(land?.lights?.warmCool).toBeGreaterThan(20);
    expect(land?.shadows?.L).toBeCloseTo(18, 3);
    expect(Math.abs(land?.shadows?.warmCool ?? 9)).toBeLessThan(2);
    expect(land?.deadShare).toBeCloseTo(0.25, 5);
    expect(land?.darkChroma).toBeCloseTo(Math.SQRT2, 3);
    expect(sky?.deadShare).toBe(0);
  });

  test('a plane of a few cells is not spoken of', () => {
    const [, land] = lightShadeFacts(
      draw(10, 10, (_, y) => [[50, 0, 0], y < 0.5 ? 0 : 1]),
      [0.5, 0.5],
    );
    expect(land?.lights).toBeNull();
    expect(land?.darkChroma).toBeNull();
  });
});

describe('accents', () => {
  const spotAt = (x: number, y: number, x0: number, y0: number) => Math.hypot(x - x0, y - y0) < 0.03;

  test('a lone red spot on grey land is found where it is, unechoed', () => {
    const grid = draw(200, 200, (x, y) => [spotAt(x, y, 0.2, 0.7) ? [45, 50, 30] : [50, 3, 5], 1]);
    const [accent] = accentFacts(grid);
    expect(accent?.at[0]).toBeCloseTo(0.2, 2);
    expect(accent?.at[1]).toBeCloseTo(0.7, 2);
    expect(accent?.chroma).toBeCloseTo(Math.hypot(50, 30), 1);
    expect(accent?.hueDeg).toBeCloseTo(31, 0);
    expect(accent?.share).toBeCloseTo(Math.PI * 0.03 ** 2, 3);
    expect(accent?.echoed).toBe(false);
  });

  test('a second spot of like hue elsewhere answers it', () => {
    const grid = draw(200, 200, (x, y) => {
      const red = spotAt(x, y, 0.2, 0.7) || spotAt(x, y, 0.8, 0.4);
      return [red ? [45, 50, 30] : [50, 3, 5], 1];
    });
    expect(accentFacts(grid).map(({ echoed }) => echoed)).toEqual([true, true]);
  });

  test('a strong plane has no accent of its own strength', () => {
    expect(accentFacts(draw(100, 100, () => [[50, 40, 40], 1]))).toEqual([]);
  });
});

describe('patches', () => {
  test('cells that touch by a corner only are two patches', () => {
    const patches = patchesOf(Uint8Array.from([1, 0, 0, 1]), 2, 0);
    expect(patches.map(({ size }) => size)).toEqual([1, 1]);
  });

  test('a row does not run on into the next', () => {
    const patches = patchesOf(Uint8Array.from([0, 1, 1, 0]), 2, 0);
    expect(patches).toHaveLength(2);
  });
});

describe('capture facts', () => {
  const lost = { glare: [0, 0.04, 0.01], clippedSky: null, clippedDarks: 0 };

  test('the plane with most glare is named, and an unknown photo says nothing', () => {
    const facts = captureFactsOf(null, lost, ['sky', 'ridge', 'field'], null);
    expect(facts.glare).toEqual({ plane: 'ridge', share: 0.04 });
    expect(facts.neutral).toBeNull();
    expect(facts.shortSidePx).toBeNull();
  });

  test('a photo without a card has no neutral', () => {
    const photo = {
      cards: 0,
      unevenness: null,
      cardsApart: null,
      crookedDeg: 2,
      sideRatioError: null,
      shortSidePx: 1500,
      fillsPhoto: true,
      soft: false,
      wet: null,
    };
    const facts = captureFactsOf(photo, { ...lost, glare: [0, 0, 0] }, ['sky', 'ridge', 'field'], false);
    expect(facts.neutral).toBe(false);
    expect(facts.glare).toBeNull();
    expect(facts.crookedDeg).toBe(2);
  });
});

describe('edges and the focus', () => {
  const WIDTH = 1300;
  const HEIGHT = 800;
  /** Dark land under a light sky; the ridge is hard at the left and passes over 40 pixels at the right. */
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  for (let y = 0, at = 0; y < HEIGHT; y++) {
    for (let x = 0; x < WIDTH; x++, at += 3) {
      const half = x < WIDTH / 2 ? 1 : 20;
      const inside = Math.min(1, Math.max(0, (y + 0.5 - HEIGHT / 2 + half) / (2 * half)));
      samples.fill(Math.round(210 - 140 * inside), at, at + 3);
    }
  }
  const prepared = prepareMeasurable({ raster: encodedRaster(WIDTH, HEIGHT, samples) });
  const outlines: [number, number][][] = [
    [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ],
    [
      [0, 0.5],
      [1, 0.5],
      [1, 1],
      [0, 1],
    ],
  ];
  const labels = drawLabelMap(WIDTH, HEIGHT, outlines);
  const boundaries = boundariesOf(labels, WIDTH, 2);
  const edgesWith = (focus: [number, number] | null) =>
    focusEdgeFacts(prepared, { labels, boundaries }, ['sky', 'land'], focus).find(
      ({ near }) => near === 'land',
    );

  test('are taken within a fifth of the width of the focus and outside of it', () => {
    const soft = edgesWith([0.85, 0.5]);
    expect(soft?.inside).toBeGreaterThan(0);
    expect(soft?.outside).toBeGreaterThan(3 * (soft?.inside ?? 0));
    const hard = edgesWith([0.15, 0.5]);
    expect(hard?.inside).toBeGreaterThan(3 * (hard?.outside ?? 0));
  });

  test('are not split where no focus is set, and a focus far from every edge has none', () => {
    expect(edgesWith(null)).toBeUndefined();
    expect(edgesWith([0.5, 0.02])?.inside).toBeNull();
    expect(edgesWith([0.5, 0.02])?.outside).toBeGreaterThan(0);
  });
});
