/**
 * PNG files as lists of chunks: what a stored original keeps, and an ICC profile put in without touching pixels.
 *
 * In the flow: inspect → original → [png-chunks] → blob. Pure but for zlib.
 * Source: Portable Network Graphics (PNG) Specification, Third Edition, W3C 2025, §§5, 11.
 */
import { crc32, deflateSync, inflateSync } from 'node:zlib';
import { cleanProfile } from './icc.ts';
import { truncated, unreadable } from './problems.ts';

/** Pixels and how their colour is meant; nothing else. */
const KEPT = new Set([
  'IHDR',
  'PLTE',
  'IDAT',
  'IEND',
  'tRNS',
  'gAMA',
  'cHRM',
  'sRGB',
  'sBIT',
  'cICP',
  'iCCP',
]);

/** No honest profile is larger; an inflated bomb is. */
const MAX_PROFILE_BYTES = 8_000_000;

interface Chunk {
  readonly type: string;
  readonly data: Buffer;
}

/** Chunks up to and with IEND. @throws Problem `picture-unreadable` when the file ends before IEND. */
export function readChunks(bytes: Buffer): Chunk[] {
  const chunks: Chunk[] = [];
  for (let at = 8; ; ) {
    if (at + 12 > bytes.length) throw truncated(bytes.length);
    const length = bytes.readUInt32BE(at);
    const type = bytes.toString('latin1', at + 4, at + 8);
    if (at + 12 + length > bytes.length) throw truncated(bytes.length);
    chunks.push({ type, data: bytes.subarray(at + 8, at + 8 + length) });
    if (type === 'IEND') return chunks;
    at += 12 + length;
  }
}

/** Whether a PNG is animated (it has an `acTL` chunk), and its number of frames; null when it is a single picture. */
export function framesOfPng(head: Buffer): number | null {
  for (let at = 8; at + 12 <= head.length; ) {
    const length = head.readUInt32BE(at);
    const type = head.toString('latin1', at + 4, at + 8);
    if (type === 'acTL' && at + 12 <= head.length) return head.readUInt32BE(at + 8);
    if (type === 'IDAT' || type === 'IEND') return null;
    at += 12 + length;
  }
  return null;
}

/** The same pixels and profile without text, time, Exif, private chunks or anything after IEND. */
export function stripPng(bytes: Buffer): Buffer {
  const kept: Chunk[] = [];
  for (const chunk of readChunks(bytes)) {
    if (!KEPT.has(chunk.type)) continue;
    if (chunk.type !== 'iCCP') {
      kept.push(chunk);
      continue;
    }
    const profile = cleanProfile(inflateProfile(chunk.data));
    if (profile) kept.push(profileChunk(profile));
  }
  return writeChunks(kept);
}

/** The PNG with this ICC profile in place of whatever described its colour; pixels untouched. */
export function withProfile(png: Buffer, profile: Buffer | null): Buffer {
  const describing = new Set(['iCCP', 'sRGB', 'gAMA', 'cHRM', 'cICP']);
  const kept = readChunks(png).filter((chunk) => KEPT.has(chunk.type) && !describing.has(chunk.type));
  if (profile) kept.splice(1, 0, profileChunk(profile));
  return writeChunks(kept);
}

function inflateProfile(data: Buffer): Buffer {
  const nameEnd = data.indexOf(0);
  if (nameEnd < 0) return Buffer.alloc(0);
  try {
    return inflateSync(data.subarray(nameEnd + 2), { maxOutputLength: MAX_PROFILE_BYTES });
  } catch (cause) {
    throw unreadable('PNG', cause);
  }
}

function profileChunk(profile: Buffer): Chunk {
  return { type: 'iCCP', data: Buffer.concat([Buffer.from('profile\0\0', 'latin1'), deflateSync(profile)]) };
}

function writeChunks(chunks: readonly Chunk[]): Buffer {
  const parts: Buffer[] = [Buffer.from('\x89PNG\r\n\x1a\n', 'latin1')];
  for (const { type, data } of chunks) {
    const head = Buffer.alloc(8);
    head.writeUInt32BE(data.length, 0);
    head.write(type, 4, 'latin1');
    const check = Buffer.alloc(4);
    check.writeUInt32BE(crc32(data, crc32(head.subarray(4))) >>> 0, 0);
    parts.push(head, data, check);
  }
  return Buffer.concat(parts);
}
