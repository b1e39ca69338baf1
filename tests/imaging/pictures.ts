/**
 * Small pictures made on the spot, plain or burdened with what a camera adds, for the tests of imaging.
 */
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp, { type Sharp } from 'sharp';

/** What no stored or served file may contain, in any of the places where cameras and programs put it. */
export const SECRET = 'Owner-Wilhelmina-Serial-90817263';

export const CARD_WIDTH = 256;
export const CARD_HEIGHT = 160;
/** sRGB of the four quarters: top left, top right, bottom left, bottom right. */
export const CARD_COLOURS = [
  [200, 60, 50],
  [60, 150, 70],
  [50, 70, 170],
  [128, 128, 128],
] as const;

/** Four flat quarters. @param colours Interleaved samples of each quarter; any number of channels. */
export function cardPixels(colours: readonly (readonly number[])[] = CARD_COLOURS): Uint8Array {
  const channels = colours[0]?.length ?? 3;
  const samples = new Uint8Array(CARD_WIDTH * CARD_HEIGHT * channels);
  for (let y = 0; y < CARD_HEIGHT; y++) {
    for (let x = 0; x < CARD_WIDTH; x++) {
      const quarter = (x >= CARD_WIDTH / 2 ? 1 : 0) + (y >= CARD_HEIGHT / 2 ? 2 : 0);
      samples.set(colours[quarter] ?? [], (y * CARD_WIDTH + x) * channels);
    }
  }
  return samples;
}

export function card(colours: readonly (readonly number[])[] = CARD_COLOURS): Sharp {
  const channels = (colours[0]?.length ?? 3) as 1 | 2 | 3 | 4;
  return sharp(cardPixels(colours), { raw: { width: CARD_WIDTH, height: CARD_HEIGHT, channels } });
}

/** The middle pixel of each quarter of an upright decoded card. */
export function quarters(picture: { width: number; height: number; samples: ArrayLike<number> }): number[][] {
  const { width, height, samples } = picture;
  return [0, 1, 2, 3].map((quarter) => {
    const x = Math.floor(width * (quarter % 2 === 0 ? 0.25 : 0.75));
    const y = Math.floor(height * (quarter < 2 ? 0.25 : 0.75));
    const at = (y * width + x) * 3;
    return [samples[at] ?? -1, samples[at + 1] ?? -1, samples[at + 2] ?? -1];
  });
}

/** Exif with a place, a maker and a serial number. */
const EXIF = {
  IFD0: { Make: SECRET, Artist: SECRET, Copyright: SECRET },
  IFD2: { BodySerialNumber: SECRET, CameraOwnerName: SECRET },
  IFD3: {
    GPSLatitudeRef: 'N',
    GPSLatitude: '47/1 30/1 0/1',
    GPSLongitudeRef: 'E',
    GPSLongitude: '11/1 0/1 0/1',
  },
};

export function burdened(picture: Sharp): Sharp {
  return picture
    .withExif(EXIF)
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><owner>${SECRET}</owner></x:xmpmeta>`);
}

/** A JPEG with everything: Exif, XMP, IPTC, a comment, a second picture's index and trailing bytes. */
export async function burdenedJpeg(): Promise<Buffer> {
  const jpeg = await burdened(card()).withIccProfile('p3').jpeg({ quality: 95 }).toBuffer();
  const segment = (code: number, text: string) => {
    const data = Buffer.from(text, 'latin1');
    const head = Buffer.from([0xff, code, 0, 0]);
    head.writeUInt16BE(data.length + 2, 2);
    return Buffer.concat([head, data]);
  };
  return Buffer.concat([
    jpeg.subarray(0, 2),
    segment(0xed, `Photoshop 3.0\x008BIM\x04\x04\0\0\0\0\0\x20${SECRET}`),
    segment(0xe2, `MPF\0MM\0*${SECRET}`),
    segment(0xfe, SECRET),
    segment(0xe0, `JFXX\0\x10${SECRET}`),
    segment(0xef, SECRET),
    jpeg.subarray(2),
    jpeg,
    Buffer.from(SECRET),
  ]);
}

/** A PNG with text, Exif, a private chunk and trailing bytes. */
export async function burdenedPng(): Promise<Buffer> {
  const png = await burdened(card()).withIccProfile('p3').png().toBuffer();
  const chunk = (type: string, text: string) => {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(text.length, 0);
    head.write(type, 4, 'latin1');
    return Buffer.concat([head, Buffer.from(text, 'latin1'), Buffer.alloc(4)]);
  };
  const afterHeader = 8 + 25;
  return Buffer.concat([
    png.subarray(0, afterHeader),
    chunk('tEXt', `Author\0${SECRET}`),
    chunk('prIv', SECRET),
    png.subarray(afterHeader),
    Buffer.from(SECRET),
  ]);
}

export interface Folder {
  readonly path: string;
  /** Writes a file and says where. */
  put(name: string, bytes: Uint8Array | string): Promise<string>;
  remove(): Promise<void>;
}

export async function aFolder(): Promise<Folder> {
  const path = await mkdtemp(join(tmpdir(), 'veilstep-pictures-'));
  return {
    path,
    async put(name, bytes) {
      await writeFile(join(path, name), bytes);
      return join(path, name);
    },
    remove: () => rm(path, { recursive: true, force: true }),
  };
}
