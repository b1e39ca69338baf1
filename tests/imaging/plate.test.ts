import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CLIP } from '#server/core/image/raster.ts';
import {
  plateFiles,
  readPaintingPlate,
  readPlate,
  readPlateFiles,
  uncorrectedPlate,
} from '#server/imaging/plate.ts';
import { viewingCopies } from '#server/imaging/renditions.ts';
import { aFolder, card, type Folder } from './pictures.ts';

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

/** 4096 × 2048 grey with a blown stripe, a crushed stripe, and single blown pixels on every fourth place. */
async function clippedPicture(): Promise<Buffer> {
  const [width, height] = [4096, 2048];
  const samples = new Uint8Array(width * height * 3).fill(120);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const at = (y * width + x) * 3;
      if (y < 400) samples[at + 1] = 254;
      else if (y < 800) samples.fill(1, at, at + 3);
      else if (y < 1200 && x % 2 === 0 && y % 2 === 0) samples.fill(255, at, at + 3);
    }
  }
  return sharp(samples, { raw: { width, height, channels: 3 } })
    .png({ compressionLevel: 1 })
    .toBuffer();
}

describe('the plate', () => {
  test('is at most 2048 px and tells clipping from the full-size picture', async () => {
    const path = await folder.put('clipped.png', await clippedPicture());
    const { raster, clipped } = await readPlate(path);
    expect([raster.widthPx, raster.heightPx]).toEqual([2048, 1024]);
    const at = (y: number) => (clipped as Uint8Array)[y * 2048 + 1000];
    expect(at(100)).toBe(CLIP.blown);
    expect(at(300)).toBe(CLIP.crushed);
    // A quarter of the pixels that a plate pixel covers is blown: its colour is still mostly true.
    expect(at(500)).toBe(CLIP.none);
    expect(at(900)).toBe(CLIP.none);
  });

  test('the shares count every pixel of the full-size picture', async () => {
    const original = { bytes: await clippedPicture(), mediaType: 'image/png', orientation: 1 } as const;
    const { shares } = await uncorrectedPlate(original, 2048);
    expect(shares.high).toBeCloseTo((400 + 100) / 2048, 6);
    expect(shares.low).toBeCloseTo(400 / 2048, 6);
  });

  test('comes back from its files byte for byte', async () => {
    const original = { bytes: await clippedPicture(), mediaType: 'image/png', orientation: 1 } as const;
    const plate = await uncorrectedPlate(original, 2048);
    const [colours, clipMap] = await plateFiles(plate);
    const back = await readPlateFiles(colours?.bytes as Buffer, clipMap?.bytes as Buffer);
    expect(Buffer.from(back.raster.samples).equals(Buffer.from(plate.raster.samples))).toBe(true);
    expect(Buffer.compare(back.clipped as Uint8Array, plate.clipped)).toBe(0);
  });

  test('a painting that fills a quarter of its photo is squared from a larger copy than the plate', async () => {
    const inner = await card().resize(2000, 1250, { kernel: 'nearest' }).png().toBuffer();
    const photo = await sharp({ create: { width: 6000, height: 4000, channels: 3, background: '#777' } })
      .composite([{ input: inner, left: 2000, top: 1375 }])
      .jpeg({ quality: 95 })
      .toBuffer();
    const path = await folder.put('photo.jpg', photo);
    const [left, top, right, bottom] = [2000 / 6000, 1375 / 4000, 4000 / 6000, 2625 / 4000];
    const { raster } = await readPaintingPlate(path, {
      corners: [
        [left, top],
        [right, top],
        [right, bottom],
        [left, bottom],
      ],
    });
    expect(raster.widthPx).toBeGreaterThan(1300);
    expect(raster.widthPx / raster.heightPx).toBeCloseTo(1.6, 1);
    const at = (Math.round(raster.heightPx * 0.25) * raster.widthPx + Math.round(raster.widthPx * 0.25)) * 3;
    expect(Math.abs((raster.samples[at] ?? 0) - 200)).toBeLessThanOrEqual(2);
  });
});

test('viewing copies are never larger than asked for, keep 4:4:4, and the small one is lossless', async () => {
  const bytes = await card().resize(3000, 1875, { kernel: 'nearest' }).jpeg({ quality: 95 }).toBuffer();
  const copies = await viewingCopies({ bytes, mediaType: 'image/jpeg', orientation: 1 });
  expect(copies.map(({ name, width, height }) => [name, width, height])).toEqual([
    ['640', 640, 400],
    ['1280', 1280, 800],
    ['2560', 2560, 1600],
    ['lossless-640', 640, 400],
  ]);
  for (const copy of copies.slice(0, 3)) {
    const said = await sharp(copy.bytes).metadata();
    expect([said.format, said.chromaSubsampling]).toEqual(['jpeg', '4:4:4']);
  }
  const lossless = await sharp(copies[3]?.bytes).metadata();
  expect([lossless.format, lossless.depth, lossless.hasAlpha]).toEqual(['png', 'uchar', false]);
});
