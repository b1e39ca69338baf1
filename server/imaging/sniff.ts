/**
 * What a file is, told by its first bytes and never by its name.
 *
 * In the flow: upload → [sniff] → inspect. Pure.
 * Source: the signatures of ITU-T T.81, the PNG specification (W3C 2003), RFC 9649 (WebP), TIFF 6.0,
 * ISO/IEC 14496-12 and 23008-12 (`ftyp` brands), ISO 32000 (PDF).
 */
import { say } from '../core/say/say.ts';

/** Kinds of picture that are taken in. */
export type PictureType = 'jpeg' | 'png' | 'webp' | 'tiff' | 'avif' | 'heic';

/** What `sniff` found. `likeness` completes "it begins like …", `kind` completes "it is …". */
export type Sniffed =
  | { readonly type: PictureType }
  | { readonly type: 'sequence' }
  | { readonly type: 'refused'; readonly kind: string }
  | { readonly type: 'not-a-picture'; readonly likeness: string };

/** Bytes that `sniff` wants to see. */
export const SNIFF_BYTES = 4096;

const HEIC_BRANDS = new Set(['heic', 'heix', 'heim', 'heis', 'mif1', 'mif2', 'miaf']);
const SEQUENCE_BRANDS = new Set(['avis', 'hevc', 'hevx', 'hevm', 'hevs', 'msf1']);

/** Signatures at the start of a file; each is Latin-1 text. */
const SIGNATURES: readonly (readonly [string, Sniffed])[] = [
  ['\xff\xd8\xff', { type: 'jpeg' }],
  ['\x89PNG\r\n\x1a\n', { type: 'png' }],
  ['II*\0', { type: 'tiff' }],
  ['MM\0*', { type: 'tiff' }],
  ['II+\0', { type: 'tiff' }],
  ['MM\0+', { type: 'tiff' }],
  ['GIF8', { type: 'refused', kind: say`a GIF` }],
  ['%PDF', { type: 'refused', kind: say`a PDF document` }],
  ['BM', { type: 'refused', kind: say`a BMP picture` }],
  ['8BPS', { type: 'refused', kind: say`a layered working file` }],
  ['\0\0\0\x0cjP  \r\n', { type: 'refused', kind: say`a JPEG 2000 picture` }],
  ['\xff\x0a', { type: 'refused', kind: say`a JPEG XL picture` }],
  ['\0\0\0\x0cJXL ', { type: 'refused', kind: say`a JPEG XL picture` }],
  ['PK\x03\x04', { type: 'not-a-picture', likeness: say`a ZIP archive` }],
  ['\x1f\x8b', { type: 'not-a-picture', likeness: say`a compressed archive` }],
  ['\x7fELF', { type: 'not-a-picture', likeness: say`a program` }],
  ['MZ', { type: 'not-a-picture', likeness: say`a program` }],
];

/**
 * Tells a file by its beginning.
 *
 * @param head The first `SNIFF_BYTES` bytes of a file, or all of a shorter one; not empty.
 */
export function sniff(head: Uint8Array): Sniffed {
  const text = latin1(head);
  if (text.startsWith('RIFF') && text.slice(8, 12) === 'WEBP') return { type: 'webp' };
  if (text.slice(4, 8) === 'ftyp') return sniffBrands(head, text);
  for (const [signature, found] of SIGNATURES) {
    if (text.startsWith(signature)) return found;
  }
  return sniffText(text);
}

function sniffBrands(head: Uint8Array, text: string): Sniffed {
  const boxBytes = new DataView(head.buffer, head.byteOffset, head.byteLength).getUint32(0);
  const end = Math.min(Math.max(boxBytes, 16), head.length);
  const brands = [text.slice(8, 12)];
  for (let at = 16; at + 4 <= end; at += 4) brands.push(text.slice(at, at + 4));
  const major = brands[0] ?? '';
  if (SEQUENCE_BRANDS.has(major)) return { type: 'sequence' };
  if (brands.includes('avif')) return { type: 'avif' };
  if (brands.some((brand) => HEIC_BRANDS.has(brand))) return { type: 'heic' };
  if (major === 'crx ') return { type: 'refused', kind: say`a raw camera file` };
  return { type: 'refused', kind: say`a film` };
}

function sniffText(text: string): Sniffed {
  const start = text.replace(/^\xef\xbb\xbf/, '').trimStart();
  if (/^(<\?xml[^>]*>\s*)?(<!--[\s\S]*?-->\s*)*(<!DOCTYPE svg[^>]*>\s*)?<svg[\s>]/i.test(start)) {
    return { type: 'refused', kind: say`an SVG drawing` };
  }
  if (/^<(!doctype html|html|head|body)/i.test(start))
    return { type: 'not-a-picture', likeness: say`a web page` };
  if (isText(text)) return { type: 'not-a-picture', likeness: say`plain text` };
  return { type: 'not-a-picture', likeness: say`no kind of picture known here` };
}

/** Text has no control characters but tab, line ends and form feed. */
function isText(text: string): boolean {
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code < 32 && code !== 9 && code !== 10 && code !== 12 && code !== 13) return false;
  }
  return true;
}

function latin1(bytes: Uint8Array): string {
  return Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).toString('latin1');
}
