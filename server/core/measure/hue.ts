/**
 * Hue of a plane and how its colours share the hue families. Pure.
 *
 * Families by hue angle, half-open, in degrees: red 340–42, orange 42–76, yellow 76–105, green 105–215,
 * blue 215–295, violet 295–340.
 */
import { chromaOf, hueDegOf } from '../colour/lab.ts';
import type { HueFamily } from '../contract/measures.ts';

/** Shortest mean (a*, b*) that still has a direction. */
const SHORTEST_MEAN = 3;
/** C* below which a pixel belongs to no family. */
const FAMILY_CHROMA = 8;

/**
 * A family boundary as a direction. sin(h − boundary) tells on which side a colour lies, without its angle;
 * that holds within half a turn, so the two halves of the circle (b* ≥ 0 and below) are looked at apart.
 */
function boundary(hueDeg: number): readonly [number, number] {
  return [Math.cos((hueDeg * Math.PI) / 180), Math.sin((hueDeg * Math.PI) / 180)];
}

const [COS_42, SIN_42] = boundary(42);
const [COS_76, SIN_76] = boundary(76);
const [COS_105, SIN_105] = boundary(105);
const [COS_215, SIN_215] = boundary(215);
const [COS_295, SIN_295] = boundary(295);
const [COS_340, SIN_340] = boundary(340);

const FAMILIES = [
  'red',
  'orange',
  'yellow',
  'green',
  'blue',
  'violet',
] as const satisfies readonly HueFamily[];

/** Place in `FAMILIES`: counting by number is several times quicker than by name. */
function familyIndex(a: number, b: number): number {
  if (b >= 0) {
    if (COS_42 * b < SIN_42 * a) return 0;
    if (COS_76 * b < SIN_76 * a) return 1;
    return COS_105 * b < SIN_105 * a ? 2 : 3;
  }
  if (COS_215 * b < SIN_215 * a) return 3;
  if (COS_295 * b < SIN_295 * a) return 4;
  return COS_340 * b < SIN_340 * a ? 5 : 0;
}

/** Family of a colour that is not neutral. */
export function hueFamilyOf(a: number, b: number): HueFamily {
  return FAMILIES[familyIndex(a, b)] as HueFamily;
}

function meanOf(values: Float32Array): number {
  let sum = 0;
  for (let at = 0; at < values.length; at++) sum += values[at] as number;
  return sum / values.length;
}

/** Angle of the mean (a*, b*), degrees; null when that mean is shorter than 3. */
export function meanHueDeg(a: Float32Array, b: Float32Array): number | null {
  const [meanA, meanB] = [meanOf(a), meanOf(b)];
  return chromaOf(meanA, meanB) < SHORTEST_MEAN ? null : hueDegOf(meanA, meanB);
}

/** Share of all samples with C* ≥ 8 in each family; the rest is neutral. */
export function hueSharesOf(
  a: Float32Array,
  b: Float32Array,
  chroma: Float32Array,
): Record<HueFamily, number> {
  const counts = new Uint32Array(FAMILIES.length);
  for (let at = 0; at < chroma.length; at++) {
    if ((chroma[at] as number) < FAMILY_CHROMA) continue;
    const family = familyIndex(a[at] as number, b[at] as number);
    counts[family] = (counts[family] as number) + 1;
  }
  const shares = FAMILIES.map((family, at) => [family, (counts[at] as number) / chroma.length]);
  return Object.fromEntries(shares) as Record<HueFamily, number>; // every family is there
}
