/**
 * What the boxes of an AVIF or HEIC file say about its main picture: size, turn, colour.
 *
 * In the flow: sniff → [isobmff] → inspect, heic, original. Pure.
 * Source: ISO/IEC 14496-12 (boxes), ISO/IEC 23008-12 (items and their properties), ITU-T H.273 (colour numbers).
 */

/** Colour of a picture as its file states it. */
export type StatedColour =
  | { readonly kind: 'profile'; readonly icc: Buffer }
  | { readonly kind: 'numbers'; readonly primaries: number; readonly transfer: number };

/** The main picture of an ISO base media file. Sizes in pixels, after the turn its own properties ask for. */
export interface MainItem {
  readonly width: number;
  readonly height: number;
  /** The ICC profile when there is one, else the H.273 numbers, else null. */
  readonly colour: StatedColour | null;
  /** Bits of a sample, 8 where the file does not say. */
  readonly bits: number;
  /** Whether the file also holds a sequence (a `moov` box). */
  readonly sequence: boolean;
}

interface Box {
  readonly type: string;
  /** First and last byte of the content. */
  readonly start: number;
  readonly end: number;
}

/** Deeper or longer lists than these are not made by any encoder. */
const MAX_BOXES = 20_000;

/**
 * @param bytes The file, or its beginning as far as the end of `meta`.
 * @returns null when there is no main picture with a size.
 */
export function readMainItem(bytes: Buffer): MainItem | null {
  const top = boxes(bytes, 0, bytes.length);
  const meta = top.find((box) => box.type === 'meta');
  if (!meta) return null;
  const inside = boxes(bytes, meta.start + 4, meta.end);
  const pitm = inside.find((box) => box.type === 'pitm');
  const iprp = inside.find((box) => box.type === 'iprp');
  if (!pitm || !iprp || pitm.end - pitm.start < 6) return null;
  const itemId =
    bytes[pitm.start] === 0 ? bytes.readUInt16BE(pitm.start + 4) : readUInt32(bytes, pitm.start + 4);
  const properties = boxes(bytes, iprp.start, iprp.end);
  const ipco = properties.find((box) => box.type === 'ipco');
  if (!ipco) return null;
  const all = boxes(bytes, ipco.start, ipco.end);
  const own = properties
    .filter((box) => box.type === 'ipma')
    .flatMap((box) => associations(bytes, box, itemId))
    .flatMap((index) => all[index - 1] ?? []);
  return mainItem(
    bytes,
    own,
    top.some((box) => box.type === 'moov'),
  );
}

function mainItem(bytes: Buffer, own: readonly Box[], sequence: boolean): MainItem | null {
  const size = own.find((box) => box.type === 'ispe');
  if (!size || size.end - size.start < 12) return null;
  let [width, height] = [bytes.readUInt32BE(size.start + 4), bytes.readUInt32BE(size.start + 8)];
  const turn = own.find((box) => box.type === 'irot');
  if (turn && ((bytes[turn.start] ?? 0) & 1) === 1) [width, height] = [height, width];
  const depth = own.find((box) => box.type === 'pixi');
  const bits = depth ? bytes[depth.start + 5] || 8 : 8;
  return { width, height, colour: colourOf(bytes, own), bits, sequence };
}

function colourOf(bytes: Buffer, own: readonly Box[]): StatedColour | null {
  const stated = own.filter((box) => box.type === 'colr' && box.end - box.start >= 4);
  const kind = (box: Box) => bytes.toString('latin1', box.start, box.start + 4);
  const profile = stated.find((box) => kind(box) === 'prof' || kind(box) === 'rICC');
  if (profile) return { kind: 'profile', icc: bytes.subarray(profile.start + 4, profile.end) };
  const numbers = stated.find((box) => kind(box) === 'nclx' && box.end - box.start >= 11);
  if (!numbers) return null;
  return {
    kind: 'numbers',
    primaries: bytes.readUInt16BE(numbers.start + 4),
    transfer: bytes.readUInt16BE(numbers.start + 6),
  };
}

/** Indexes (from 1) of the properties of one item, ISO/IEC 23008-12 §9.3.2. */
function associations(bytes: Buffer, box: Box, itemId: number): number[] {
  const version = bytes[box.start] ?? 0;
  const wide = ((bytes[box.start + 3] ?? 0) & 1) === 1;
  const entries = Math.min(readUInt32(bytes, box.start + 4), MAX_BOXES);
  let at = box.start + 8;
  for (let entry = 0; entry < entries && at + 5 <= box.end; entry++) {
    const id = version < 1 ? bytes.readUInt16BE(at) : readUInt32(bytes, at);
    at += version < 1 ? 2 : 4;
    const count = bytes[at] ?? 0;
    at += 1;
    const width = wide ? 2 : 1;
    if (id === itemId && at + count * width <= box.end) {
      return Array.from({ length: count }, (_, index) =>
        wide ? bytes.readUInt16BE(at + index * 2) & 0x7fff : (bytes[at + index] ?? 0) & 0x7f,
      );
    }
    at += count * width;
  }
  return [];
}

function boxes(bytes: Buffer, from: number, end: number): Box[] {
  const found: Box[] = [];
  for (let at = from; at + 8 <= end && found.length < MAX_BOXES; ) {
    let length = bytes.readUInt32BE(at);
    let head = 8;
    if (length === 1 && at + 16 <= end) {
      length = Number(bytes.readBigUInt64BE(at + 8));
      head = 16;
    }
    if (length === 0) length = end - at;
    if (length < head) break;
    const boxEnd = Math.min(at + length, end);
    found.push({ type: bytes.toString('latin1', at + 4, at + 8), start: at + head, end: boxEnd });
    at += length;
  }
  return found;
}

function readUInt32(bytes: Buffer, at: number): number {
  return at + 4 <= bytes.length ? bytes.readUInt32BE(at) : 0;
}
