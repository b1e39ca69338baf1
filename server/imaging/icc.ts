/**
 * ICC profiles: one built from primaries and a transfer curve, and one cleaned of everything that is not colour.
 *
 * In the flow: HEIC and AVIF name their colour by numbers → [icc] → PNG with a profile; JPEG, PNG, WebP → cleaned.
 * A display's profile can carry its serial number and its owner's words, so those tags go.
 * Pure. Source: ICC.1:2022 (profile version 4.4); Lindbloom's matrix from primaries is the textbook one.
 */

/** Chromaticities x, y of red, green, blue and white. */
export interface Primaries {
  readonly red: readonly [number, number];
  readonly green: readonly [number, number];
  readonly blue: readonly [number, number];
  readonly white: readonly [number, number];
}

/** ICC parametric curve of type 3: Y = (aX + b)^g for X ≥ d, else cX. */
export interface Curve {
  readonly g: number;
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

/** IEC 61966-2-1. */
export const SRGB_CURVE: Curve = { g: 2.4, a: 1 / 1.055, b: 0.055 / 1.055, c: 1 / 12.92, d: 0.04045 };

/** A plain power law. */
export function powerCurve(g: number): Curve {
  return { g, a: 1, b: 0, c: 0, d: 0 };
}

/** Profile connection space white of ICC.1, D50. */
const D50: readonly number[] = [0.9642, 1, 0.8249];
/** Cone response matrix of the linear Bradford adaptation, ICC.1 annex E. */
const BRADFORD = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

/** Tags that say something about colour (ICC.1 §9.2). Whatever is not here is dropped. */
const COLOUR_TAGS = new Set(
  'A2B0 A2B1 A2B2 B2A0 B2A1 B2A2 B2D0 B2D1 B2D2 B2D3 D2B0 D2B1 D2B2 D2B3 rXYZ gXYZ bXYZ kXYZ rTRC gTRC bTRC kTRC wtpt bkpt chad gamt lumi chrm cicp'.split(
    ' ',
  ),
);

/** A version 4 display profile with these primaries and this curve. */
export function matrixProfile(primaries: Primaries, curve: Curve): Buffer {
  const adaptation = bradfordToD50(xyzOfWhite(primaries.white));
  const toXyz = multiply(adaptation, primariesMatrix(primaries));
  const column = (index: number) => xyzTag([0, 3, 6].map((row) => toXyz[row + index] ?? 0));
  const curveTag = parametricTag(curve);
  return assemble(Buffer.alloc(128), [
    ['desc', localisedText('RGB')],
    ['cprt', localisedText('CC0')],
    ['wtpt', xyzTag(D50)],
    ['rXYZ', column(0)],
    ['gXYZ', column(1)],
    ['bXYZ', column(2)],
    ['rTRC', curveTag],
    ['gTRC', curveTag],
    ['bTRC', curveTag],
    ['chad', fixedTag(adaptation)],
  ]);
}

/**
 * The profile with its colour tags only: no maker, model, serial number, date or words of its owner.
 *
 * @returns null when the bytes are no ICC profile (the picture is then read as sRGB).
 */
export function cleanProfile(profile: Buffer): Buffer | null {
  if (profile.length < 132 || profile.toString('latin1', 36, 40) !== 'acsp') return null;
  const count = profile.readUInt32BE(128);
  if (count > 200 || 132 + count * 12 > profile.length) return null;
  const version4 = (profile[8] ?? 0) >= 4;
  const tags: [string, Buffer][] = [
    ['desc', version4 ? localisedText('profile') : plainText('desc', 'profile')],
    ['cprt', version4 ? localisedText('none') : plainText('text', 'none')],
  ];
  for (let index = 0; index < count; index++) {
    const entry = 132 + index * 12;
    const name = profile.toString('latin1', entry, entry + 4);
    const start = profile.readUInt32BE(entry + 4);
    const length = profile.readUInt32BE(entry + 8);
    if (!COLOUR_TAGS.has(name)) continue;
    if (start + length > profile.length) return null;
    tags.push([name, profile.subarray(start, start + length)]);
  }
  return assemble(profile.subarray(0, 128), tags);
}

/** Header of `source` (zeros: a version 4 RGB display profile) with what could name a device or a day taken out. */
function assemble(source: Buffer, tags: readonly (readonly [string, Buffer])[]): Buffer {
  const header = Buffer.from(source);
  if (header[8] === 0) {
    header.writeUInt32BE(0x04400000, 8);
    header.write('mntrRGB XYZ ', 12, 'latin1');
    header.write('acsp', 36, 'latin1');
    [63190, 65536, 54061].forEach((value, index) => {
      header.writeUInt32BE(value, 68 + index * 4);
    });
  }
  header.fill(0, 4, 8);
  [2000, 1, 1, 0, 0, 0].forEach((value, index) => {
    header.writeUInt16BE(value, 24 + index * 2);
  });
  header.fill(0, 40, 44);
  header.fill(0, 48, 64);
  header.fill(0, 80, 128);
  const table = Buffer.alloc(4 + tags.length * 12);
  table.writeUInt32BE(tags.length, 0);
  const parts: Buffer[] = [];
  const placed = new Map<Buffer, number>();
  let at = 128 + table.length;
  tags.forEach(([name, tag], index) => {
    const start = placed.get(tag) ?? at;
    if (start === at) {
      const padded = Buffer.concat([tag, Buffer.alloc((4 - (tag.length % 4)) % 4)]);
      parts.push(padded);
      placed.set(tag, at);
      at += padded.length;
    }
    table.write(name, 4 + index * 12, 'latin1');
    table.writeUInt32BE(start, 8 + index * 12);
    table.writeUInt32BE(tag.length, 12 + index * 12);
  });
  header.writeUInt32BE(at, 0);
  return Buffer.concat([header, table, ...parts]);
}

function fixed(value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeInt32BE(Math.round(value * 65536), 0);
  return bytes;
}

function tagHead(type: string): Buffer {
  return Buffer.from(`${type}\0\0\0\0`, 'latin1');
}

function xyzTag(xyz: readonly number[]): Buffer {
  return Buffer.concat([tagHead('XYZ '), ...xyz.map(fixed)]);
}

function fixedTag(values: readonly number[]): Buffer {
  return Buffer.concat([tagHead('sf32'), ...values.map(fixed)]);
}

function parametricTag({ g, a, b, c, d }: Curve): Buffer {
  return Buffer.concat([tagHead('para'), Buffer.from([0, 3, 0, 0]), ...[g, a, b, c, d].map(fixed)]);
}

/** multiLocalizedUnicodeType with one English string. */
function localisedText(text: string): Buffer {
  const utf16 = Buffer.from(text, 'utf16le').swap16();
  const numbers = Buffer.alloc(20);
  numbers.writeUInt32BE(1, 0);
  numbers.writeUInt32BE(12, 4);
  numbers.write('enUS', 8, 'latin1');
  numbers.writeUInt32BE(utf16.length, 12);
  numbers.writeUInt32BE(28, 16);
  return Buffer.concat([tagHead('mluc'), numbers, utf16]);
}

/** Version 2 text: `desc` (textDescriptionType, empty Unicode and script parts) or `text`. */
function plainText(type: 'desc' | 'text', text: string): Buffer {
  const ascii = Buffer.from(`${text}\0`, 'latin1');
  if (type === 'text') return Buffer.concat([tagHead('text'), ascii]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(ascii.length, 0);
  return Buffer.concat([tagHead('desc'), length, ascii, Buffer.alloc(78)]);
}

function xyzOfWhite([x, y]: readonly [number, number]): number[] {
  return [x / y, 1, (1 - x - y) / y];
}

/** RGB → XYZ for these primaries, rows of three. */
function primariesMatrix({ red, green, blue, white }: Primaries): number[] {
  const [r, g, b] = [xyzOfWhite(red), xyzOfWhite(green), xyzOfWhite(blue)];
  const columns = [0, 1, 2].flatMap((row) => [r[row] ?? 0, g[row] ?? 0, b[row] ?? 0]);
  const scale = transform(inverse(columns), xyzOfWhite(white));
  return columns.map((value, index) => value * (scale[index % 3] ?? 0));
}

function bradfordToD50(white: readonly number[]): number[] {
  const from = transform(BRADFORD, white);
  const to = transform(BRADFORD, D50);
  const scaled = BRADFORD.map((value, index) => {
    const row = Math.floor(index / 3);
    return (value * (to[row] ?? 0)) / (from[row] ?? 1);
  });
  return multiply(inverse(BRADFORD), scaled);
}

function transform(matrix: readonly number[], vector: readonly number[]): number[] {
  return [0, 3, 6].map((row) =>
    [0, 1, 2].reduce((sum, index) => sum + (matrix[row + index] ?? 0) * (vector[index] ?? 0), 0),
  );
}

function multiply(left: readonly number[], right: readonly number[]): number[] {
  const columns = [0, 1, 2].map((index) =>
    transform(
      left,
      [0, 3, 6].map((row) => right[row + index] ?? 0),
    ),
  );
  return [0, 1, 2].flatMap((row) => columns.map((column) => column[row] ?? 0));
}

/** Inverse of a regular 3×3 matrix by cofactors. */
function inverse(matrix: readonly number[]): number[] {
  const at = (row: number, column: number) => matrix[(row % 3) * 3 + (column % 3)] ?? 0;
  const cofactor = (row: number, column: number) =>
    at(row + 1, column + 1) * at(row + 2, column + 2) - at(row + 1, column + 2) * at(row + 2, column + 1);
  const determinant = [0, 1, 2].reduce((sum, column) => sum + at(0, column) * cofactor(0, column), 0);
  return [0, 1, 2].flatMap((row) => [0, 1, 2].map((column) => cofactor(column, row) / determinant));
}
