import { open } from 'node:fs/promises';
import { deflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { inspect } from '#server/imaging/inspect.ts';
import { takeIn } from '#server/imaging/take-in.ts';
import { aFolder, card, type Folder } from './pictures.ts';

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

async function refusal(name: string, bytes: Uint8Array | string) {
  const path = await folder.put(name, bytes);
  return expect(inspect(path, name)).rejects;
}

/** A PNG that says how large it is and holds next to nothing: the size is told from the header alone. */
function pngHeader(width: number, height: number): Buffer {
  const chunk = (type: string, data: Buffer) => {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(data.length, 0);
    head.write(type, 4, 'latin1');
    const check = Buffer.alloc(4);
    check.writeUInt32BE(crcOf(Buffer.concat([head.subarray(4), data])), 0);
    return Buffer.concat([head, data, check]);
  };
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, 0, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    chunk('IDAT', deflateSync(Buffer.alloc(1000))),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/** CRC-32 of ISO 3309, as the PNG specification's annex D gives it. */
function crcOf(bytes: Buffer): number {
  let crc = 0xffffffff;
  for (const byte of bytes) {
    crc ^= byte;
    for (let bit = 0; bit < 8; bit++) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  }
  return (crc ^ 0xffffffff) >>> 0;
}

describe('a file that is not one still picture is refused with a sentence', () => {
  test('a text file named .jpg', async () => {
    await (await refusal('notes.jpg', 'Monday: buy white.\n')).toMatchObject({
      code: 'picture-not-a-picture',
      message:
        'notes.jpg is not a picture: it begins like plain text. Choose a JPEG, PNG, WebP, TIFF, AVIF or HEIC file.',
    });
  });

  test('a file of 0 bytes', async () => {
    await (await refusal('empty.png', '')).toMatchObject({
      code: 'file-empty',
      message: expect.stringContaining('has 0 bytes'),
    });
  });

  test('a 200-megapixel PNG, by its header alone', async () => {
    await (await refusal('huge.png', pngHeader(20_000, 10_000))).toMatchObject({
      code: 'picture-too-many-pixels',
      message: 'This picture has 200.0 megapixels and the limit is 100. Post a smaller copy.',
    });
  });

  test('a file of more than 60 MB', async () => {
    const path = await folder.put('large.jpg', await card().jpeg().toBuffer());
    const file = await open(path, 'r+');
    await file.truncate(61_500_000);
    await file.close();
    await expect(inspect(path, 'large.jpg')).rejects.toMatchObject({
      code: 'file-too-large',
      message: expect.stringContaining('61.5 MB and the limit is 60 MB'),
    });
  });

  test.each([
    ['drawing.svg', '<?xml version="1.0"?>\n<svg xmlns="http://www.w3.org/2000/svg"/>', 'an SVG drawing'],
    ['paper.pdf', '%PDF-1.7\n', 'a PDF document'],
  ])('%s', async (name, text, kind) => {
    await (await refusal(name, text)).toMatchObject({
      code: 'picture-kind-refused',
      message: expect.stringContaining(`is ${kind}`),
    });
  });

  test('a GIF', async () => {
    await (await refusal('loop.gif', await card().gif().toBuffer())).toMatchObject({
      code: 'picture-kind-refused',
    });
  });

  test('an animated WebP, with its number of frames', async () => {
    const frames = await sharp([await card().png().toBuffer(), await card().flip().png().toBuffer()], {
      join: { animated: true },
    })
      .webp()
      .toBuffer();
    await (await refusal('loop.webp', frames)).toMatchObject({
      code: 'picture-animated',
      message: expect.stringContaining('2 frames'),
    });
  });

  test('an animated PNG', async () => {
    const png = await card().png().toBuffer();
    const actl = Buffer.alloc(20);
    actl.writeUInt32BE(8, 0);
    actl.write('acTL', 4, 'latin1');
    actl.writeUInt32BE(3, 8);
    actl.writeUInt32BE(crcOf(actl.subarray(4, 16)), 16);
    const bytes = Buffer.concat([png.subarray(0, 33), actl, png.subarray(33)]);
    await (await refusal('loop.png', bytes)).toMatchObject({
      code: 'picture-animated',
      message: expect.stringContaining('3 frames'),
    });
  });

  test('an AVIF sequence', async () => {
    const avif = Buffer.from(await card().avif().toBuffer());
    avif.write('avis', 8, 'latin1');
    await (await refusal('loop.avif', avif)).toMatchObject({ code: 'picture-animated' });
  });

  test('a picture of fewer than 64 pixels on a side', async () => {
    await (await refusal('dot.png', await card().resize(63, 63).png().toBuffer())).toMatchObject({
      code: 'picture-too-small',
      message: expect.stringContaining('63 × 63 pixels and at least 64 × 64 are needed'),
    });
  });

  test('a strip too thin for planes', async () => {
    const strip = await card().resize(1300, 100, { fit: 'fill' }).png().toBuffer();
    await (await refusal('strip.png', strip)).toMatchObject({
      code: 'picture-too-small',
      message: expect.stringContaining('13.0 times'),
    });
  });
});

describe('a truncated file is refused when it is read', () => {
  const kinds = {
    'cut.jpg': () => card().jpeg().toBuffer(),
    'cut.png': () => card().png().toBuffer(),
    'cut.webp': () => card().webp().toBuffer(),
    'cut.tif': () => card().tiff().toBuffer(),
    'cut.avif': () => card().avif().toBuffer(),
  };
  test.each(Object.entries(kinds))('%s', async (name, make) => {
    const whole = await make();
    const path = await folder.put(name, whole.subarray(0, Math.floor(whole.length * 0.7)));
    await expect(takeIn(path, name).then(() => 'taken in')).rejects.toMatchObject({
      code: 'picture-unreadable',
    });
  });

  test('the sentence says after how many bytes a JPEG ends', async () => {
    const whole = await card().jpeg().toBuffer();
    const path = await folder.put('half.jpg', whole.subarray(0, 500));
    await expect(takeIn(path, 'half.jpg').then(() => 'taken in')).rejects.toMatchObject({
      message: expect.stringMatching(/cut short: its file ends after 500 bytes/),
    });
  });
});

test('the kind is told from the content, whatever the name says', async () => {
  const path = await folder.put('really-a-png.jpg', await card().png().toBuffer());
  await expect(inspect(path, 'really-a-png.jpg')).resolves.toMatchObject({
    type: 'png',
    width: 256,
    height: 160,
    orientation: 1,
  });
});
