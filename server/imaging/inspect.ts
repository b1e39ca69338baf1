/**
 * What an uploaded file is, from its header alone: kind, size, turn, profile, and whether it is taken in.
 *
 * In the flow: upload → [inspect] → original → renditions. IO: reads the file; nothing is decoded here.
 */
import { open, readFile, stat } from 'node:fs/promises';
import sharp from 'sharp';
import { fileEmpty, fileTooLarge, MAX_FILE_BYTES } from '../core/contract/upload-limits.ts';
import { say } from '../core/say/say.ts';
import { readMainItem } from './isobmff.ts';
import { MAX_PIXELS, MAX_SIDE_RATIO, MIN_SIDE_PX } from './limits.ts';
import { framesOfPng } from './png-chunks.ts';
import {
  animated,
  kindRefused,
  notAPicture,
  tooManyPixels,
  tooSmall,
  tooThin,
  truncated,
  unreadable,
} from './problems.ts';
import { type PictureType, SNIFF_BYTES, sniff } from './sniff.ts';

/** What is known of a file before its pixels are read. */
export interface Inspection {
  readonly type: PictureType;
  /** Upright pixels. */
  readonly width: number;
  readonly height: number;
  /** EXIF orientation 1..8 that the decoder leaves to us; 1 where the format applies its own turn. */
  readonly orientation: number;
  readonly sizeBytes: number;
  /** Whether the file carries an ICC profile or states its colour by numbers. */
  readonly profiled: boolean;
}

/** Names of the kinds for sentences. */
export const TYPE_NAMES: Readonly<Record<PictureType, string>> = {
  jpeg: 'JPEG',
  png: 'PNG',
  webp: 'WebP',
  tiff: 'TIFF',
  avif: 'AVIF',
  heic: 'HEIC',
};

/**
 * Looks at a file without decoding it.
 *
 * @param path The file.
 * @param name Its name as the sender gave it, for sentences only; nothing is concluded from it.
 * @param mostBytes How long it may be; what was stored as PNG may be longer than its upload was.
 * @throws Problem for anything that is not one still picture within the limits.
 */
export async function inspect(path: string, name: string, mostBytes = MAX_FILE_BYTES): Promise<Inspection> {
  const { size } = await stat(path);
  if (size === 0) throw fileEmpty(name);
  if (size > mostBytes) throw fileTooLarge(name, size);
  const type = typeOf(await readHead(path, SNIFF_BYTES), name);
  const header = await readHeader(path, type, name);
  if (header.frames > 1) throw animated(name, header.frames);
  const turned = header.orientation >= 5;
  const width = turned ? header.height : header.width;
  const height = turned ? header.width : header.height;
  checkSize(width, height);
  return {
    type,
    width,
    height,
    orientation: header.orientation,
    sizeBytes: size,
    profiled: header.profiled,
  };
}

function typeOf(head: Buffer, name: string): PictureType {
  const found = sniff(head);
  switch (found.type) {
    case 'refused':
      throw kindRefused(name, found.kind);
    case 'not-a-picture':
      throw notAPicture(name, found.likeness);
    case 'sequence':
      throw animated(name, null);
    default:
      return found.type;
  }
}

function checkSize(width: number, height: number): void {
  if (width * height > MAX_PIXELS) throw tooManyPixels(width, height);
  if (Math.min(width, height) < MIN_SIDE_PX) throw tooSmall(width, height);
  if (Math.max(width, height) > MAX_SIDE_RATIO * Math.min(width, height)) throw tooThin(width, height);
}

interface Header {
  readonly width: number;
  readonly height: number;
  readonly orientation: number;
  readonly frames: number;
  readonly profiled: boolean;
}

async function readHeader(path: string, type: PictureType, name: string): Promise<Header> {
  if (type === 'heic' || type === 'avif') {
    const item = readMainItem(await readFile(path));
    if (!item) throw unreadable(TYPE_NAMES[type]);
    if (item.sequence) throw animated(name, null);
    return { ...item, orientation: 1, frames: 1, profiled: item.colour !== null };
  }
  if (type === 'png') {
    const frames = framesOfPng(await readHead(path, 1 << 20));
    if (frames !== null) throw animated(name, frames);
  }
  return readWithSharp(path, type, name);
}

async function readWithSharp(path: string, type: PictureType, name: string): Promise<Header> {
  const found = await sharp(path, { limitInputPixels: false })
    .metadata()
    .catch(async (cause: unknown) => {
      throw (await isShort(path))
        ? truncated((await stat(path)).size, cause)
        : unreadable(TYPE_NAMES[type], cause);
    });
  if (type === 'tiff' && found.subifds) refuseRaw(name);
  return {
    width: found.width,
    height: found.height,
    orientation: found.orientation ?? 1,
    // Pages of a TIFF are pages; its first is taken. Pages of a WebP are frames.
    frames: type === 'webp' ? (found.pages ?? 1) : 1,
    profiled: found.icc !== undefined,
  };
}

/** Camera raw files are TIFFs whose first picture is a thumbnail and whose real one lies in a sub-directory. */
function refuseRaw(name: string): never {
  throw kindRefused(name, say`a raw camera file`, say`Develop it and post a JPEG or a TIFF of the result.`);
}

/** A header that ends within a few hundred bytes is a copy that broke off. */
async function isShort(path: string): Promise<boolean> {
  return (await stat(path)).size < 512;
}

async function readHead(path: string, count: number): Promise<Buffer> {
  const file = await open(path);
  try {
    const bytes = Buffer.alloc(count);
    const { bytesRead } = await file.read(bytes, 0, count, 0);
    return bytes.subarray(0, bytesRead);
  } finally {
    await file.close();
  }
}
