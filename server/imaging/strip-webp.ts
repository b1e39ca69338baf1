/**
 * A WebP without anything but its pixels and profile, losslessly: the compressed data is copied, not re-made.
 *
 * In the flow: inspect → original → [strip-webp] → blob. Pure.
 * Source: RFC 9649 (WebP Image Format), §§2.5–2.7.
 */
import { cleanProfile } from './icc.ts';
import { truncated, unreadable } from './problems.ts';

const HAS_PROFILE = 0x20;
const HAS_ALPHA = 0x10;
const PIXELS = new Set(['VP8 ', 'VP8L', 'ALPH']);

/**
 * @param bytes A whole, still WebP file.
 * @returns The same picture, bit for bit, with no EXIF, XMP or unknown chunk and nothing after its end.
 * @throws Problem `picture-unreadable` when the file ends before its picture does.
 */
export function stripWebp(bytes: Buffer): Buffer {
  const chunks: Buffer[] = [];
  const end = 8 + bytes.readUInt32LE(4);
  if (end > bytes.length + 1) throw truncated(bytes.length);
  let pixels = false;
  for (let at = 12; at + 8 <= Math.min(end, bytes.length); ) {
    const type = bytes.toString('latin1', at, at + 4);
    const length = bytes.readUInt32LE(at + 4);
    if (at + 8 + length > bytes.length) throw truncated(bytes.length);
    const data = bytes.subarray(at + 8, at + 8 + length);
    const kept = keep(type, data);
    if (kept) chunks.push(writeChunk(type, kept));
    pixels ||= type === 'VP8 ' || type === 'VP8L';
    at += 8 + length + (length & 1);
  }
  if (!pixels) throw unreadable('WebP');
  return assemble(chunks);
}

function keep(type: string, data: Buffer): Buffer | null {
  if (type === 'VP8X') return extendedHeader(data);
  if (type === 'ICCP') return cleanProfile(data);
  return PIXELS.has(type) ? data : null;
}

/** The extended header with every flag but profile and alpha taken away. */
function extendedHeader(data: Buffer): Buffer {
  if (data.length < 10) throw unreadable('WebP');
  const header = Buffer.from(data.subarray(0, 10));
  header[0] = (header[0] ?? 0) & (HAS_PROFILE | HAS_ALPHA);
  return header;
}

function assemble(chunks: Buffer[]): Buffer {
  const hasProfile = chunks.some((chunk) => chunk.toString('latin1', 0, 4) === 'ICCP');
  for (const chunk of chunks) {
    if (chunk.toString('latin1', 0, 4) === 'VP8X' && !hasProfile) chunk[8] = (chunk[8] ?? 0) & ~HAS_PROFILE;
  }
  const body = Buffer.concat(chunks);
  const head = Buffer.from('RIFF\0\0\0\0WEBP', 'latin1');
  head.writeUInt32LE(body.length + 4, 4);
  return Buffer.concat([head, body]);
}

function writeChunk(type: string, data: Buffer): Buffer {
  const head = Buffer.alloc(8);
  head.write(type, 0, 'latin1');
  head.writeUInt32LE(data.length, 4);
  return Buffer.concat([head, data, Buffer.alloc(data.length & 1)]);
}
