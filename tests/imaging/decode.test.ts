/**
 * Colour against culori (a general library with its own matrices for Display P3 and Adobe RGB 1998).
 * ICC profiles: libvips' built-in Display P3, and an Adobe RGB (1998) profile built here from the primaries and
 * gamma of its specification (Adobe Systems 2005, §4.3).
 */
import { converter, differenceCiede2000 } from 'culori';
import sharp, { type Sharp } from 'sharp';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { decodeSrgb } from '#server/imaging/decode.ts';
import { matrixProfile, powerCurve } from '#server/imaging/icc.ts';
import { inspect } from '#server/imaging/inspect.ts';
import { originalOf } from '#server/imaging/original.ts';
import { withProfile } from '#server/imaging/png-chunks.ts';
import { aFolder, CARD_COLOURS, card, cardPixels, type Folder, quarters } from './pictures.ts';

let folder: Folder;
beforeAll(async () => {
  folder = await aFolder();
});
afterAll(() => folder.remove());

async function decoded(name: string, bytes: Uint8Array) {
  const path = await folder.put(name, bytes);
  const inspection = await inspect(path, name);
  return decodeSrgb(await originalOf(path, inspection, name), 2048);
}

const dE00 = differenceCiede2000();
const colour = (rgb: readonly number[], mode: 'rgb' | 'p3' | 'a98' = 'rgb') => ({
  mode,
  r: (rgb[0] ?? 0) / 255,
  g: (rgb[1] ?? 0) / 255,
  b: (rgb[2] ?? 0) / 255,
});
const worst = (found: number[][], truth: readonly (readonly number[])[]) =>
  Math.max(...found.map((rgb, index) => dE00(colour(rgb), colour(truth[index] ?? []))));

/** The card's colours as numbers of another RGB space, by culori. */
function numbersIn(mode: 'p3' | 'a98'): number[][] {
  const convert = converter(mode);
  return CARD_COLOURS.map((rgb) => {
    const { r, g, b } = convert(colour(rgb));
    return [r, g, b].map((value) => Math.round(value * 255));
  });
}

describe('a profile leads to sRGB within 1 dE00', () => {
  test.each(['png', 'jpeg', 'webp', 'tiff', 'avif'] as const)('Display P3 in %s', async (format) => {
    const options = {
      jpeg: { quality: 98, chromaSubsampling: '4:4:4' },
      webp: { lossless: true },
      avif: { lossless: true },
    };
    const bytes = await card()
      .withIccProfile('p3')
      .toFormat(format, format in options ? options[format as keyof typeof options] : {})
      .toBuffer();
    expect(worst(quarters(await decoded(`p3.${format}`, bytes)), CARD_COLOURS)).toBeLessThan(1);
  });

  test('Adobe RGB (1998) in PNG', async () => {
    const profile = matrixProfile(
      { red: [0.64, 0.33], green: [0.21, 0.71], blue: [0.15, 0.06], white: [0.3127, 0.329] },
      powerCurve(563 / 256),
    );
    const png = withProfile(await card(numbersIn('a98')).png().toBuffer(), profile);
    expect((await sharp(png).metadata()).hasProfile).toBe(true);
    expect(worst(quarters(await decoded('adobe.png', png)), CARD_COLOURS)).toBeLessThan(1);
  });

  test('Display P3 stated by numbers (H.273) in AVIF', async () => {
    const avif = await card(numbersIn('p3')).avif({ lossless: true }).toBuffer();
    const at = avif.indexOf('nclx');
    expect(at).toBeGreaterThan(0);
    avif.writeUInt16BE(12, at + 4);
    avif.writeUInt16BE(13, at + 6);
    expect(worst(quarters(await decoded('numbers.avif', avif)), CARD_COLOURS)).toBeLessThan(1);
  });

  test('a high-dynamic-range AVIF is refused', async () => {
    const avif = await card().avif({ lossless: true }).toBuffer();
    const at = avif.indexOf('nclx');
    avif.writeUInt16BE(9, at + 4);
    avif.writeUInt16BE(16, at + 6);
    await expect(decoded('hdr.avif', avif)).rejects.toMatchObject({ code: 'picture-kind-refused' });
  });
});

describe('other kinds of pixels', () => {
  test('grey comes as three equal channels', async () => {
    const picture = await decoded(
      'grey.jpg',
      await card().greyscale().toColourspace('b-w').jpeg().toBuffer(),
    );
    for (const [r, g, b] of quarters(picture)) expect([g, b]).toEqual([r, r]);
  });

  test('16 bits are rounded, not cut', async () => {
    const wide = Uint16Array.from(cardPixels(), (value) => value * 257 + 120);
    const png = await sharp(wide, { raw: { width: 256, height: 160, channels: 3 } })
      .toColourspace('rgb16')
      .png()
      .toBuffer();
    expect((await sharp(png).metadata()).depth).toBe('ushort');
    expect(quarters(await decoded('wide.png', png))).toEqual(CARD_COLOURS.map((rgb) => [...rgb]));
  });

  test('transparency lies on white', async () => {
    const picture = await decoded(
      'clear.png',
      await card(CARD_COLOURS.map((rgb) => [...rgb, 0]))
        .png()
        .toBuffer(),
    );
    expect(quarters(picture)).toEqual(CARD_COLOURS.map(() => [255, 255, 255]));
  });

  test('CMYK comes near the colours it was made from', async () => {
    const cmyk = await card().toColourspace('cmyk').jpeg({ quality: 98 }).toBuffer();
    expect((await sharp(cmyk).metadata()).space).toBe('cmyk');
    // The round trip through a press's gamut moves these four by up to 6 dE00 in libvips itself.
    expect(worst(quarters(await decoded('press.jpg', cmyk)), CARD_COLOURS)).toBeLessThan(8);
  });

  test('a picture is never enlarged', async () => {
    expect(await decoded('small.png', await card().png().toBuffer())).toMatchObject({
      width: 256,
      height: 160,
    });
  });
});

describe('all eight EXIF orientations come upright', () => {
  const ORIENTATIONS = [1, 2, 3, 4, 5, 6, 7, 8] as const;
  const FORMATS = ['jpeg', 'png', 'webp', 'tiff'] as const;
  const cases = FORMATS.flatMap((format) => ORIENTATIONS.map((orientation) => ({ format, orientation })));

  /** Exif 2.32, tag 274: at which sides of the upright picture the stored row 0 and column 0 lie. */
  const SIDES: Record<number, readonly [string, string]> = {
    1: ['top', 'left'],
    2: ['top', 'right'],
    3: ['bottom', 'right'],
    4: ['bottom', 'left'],
    5: ['left', 'top'],
    6: ['right', 'top'],
    7: ['right', 'bottom'],
    8: ['left', 'bottom'],
  };

  function stored(orientation: number): Sharp {
    const upright = cardPixels();
    const sides = SIDES[orientation] ?? ['top', 'left'];
    const [width, height] = orientation >= 5 ? [160, 256] : [256, 160];
    const samples = new Uint8Array(upright.length);
    for (let row = 0; row < height; row++) {
      for (let column = 0; column < width; column++) {
        const place = { x: 0, y: 0 };
        for (const [side, from] of [[sides[0], row] as const, [sides[1], column] as const]) {
          if (side === 'left') place.x = from;
          if (side === 'right') place.x = 255 - from;
          if (side === 'top') place.y = from;
          if (side === 'bottom') place.y = 159 - from;
        }
        const at = (place.y * 256 + place.x) * 3;
        samples.set(upright.subarray(at, at + 3), (row * width + column) * 3);
      }
    }
    return sharp(samples, { raw: { width, height, channels: 3 } });
  }

  test.each(cases)('$format, orientation $orientation', async ({ format, orientation }) => {
    const options = {
      jpeg: { quality: 98, chromaSubsampling: '4:4:4' },
      png: {},
      webp: { lossless: true },
      tiff: {},
    };
    const bytes = await stored(orientation)
      .withMetadata({ orientation })
      .toFormat(format, options[format])
      .toBuffer();
    const name = `turned-${orientation}.${format}`;
    const path = await folder.put(name, bytes);
    await expect(inspect(path, name)).resolves.toMatchObject({ width: 256, height: 160 });
    const picture = await decoded(name, bytes);
    expect([picture.width, picture.height]).toEqual([256, 160]);
    expect(worst(quarters(picture), CARD_COLOURS)).toBeLessThan(2);
  });
});
