/**
 * Regions in the words of Media Fragments URI 1.0 (basic), section 4.2.2: `xywh=`, pixels or per cent.
 *
 * The grammar there has whole numbers alone; written is a whole pixel box, and fractions are read all the same, for many
 * write them. Pure.
 */

export interface Region {
  unit: 'pixel' | 'percent';
  x: number;
  y: number;
  width: number;
  height: number;
}

/** The pixel in which a point lies. @param at In pixels, inside a picture of that size. */
export function pixelAround(
  [x, y]: readonly [number, number],
  size: { width: number; height: number },
): string {
  const within = (value: number, most: number) => Math.min(Math.max(Math.floor(value), 0), most - 1);
  return `xywh=pixel:${within(x, size.width)},${within(y, size.height)},1,1`;
}

/** @param fragment With or without the sign before it. @returns Null when it names no region of a still picture. */
export function readRegion(fragment: string): Region | null {
  const found = /(?:^|[#&])xywh=(?:(pixel|percent):)?([^&]*)/.exec(decoded(fragment));
  if (!found) return null;
  const numbers = (found[2] ?? '')
    .split(',')
    .map((part) => (/^\d+(\.\d+)?$/.test(part) ? Number(part) : Number.NaN));
  const [x, y, width, height] = numbers;
  if (numbers.length !== 4 || numbers.some((number) => !Number.isFinite(number))) return null;
  if (x === undefined || y === undefined || width === undefined || height === undefined) return null;
  return { unit: found[1] === 'percent' ? 'percent' : 'pixel', x, y, width, height };
}

function decoded(fragment: string): string {
  try {
    return decodeURIComponent(fragment);
  } catch {
    return fragment;
  }
}
