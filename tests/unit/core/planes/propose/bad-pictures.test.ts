/** Pictures that are no landscape: fewer planes than asked and a sentence why, never a hole, never an empty plane. */
import { describe, expect, it } from 'vitest';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { checkOutline } from '#server/core/planes/check-outline.ts';
import { countLabels, drawLabelMap, NO_PLANE } from '#server/core/planes/label-map.ts';
import { type Proposal, proposePlanes } from '#server/core/planes/propose/propose.ts';

/** Repeatable numbers 0..1: Park & Miller (1988), minimal standard generator. */
function numbers(): () => number {
  let state = 7;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

type Paint = (x: number, y: number, next: () => number) => readonly [number, number, number];

function picture(widthPx: number, heightPx: number, paint: Paint): EncodedRaster {
  const next = numbers();
  const samples = new Uint8ClampedArray(widthPx * heightPx * 3);
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at += 3) samples.set(paint(x, y, next), at);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

const noise: Paint = (_x, _y, next) => [255 * next(), 255 * next(), 255 * next()];
const clouds: Paint = (x, y) => {
  const cover = 0.5 + 0.5 * Math.sin(x / 37 + 2 * Math.sin(y / 51)) * Math.sin(y / 29 + Math.cos(x / 43));
  return [95 + 0.2 * y + 120 * cover, 145 + 0.15 * y + 70 * cover, 222 + 20 * cover];
};
const portrait: Paint = (x, y, next) => {
  const grain = 8 * (next() - 0.5);
  const head = ((x - 200) / 90) ** 2 + ((y - 220) / 120) ** 2 < 1;
  const body = ((x - 200) / 190) ** 2 + ((y - 620) / 260) ** 2 < 1;
  if (head) return [205 + grain, 160 + grain, 135 + grain];
  return body ? [60 + grain, 50 + grain, 80 + grain] : [150 + 0.05 * y + grain, 140 + grain, 120 + grain];
};
const small: Paint = (x, y, next) => {
  const grain = 10 * (next() - 0.5);
  if (y < 20) return [180, 200, 230];
  return y < 34 + 4 * Math.sin(x / 6)
    ? [110 + grain, 130 + grain, 140 + grain]
    : [70 + grain, 110 + grain, 50];
};

const PICTURES: [string, EncodedRaster, number][] = [
  ['a flat grey', picture(600, 400, () => [128, 128, 128]), 1],
  ['black', picture(600, 400, () => [0, 0, 0]), 1],
  ['white', picture(600, 400, () => [255, 255, 255]), 1],
  ['noise', picture(600, 400, noise), 1],
  [
    'grey noise',
    picture(500, 500, (_x, _y, next) => [0, 0, 0].map(() => 90 + 60 * next()) as [number, number, number]),
    1,
  ],
  ['a clear sky', picture(600, 400, (_x, y) => [90 + y / 4, 140 + y / 5, 215]), 1],
  ['a clouded sky', picture(600, 400, clouds), 6],
  ['a portrait', picture(400, 600, portrait), 6],
  ['64 by 64 pixels', picture(64, 64, small), 6],
  ['64 by 64 pixels of one grey', picture(64, 64, () => [99, 99, 99]), 1],
  ['one pixel', picture(1, 1, () => [9, 99, 200]), 1],
  ['one row', picture(300, 1, (x) => [x % 256, 100, 20]), 1],
  ['one column', picture(1, 300, (_x, y) => [y % 256, 100, 20]), 1],
];

function expectSound({ widthPx, heightPx }: EncodedRaster, { asked, planes, note }: Proposal): void {
  expect(planes.length).toBeGreaterThanOrEqual(1);
  expect(planes.length).toBeLessThanOrEqual(asked);
  expect(note === null).toBe(planes.length === asked);
  for (const { name, outline } of planes) checkOutline(name, outline);
  expect(new Set(planes.map(({ name }) => name)).size).toBe(planes.length);
  const labels = drawLabelMap(
    widthPx,
    heightPx,
    planes.map(({ outline }) => outline),
  );
  expect(labels.includes(NO_PLANE)).toBe(false);
  expect(Math.min(...countLabels(labels, planes.length))).toBeGreaterThan(0);
}

/** Nothing here is about speed; the machine may have other work. */
const PATIENCE = { timeout: 120_000 };

describe.each(PICTURES)('planes proposed for %s', (_, raster, most) => {
  it('are sound, and fewer than seven, with a sentence', PATIENCE, () => {
    const { alternatives, chosen, reason } = proposePlanes(raster);
    expect(alternatives.map(({ asked }) => asked)).toEqual([2, 3, 4, 5, 6, 7]);
    for (const proposal of [...alternatives, chosen]) expectSound(raster, proposal);
    const seven = alternatives.at(-1);
    expect(seven?.planes.length).toBeLessThanOrEqual(most);
    // Why, with the number behind it, and what to do, in one sentence.
    expect(seven?.note).toMatch(/^Seven planes were asked for and \w+ found: .*\d.*; .*by hand.*\.$/);
    expect(reason).toMatch(/\.$/);
  });
});

describe('the sentence', () => {
  it('names an even tone, a sky, and a picture without contours', PATIENCE, () => {
    const noteOf = (name: string): string => {
      const raster = PICTURES.find(([title]) => title === name)?.[1];
      return (raster && proposePlanes(raster).alternatives.at(0)?.note) || '';
    };
    expect(noteOf('a flat grey')).toContain('one even tone');
    expect(noteOf('a clear sky')).toContain('nothing but sky');
    expect(noteOf('noise')).toContain('no contour');
  });
});
