import { inflateSync } from 'node:zlib';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { cleanProfile, matrixProfile, powerCurve } from '#server/imaging/icc.ts';
import { withProfile } from '#server/imaging/png-chunks.ts';
import { takeIn } from '#server/imaging/take-in.ts';
import { aFolder, burdened, burdenedJpeg, burdenedPng, card, type Folder, SECRET } from './pictures.ts';

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

const MAKE: Record<string, () => Promise<Buffer>> = {
  'all.jpg': burdenedJpeg,
  'all.png': burdenedPng,
  'all.webp': () => burdened(card()).withIccProfile('p3').webp({ quality: 90 }).toBuffer(),
  'all.tif': () => burdened(card()).withIccProfile('p3').tiff().toBuffer(),
  'all.avif': () => burdened(card()).withIccProfile('p3').avif().toBuffer(),
};

/** Every way in which the secret could stand in a file: as it is, in UTF-16, or in a deflated chunk. */
function holdsSecret(bytes: Buffer): boolean {
  const utf16 = Buffer.from(SECRET, 'utf16le');
  if (bytes.includes(SECRET) || bytes.includes(utf16) || bytes.includes(utf16.swap16())) return true;
  for (let at = bytes.indexOf(0x78); at >= 0; at = bytes.indexOf(0x78, at + 1)) {
    try {
      if (inflateSync(bytes.subarray(at), { maxOutputLength: 1 << 20 }).includes(SECRET)) return true;
    } catch {
      // Not the beginning of a deflated part.
    }
  }
  return false;
}

describe('no stored or served file says who took the picture, where, or with what', () => {
  test.each(Object.entries(MAKE))('%s', async (name, make) => {
    const bytes = await make();
    expect(bytes.includes(SECRET)).toBe(true);
    const { original, renditions } = await takeIn(await folder.put(name, bytes), name);
    expect(renditions.map((copy) => copy.name).sort()).toEqual(
      ['1280', '2560', '640', 'clip-map', 'lossless-640', 'plate'].sort(),
    );
    for (const file of [original, ...renditions]) {
      expect(holdsSecret(file.bytes)).toBe(false);
      const said = await sharp(file.bytes).metadata();
      expect([said.exif, said.xmp, said.iptc, said.comments]).toEqual([
        undefined,
        undefined,
        undefined,
        undefined,
      ]);
    }
    for (const copy of renditions) expect((await sharp(copy.bytes).metadata()).hasProfile).toBe(false);
    expect((await sharp(original.bytes).metadata()).hasProfile).toBe(true);
  });
});

describe('the stored original keeps its pixels bit for bit', () => {
  test.each(['all.jpg', 'all.png', 'all.webp', 'all.tif'])('%s', async (name) => {
    const bytes = await (MAKE[name] as () => Promise<Buffer>)();
    const { original } = await takeIn(await folder.put(name, bytes), name);
    const own = (file: Buffer) => sharp(file, { ignoreIcc: true }).raw().toBuffer();
    expect((await own(original.bytes)).equals(await own(bytes))).toBe(true);
  });

  test('a JPEG grows smaller by what was dropped and ends with its own picture', async () => {
    const bytes = await burdenedJpeg();
    const { original } = await takeIn(await folder.put('end.jpg', bytes), 'end.jpg');
    expect(original.bytes.length).toBeLessThan(bytes.length / 2);
    expect(original.bytes.subarray(-2)).toEqual(Buffer.from([0xff, 0xd9]));
  });
});

describe('a profile', () => {
  const P3 = matrixProfile(
    { red: [0.68, 0.32], green: [0.265, 0.69], blue: [0.15, 0.06], white: [0.3127, 0.329] },
    powerCurve(2.2),
  );

  /** A display profile as systems write them: its model, serial number and owner's words beside the colours. */
  function withPrivateTag(profile: Buffer): Buffer {
    const count = profile.readUInt32BE(128);
    const shifted = Buffer.from(profile.subarray(132, 132 + count * 12));
    for (let index = 0; index < count; index++) {
      shifted.writeUInt32BE(shifted.readUInt32BE(index * 12 + 4) + 12, index * 12 + 4);
    }
    const head = Buffer.from(profile.subarray(0, 132));
    head.writeUInt32BE(count + 1, 128);
    head.write('Wilh', 48, 'latin1');
    // libpng wants profiles whose length is a multiple of four.
    const tag = Buffer.from(`text\0\0\0\0${SECRET.padEnd(32)}\0\0\0\0`, 'latin1');
    const entry = Buffer.alloc(12);
    entry.write('mmod', 0, 'latin1');
    entry.writeUInt32BE(profile.length + 12, 4);
    entry.writeUInt32BE(tag.length, 8);
    const whole = Buffer.concat([head, shifted, entry, profile.subarray(132 + count * 12), tag]);
    whole.writeUInt32BE(whole.length, 0);
    return whole;
  }

  test('loses its owner’s words and serial number and leads to the same colours', async () => {
    const burdenedProfile = withPrivateTag(P3);
    const cleaned = cleanProfile(burdenedProfile) as Buffer;
    expect(burdenedProfile.includes(SECRET)).toBe(true);
    expect(cleaned.includes(SECRET) || cleaned.includes('Wilh')).toBe(false);
    const png = await card().png().toBuffer();
    const shown = (profile: Buffer) => sharp(withProfile(png, profile)).raw().toBuffer();
    expect((await shown(cleaned)).equals(await shown(burdenedProfile))).toBe(true);
    expect((await shown(cleaned)).equals(await sharp(png).raw().toBuffer())).toBe(false);
  });

  test('that is no profile is dropped, and the picture reads as sRGB', () => {
    expect(cleanProfile(Buffer.from('no profile at all'))).toBeNull();
  });
});
