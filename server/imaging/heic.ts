/**
 * HEIC to pixels, through libheif compiled to WASM: libvips as shipped with sharp cannot decode it.
 *
 * In the flow: inspect → [heic] → original. Runs in a worker: decoding 12 megapixels takes a second or two.
 * libheif applies the turn and crop stored in the file; the profile is read from its boxes by `isobmff`.
 * The only importer of libheif-js.
 */
import { createRequire } from 'node:module';
import { unreadable } from './problems.ts';

/** Interleaved RGB(A) samples of the upright picture, 8 bits each, or 16 where the file has more than 8. */
export interface HeicPixels {
  readonly width: number;
  readonly height: number;
  readonly channels: 3 | 4;
  readonly samples: Uint8Array | Uint16Array;
}

/** The part of libheif's low-level interface that is used. */
interface LibHeif {
  heif_context_alloc(): unknown;
  heif_context_free(context: unknown): void;
  heif_context_read_from_memory(context: unknown, bytes: Uint8Array): { code: unknown };
  heif_js_context_get_primary_image_handle(context: unknown): unknown;
  heif_image_handle_release(handle: unknown): void;
  heif_image_handle_has_alpha_channel(handle: unknown): boolean | number;
  heif_js_decode_image2(handle: unknown, colourSpace: unknown, chroma: unknown): unknown;
  heif_image_release(image: unknown): void;
  readonly heif_error_code: { readonly heif_error_Ok: unknown };
  readonly heif_colorspace: { readonly heif_colorspace_RGB: unknown };
  readonly heif_channel: { readonly heif_channel_interleaved: unknown };
  readonly heif_chroma: Readonly<Record<string, unknown>>;
}

interface Decoded {
  readonly image: unknown;
  readonly channels: readonly {
    readonly id: unknown;
    readonly width: number;
    readonly height: number;
    readonly stride: number;
    readonly bits_per_pixel: number;
    readonly data: Uint8Array;
  }[];
}

let loaded: LibHeif | undefined;

/** The module is 1.4 MB of WASM, so it is loaded at the first HEIC. Its package types none of these calls. */
function libheif(): LibHeif {
  loaded ??= createRequire(import.meta.url)('libheif-js/wasm-bundle') as LibHeif;
  return loaded;
}

/**
 * @param bits Bits of a sample as the file states them.
 * @throws Problem `picture-unreadable` when the main picture cannot be decoded.
 */
export async function decodeHeic(bytes: Buffer, bits: number): Promise<HeicPixels> {
  const heif = libheif();
  const context = heif.heif_context_alloc();
  try {
    const read = heif.heif_context_read_from_memory(context, bytes);
    if (read.code !== heif.heif_error_code.heif_error_Ok) throw unreadable('HEIC', read);
    const handle = heif.heif_js_context_get_primary_image_handle(context);
    if (isError(handle)) throw unreadable('HEIC', handle);
    try {
      return await decodeHandle(heif, handle, bits);
    } finally {
      heif.heif_image_handle_release(handle);
    }
  } finally {
    heif.heif_context_free(context);
  }
}

async function decodeHandle(heif: LibHeif, handle: unknown, bits: number): Promise<HeicPixels> {
  const alpha = Boolean(heif.heif_image_handle_has_alpha_channel(handle));
  const deep = bits > 8;
  const layout = deep ? (alpha ? 'RRGGBBAA_LE' : 'RRGGBB_LE') : alpha ? 'RGBA' : 'RGB';
  const chroma = heif.heif_chroma[`heif_chroma_interleaved_${layout}`];
  const decoded = await heif.heif_js_decode_image2(handle, heif.heif_colorspace.heif_colorspace_RGB, chroma);
  if (isError(decoded) || !decoded) throw unreadable('HEIC', decoded);
  const { image, channels } = decoded as Decoded;
  const plane = channels.find((channel) => channel.id === heif.heif_channel.heif_channel_interleaved);
  if (!plane) throw unreadable('HEIC');
  const count = alpha ? 4 : 3;
  const packed = pack(plane, count * (deep ? 2 : 1));
  heif.heif_image_release(image);
  const samples = deep ? widen(packed, plane.bits_per_pixel) : packed;
  return { width: plane.width, height: plane.height, channels: count, samples };
}

/** Rows without the padding that libheif leaves at their ends. */
function pack(plane: Decoded['channels'][number], bytesPerPixel: number): Uint8Array {
  const rowBytes = plane.width * bytesPerPixel;
  const packed = new Uint8Array(rowBytes * plane.height);
  for (let row = 0; row < plane.height; row++) {
    const start = row * plane.stride;
    packed.set(plane.data.subarray(start, start + rowBytes), row * rowBytes);
  }
  return packed;
}

/** 10- or 12-bit little-endian samples stretched to the whole 16 bits. */
function widen(bytes: Uint8Array, bits: number): Uint16Array {
  const full = 65_535 / (2 ** bits - 1);
  const samples = new Uint16Array(bytes.length / 2);
  for (let index = 0; index < samples.length; index++) {
    samples[index] = Math.round(((bytes[index * 2] ?? 0) | ((bytes[index * 2 + 1] ?? 0) << 8)) * full);
  }
  return samples;
}

/** libheif answers with an object that has a `code` where something went wrong. */
function isError(value: unknown): boolean {
  return !value || (typeof value === 'object' && 'code' in value && Boolean(value.code));
}
