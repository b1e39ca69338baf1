import { readFile } from 'node:fs/promises';
import { differenceCiede2000 } from 'culori';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { decodeSrgb } from '#server/imaging/decode.ts';
import { inspect } from '#server/imaging/inspect.ts';
import { originalOf } from '#server/imaging/original.ts';
import { aFolder, CARD_COLOURS, type Folder, quarters } from './pictures.ts';

const FILES = new URL('../fixtures/files/', import.meta.url);
/** x265 at quality 95 moves these flat colours by less than this. */
const CODEC_DE00 = 0.6;

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

const read = (name: string) => readFile(new URL(name, FILES));
const dE00 = differenceCiede2000();
const colour = ([r = 0, g = 0, b = 0]: readonly number[]) => ({
  mode: 'rgb' as const,
  r: r / 255,
  g: g / 255,
  b: b / 255,
});

async function open(bytes: Uint8Array) {
  const path = await folder.put('card.heic', bytes);
  const inspection = await inspect(path, 'card.heic');
  const original = await originalOf(path, inspection, 'card.heic');
  return { inspection, original, picture: await decodeSrgb(original, 2048) };
}

function worst(found: number[][]): number {
  return Math.max(...found.map((rgb, index) => dE00(colour(rgb), colour(CARD_COLOURS[index] ?? []))));
}

describe('HEIC', () => {
  test.each(['card-srgb.heic', 'card-display-p3.heic', 'card-turned.heic', 'card-10-bit.heic'])(
    '%s comes upright and within 1 dE00 of its card',
    async (name) => {
      const { inspection, original, picture } = await open(await read(name));
      expect(inspection).toMatchObject({ type: 'heic', width: 256, height: 160, orientation: 1 });
      expect(original.mediaType).toBe('image/png');
      expect([picture.width, picture.height]).toEqual([256, 160]);
      expect(worst(quarters(picture))).toBeLessThan(1);
    },
  );

  test('Display P3 stated by numbers (H.273) leads to sRGB within 1 dE00', async () => {
    const bytes = await read('card-display-p3.heic');
    const at = bytes.indexOf('colrprof');
    bytes.write('nclx', at + 4, 'latin1');
    bytes.writeUInt16BE(12, at + 8);
    bytes.writeUInt16BE(13, at + 10);
    bytes.writeUInt16BE(6, at + 12);
    bytes[at + 14] = 0x80;
    const { original, picture } = await open(bytes);
    expect(worst(quarters(picture))).toBeLessThan(1);
    expect((await sharp(original.bytes).metadata()).hasProfile).toBe(true);
  });

  test('a Display P3 card is kept in Display P3: its own numbers stay', async () => {
    const { original } = await open(await read('card-display-p3.heic'));
    const own = await sharp(original.bytes, { ignoreIcc: true }).raw().toBuffer();
    // sRGB (200, 60, 50) is (185, 71, 58) in Display P3, by culori.
    expect(dE00(colour([...own.subarray(0, 3)]), colour([185, 71, 58]))).toBeLessThan(CODEC_DE00);
  });

  test('more than 8 bits are kept as 16', async () => {
    const { original } = await open(await read('card-10-bit.heic'));
    expect((await sharp(original.bytes).metadata()).depth).toBe('ushort');
  });

  test('a file that breaks off is refused', async () => {
    const bytes = await read('card-srgb.heic');
    await expect(open(bytes.subarray(0, bytes.length - 300))).rejects.toMatchObject({
      code: 'picture-unreadable',
    });
  });
});
