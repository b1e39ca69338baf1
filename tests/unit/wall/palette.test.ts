/** The palette strip: areas and colours of pictures whose colours are known, and libvips on the same pixels. */
import { converter, differenceCiede2000, parse } from 'culori';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import { drawLabelMap } from '#server/core/planes/label-map.ts';
import { byDepth, byValue, MOST_COLOURS, type PaletteColour, paletteOf } from '#server/core/wall/palette.ts';
import { TRACED_PHOTOS, tracedPath } from './some-pictures.ts';

const WIDTH = 200;
const HEIGHT = 100;

/** Level bands, the farthest first, each of one colour and of so many rows. */
function banded(bands: readonly (readonly [hex: string, rows: number])[]): EncodedRaster {
  const samples = new Uint8Array(WIDTH * HEIGHT * 3);
  let at = 0;
  for (const [hex, rows] of bands) {
    const code = [1, 3, 5].map((from) => Number.parseInt(hex.slice(from, from + 2), 16));
    for (let sample = 0; sample < rows * WIDTH * 3; sample++) samples[at++] = code[sample % 3] as number;
  }
  return encodedRaster(WIDTH, HEIGHT, samples);
}

const BANDS = [
  ['#c9d6e4', 30],
  ['#8fa3b8', 20],
  ['#5c6b4a', 15],
  ['#a4673a', 5],
  ['#3a4429', 30],
] as const;

const toLab = converter('lab65');
/** By a general-purpose library, not by ours. */
const dE00 = differenceCiede2000();

describe('the palette of a painting', () => {
  test('gives known colours their areas, and themselves as culori has them', () => {
    const palette = paletteOf(banded(BANDS), null);
    expect(palette).toHaveLength(BANDS.length);
    for (const [hex, rows] of BANDS) {
      const found = palette.find((colour) => colour.hex === hex);
      expect(found?.share).toBeCloseTo(rows / HEIGHT, 6);
      const lab = toLab(parse(hex));
      expect(
        Math.hypot((found?.lab.L ?? 0) - (lab?.l ?? 0), (found?.lab.a ?? 0) - (lab?.a ?? 0)),
      ).toBeLessThan(0.05);
    }
    const areas = palette.map(({ share }) => share);
    expect(areas).toEqual(areas.toSorted((one, other) => other - one));
  });

  test('colours that the eye takes for one are one', () => {
    const palette = paletteOf(
      banded([
        ['#808080', 50],
        ['#838383', 50],
      ]),
      null,
    );
    expect(palette).toHaveLength(1);
    expect(palette[0]?.share).toBe(1);
  });

  test('a small note of a colour of its own stays', () => {
    const palette = paletteOf(
      banded([
        ['#8a8f98', 49],
        ['#7d828a', 50],
        ['#d8562c', 1],
      ]),
      null,
    );
    expect(palette.map(({ hex }) => hex)).toContain('#d8562c');
  });

  test('goes from light to dark, or from far to near, without losing a colour', () => {
    const bands = BANDS.map(([, rows]) => rows);
    const edges = bands.map((_, at) => bands.slice(0, at).reduce((sum, rows) => sum + rows, 0) / HEIGHT);
    const outlines = edges.map((top): [number, number][] => [
      [0, top],
      [1, top],
      [1, 1],
      [0, 1],
    ]);
    const labels = drawLabelMap(WIDTH, HEIGHT, outlines);
    const palette = paletteOf(banded(BANDS), { labels, count: BANDS.length });
    expect(byDepth(palette).map(({ hex }) => hex)).toEqual(BANDS.map(([hex]) => hex));
    expect(byDepth(palette).map(({ depth }) => depth)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    const lightness = byValue(palette).map(({ lab }) => lab.L);
    expect(lightness).toEqual(lightness.toSorted((one, other) => other - one));
    expect(lightness).toHaveLength(BANDS.length);
  });

  test('a colour outside every plane comes last, and without planes no colour has a depth', () => {
    const half = drawLabelMap(WIDTH, HEIGHT, [
      [
        [0, 0.5],
        [1, 0.5],
        [1, 1],
        [0, 1],
      ],
    ]);
    const palette = paletteOf(
      banded([
        ['#202020', 50],
        ['#e0e0e0', 50],
      ]),
      { labels: half, count: 1 },
    );
    expect(byDepth(palette).map(({ depth }) => depth)).toEqual([0, null]);
    expect(paletteOf(banded(BANDS), null).every(({ depth }) => depth === null)).toBe(true);
  });

  test('a mirrored picture has the same palette', async () => {
    const raster = await rasterOf(TRACED_PHOTOS[0] as string);
    const { widthPx, heightPx, samples } = raster;
    const mirrored = new Uint8Array(samples.length);
    for (let pixel = 0; pixel < widthPx * heightPx; pixel++) {
      const from = pixel - (pixel % widthPx) + (widthPx - 1 - (pixel % widthPx));
      mirrored.set(samples.subarray(from * 3, from * 3 + 3), pixel * 3);
    }
    const [one, other] = [
      paletteOf(raster, null),
      paletteOf(encodedRaster(widthPx, heightPx, mirrored), null),
    ];
    expect(other).toHaveLength(one.length);
    one.forEach((colour, at) => {
      expect(other[at]?.share).toBeCloseTo(colour.share, 2);
      expect(away(colour, other[at])).toBeLessThan(1);
    });
  });

  test.each(TRACED_PHOTOS)(
    'serves %s better than four colours of libvips, nearly as well as sixteen',
    async (name) => {
      const raster = await rasterOf(name);
      const palette = paletteOf(raster, null);
      expect(palette.length).toBeLessThanOrEqual(MOST_COLOURS);
      expect(palette.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
      const left = leftOver(
        raster,
        palette.map(({ hex }) => hex),
      );
      expect(left).toBeLessThan(leftOver(raster, await coloursOfLibvips(raster, 4)));
      // Twice as many colours leave 0.71 of the distance where colours fill a plane, 0.79 where they fill space; below 3 the
      // strip joins colours on purpose.
      expect(left).toBeLessThan(Math.max(3, 1.42 * leftOver(raster, await coloursOfLibvips(raster, 16))));
    },
  );
});

/** The colours that a general-purpose library finds for the same pixels. */
async function coloursOfLibvips(
  { samples, widthPx, heightPx }: EncodedRaster,
  colours: 4 | 16,
): Promise<string[]> {
  const raw = { width: widthPx, height: heightPx, channels: 3 as const };
  const png = await sharp(Buffer.from(samples), { raw })
    .png({ palette: true, colours, dither: 0 })
    .toBuffer();
  const { data } = await sharp(png).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  const found = new Set<string>();
  for (let at = 0; at < data.length; at += 3) found.add(`#${data.subarray(at, at + 3).toString('hex')}`);
  if (found.size > colours) throw new Error(`libvips gave ${found.size} colours.`);
  return [...found];
}

function away(one: PaletteColour, other: PaletteColour | undefined): number {
  return other ? dE00(one.hex, other.hex) : Number.POSITIVE_INFINITY;
}

async function rasterOf(name: string): Promise<EncodedRaster> {
  const { data, info } = await sharp(tracedPath(name))
    .resize(240)
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  return encodedRaster(info.width, info.height, new Uint8Array(data));
}

/** Mean distance in CIELAB from every 97th pixel to the nearest of the colours. */
function leftOver({ samples }: EncodedRaster, colours: readonly string[]): number {
  const labs = colours.map((hex) => toLab(parse(hex)));
  let [sum, count] = [0, 0];
  for (let at = 0; at + 2 < samples.length; at += 97 * 3) {
    const [r, g, b] = [at, at + 1, at + 2].map((each) => (samples[each] as number) / 255) as [
      number,
      number,
      number,
    ];
    const pixel = toLab({ mode: 'rgb', r, g, b });
    const distances = labs.map((lab) =>
      Math.hypot(pixel.l - (lab?.l ?? 0), pixel.a - (lab?.a ?? 0), pixel.b - (lab?.b ?? 0)),
    );
    sum += Math.min(...distances);
    count++;
  }
  return sum / count;
}
