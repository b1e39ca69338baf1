/**
 * A JPEG without anything but its pixels and profile, losslessly: the compressed data is copied, not re-made.
 *
 * In the flow: inspect → original → [strip-jpeg] → blob. Pure.
 * Kept: JFIF (its thumbnail cut off), the ICC profile (cleaned), Adobe's APP14 (it names the colour transform).
 * Dropped: every other APPn, comments, and whatever follows the end of the picture (further pictures, films).
 * Source: ITU-T T.81 (1992) annex B; JFIF 1.02; ICC.1:2022 annex B.4.
 */
import { cleanProfile } from './icc.ts';
import { truncated, unreadable } from './problems.ts';

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP2 = 0xe2;
const APP14 = 0xee;
const APP15 = 0xef;
const COM = 0xfe;
const ICC_NAME = 'ICC_PROFILE\0';
/** Bytes of profile that fit into one segment beside its name and two counters. */
const ICC_PART_BYTES = 65_519;

/**
 * @param bytes A whole JPEG file.
 * @returns The same picture, bit for bit, with no metadata. EXIF orientation is gone: keep it beside.
 * @throws Problem `picture-unreadable` when the file ends before its picture does or is no JPEG inside.
 */
export function stripJpeg(bytes: Buffer): Buffer {
  const kept: Kept = { jfif: null, profileParts: new Map(), body: [] };
  let at = 2;
  for (;;) {
    const marker = markerAt(bytes, at);
    if (marker.code === EOI) break;
    const start = marker.at;
    if (start + 4 > bytes.length) throw truncated(bytes.length);
    at = start + 2 + bytes.readUInt16BE(start + 2);
    if (at > bytes.length) throw truncated(bytes.length);
    sortSegment(bytes.subarray(start, at), marker.code, kept);
    if (marker.code !== SOS) continue;
    const scanEnd = endOfScan(bytes, at);
    kept.body.push(bytes.subarray(at, scanEnd));
    at = scanEnd;
  }
  const soi = Buffer.from([0xff, SOI]);
  const eoi = Buffer.from([0xff, EOI]);
  const jfif = kept.jfif ? [kept.jfif] : [];
  return Buffer.concat([soi, ...jfif, ...profileSegments(kept.profileParts), ...kept.body, eoi]);
}

interface Kept {
  jfif: Buffer | null;
  readonly profileParts: Map<number, Buffer>;
  readonly body: Buffer[];
}

function sortSegment(segment: Buffer, code: number, kept: Kept): void {
  if (code === APP0 && isJfif(segment)) kept.jfif ??= jfifWithoutThumbnail(segment);
  else if (code === APP2 && isProfile(segment)) kept.profileParts.set(segment[16] ?? 0, segment.subarray(18));
  else if (code === APP14 && isAdobe(segment)) kept.body.push(segment);
  else if (!isMetadata(code)) kept.body.push(segment);
}

/** The next marker at or after `at`; fill bytes before it are skipped. */
function markerAt(bytes: Buffer, at: number): { at: number; code: number } {
  if (at + 2 > bytes.length) throw truncated(bytes.length);
  if (bytes[at] !== 0xff) throw unreadable('JPEG');
  let code = at + 1;
  while (bytes[code] === 0xff) code++;
  const value = bytes[code];
  if (value === undefined) throw truncated(bytes.length);
  return { at: code - 1, code: value };
}

/** Entropy-coded data runs to the first marker that is neither a stuffed zero nor a restart. */
function endOfScan(bytes: Buffer, from: number): number {
  for (
    let at = bytes.indexOf(0xff, from);
    at >= 0 && at + 1 < bytes.length;
    at = bytes.indexOf(0xff, at + 1)
  ) {
    const next = bytes[at + 1] ?? 0;
    if (next !== 0 && next !== 0xff && (next < 0xd0 || next > 0xd7)) return at;
  }
  throw truncated(bytes.length);
}

function isMetadata(code: number): boolean {
  return (code >= APP0 && code <= APP15) || code === COM;
}

/** Twelve bytes of content exactly; a longer one would carry something else behind them. */
function isAdobe(segment: Buffer): boolean {
  return segment.length === 16 && segment.toString('latin1', 4, 9) === 'Adobe';
}

function isJfif(segment: Buffer): boolean {
  return segment.length >= 18 && segment.toString('latin1', 4, 9) === 'JFIF\0';
}

/** Version, units and density stay; the thumbnail and its size go. */
function jfifWithoutThumbnail(segment: Buffer): Buffer {
  const short = Buffer.from(segment.subarray(0, 18));
  short.writeUInt16BE(16, 2);
  short.writeUInt16BE(0, 16);
  return short;
}

function isProfile(segment: Buffer): boolean {
  return segment.length > 18 && segment.toString('latin1', 4, 16) === ICC_NAME;
}

function profileSegments(parts: ReadonlyMap<number, Buffer>): Buffer[] {
  if (parts.size === 0) return [];
  const ordered = [...parts.keys()].sort((one, other) => one - other);
  const profile = cleanProfile(Buffer.concat(ordered.map((number) => parts.get(number) ?? Buffer.alloc(0))));
  if (!profile) return [];
  const count = Math.ceil(profile.length / ICC_PART_BYTES);
  return Array.from({ length: count }, (_, index) => {
    const data = profile.subarray(index * ICC_PART_BYTES, (index + 1) * ICC_PART_BYTES);
    const head = Buffer.alloc(18);
    head.writeUInt16BE(0xff00 | APP2, 0);
    head.writeUInt16BE(data.length + 16, 2);
    head.write(ICC_NAME, 4, 'latin1');
    head[16] = index + 1;
    head[17] = count;
    return Buffer.concat([head, data]);
  });
}
