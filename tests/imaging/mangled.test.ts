/** A thousand damaged pictures, from a fixed seed: each is taken in or refused with a sentence; nothing crashes. */
import { readFile } from 'node:fs/promises';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { isProblem } from '#server/core/problem.ts';
import { inspect } from '#server/imaging/inspect.ts';
import { originalOf } from '#server/imaging/original.ts';
import { uncorrectedPlate } from '#server/imaging/plate.ts';
import { aFolder, burdened, burdenedJpeg, card, type Folder } from './pictures.ts';

const COUNT = 1000;
const HEIC = new URL('../fixtures/files/card-display-p3.heic', import.meta.url);

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

/** Mulberry32: a small generator whose numbers are the same everywhere. */
function seeded(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

function mangle(bytes: Buffer, random: () => number): Buffer {
  const mangled = Buffer.from(bytes);
  const flips = 1 + Math.floor(random() * 12);
  for (let flip = 0; flip < flips; flip++) {
    const at = Math.floor(random() * (random() < 0.5 ? 64 : mangled.length));
    mangled[at % mangled.length] = Math.floor(random() * 256);
  }
  return random() < 0.3 ? mangled.subarray(0, Math.floor(random() * mangled.length)) : mangled;
}

test(`${COUNT} mangled pictures bring nothing down`, { timeout: 300_000 }, async () => {
  const wholes = [
    await burdenedJpeg(),
    await card().jpeg({ progressive: true }).toBuffer(),
    await card().withIccProfile('p3').png().toBuffer(),
    await burdened(card()).webp().toBuffer(),
    await card().tiff({ compression: 'lzw' }).toBuffer(),
    await card().avif().toBuffer(),
    await readFile(HEIC),
  ];
  const random = seeded(20_260_101);
  const outcomes = { taken: 0, refused: 0 };
  for (let index = 0; index < COUNT; index++) {
    const bytes = mangle(wholes[index % wholes.length] as Buffer, random);
    const path = await folder.put('mangled', bytes);
    try {
      const inspection = await inspect(path, 'mangled');
      const { raster } = await uncorrectedPlate(await originalOf(path, inspection, 'mangled'), 512);
      expect(raster.samples.length).toBe(raster.widthPx * raster.heightPx * 3);
      outcomes.taken++;
    } catch (thrown) {
      if (!isProblem(thrown))
        throw new Error(`Picture ${index} threw what is no Problem.`, { cause: thrown });
      outcomes.refused++;
    }
  }
  expect(outcomes.taken + outcomes.refused).toBe(COUNT);
  expect(outcomes.refused).toBeGreaterThan(COUNT / 4);
  expect(outcomes.taken).toBeGreaterThan(COUNT / 10);
});
