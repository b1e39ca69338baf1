/**
 * From one tap on a card to a box inside it.
 *
 * In the flow: a tapped point of the photo -> [propose-card] -> box of a card that a person corrects. A box grows
 * from the point, side by side, while what it takes in looks like the place that was tapped. Pure. Own method.
 */
import type { Card, FractionPoint } from '../contract/setup.ts';
import type { EncodedRaster } from '../image/raster.ts';

/** Half side of the patch whose mean is the colour of the card, pixels. */
const PATCH = 2;
/** Farthest that a pixel's channels may lie from that mean, 8-bit codes: noise and light that falls off. */
const ALIKE = 18;
/** Share of a row or column that must look like the card for the box to take it in. */
const ENOUGH = 0.94;
/** Largest box, as a share of the photo's side: a wall is no card. */
const LARGEST = 0.3;
/** Smallest side of a box that was found, pixels. */
const SMALLEST_PX = 7;
/** What is kept clear of the card's own edge, as a share of the box. */
const CLEAR = 0.06;

type Bounds = [left: number, top: number, right: number, bottom: number];

function meanAround({ samples, widthPx, heightPx }: EncodedRaster, x: number, y: number): number[] {
  const sum = [0, 0, 0];
  let count = 0;
  for (let row = Math.max(0, y - PATCH); row <= Math.min(heightPx - 1, y + PATCH); row++) {
    for (let column = Math.max(0, x - PATCH); column <= Math.min(widthPx - 1, x + PATCH); column++) {
      const at = (row * widthPx + column) * 3;
      sum.forEach((value, channel) => {
        sum[channel] = value + (samples[at + channel] as number);
      });
      count++;
    }
  }
  return sum.map((value) => value / count);
}

/** The line of pixels that the box would take in on one side (0 left, 1 top, 2 right, 3 bottom); null at the rim. */
function lineBeside(
  [left, top, right, bottom]: Bounds,
  side: number,
  { widthPx, heightPx }: EncodedRaster,
): Bounds | null {
  if (side === 0) return left > 0 ? [left - 1, top, left, bottom] : null;
  if (side === 1) return top > 0 ? [left, top - 1, right, top] : null;
  if (side === 2) return right < widthPx ? [right, top, right + 1, bottom] : null;
  return bottom < heightPx ? [left, bottom, right, bottom + 1] : null;
}

function looksAlike(raster: EncodedRaster, [left, top, right, bottom]: Bounds, mean: number[]): boolean {
  let alike = 0;
  for (let y = top; y < bottom; y++) {
    for (let x = left; x < right; x++) {
      const at = (y * raster.widthPx + x) * 3;
      const away = mean.map((value, channel) => Math.abs((raster.samples[at + channel] as number) - value));
      if (Math.max(...away) <= ALIKE) alike++;
    }
  }
  return alike >= ENOUGH * (right - left) * (bottom - top);
}

/** Whether the box may take in one more line of pixels on a side. */
function takesIn(raster: EncodedRaster, bounds: Bounds, side: number, mean: number[]): boolean {
  const across = side % 2 === 0;
  const long = across ? bounds[2] - bounds[0] : bounds[3] - bounds[1];
  if (long >= LARGEST * (across ? raster.widthPx : raster.heightPx)) return false;
  const line = lineBeside(bounds, side, raster);
  return line !== null && looksAlike(raster, line, mean);
}

/** Grows a box from one pixel until no side takes in another line. */
function grown(raster: EncodedRaster, x: number, y: number): Bounds {
  const mean = meanAround(raster, x, y);
  const bounds: Bounds = [x, y, x + 1, y + 1];
  let open = [0, 1, 2, 3];
  while (open.length > 0) {
    open = open.filter((side) => {
      if (!takesIn(raster, bounds, side, mean)) return false;
      bounds[side] = (bounds[side] as number) + (side < 2 ? -1 : 1);
      return true;
    });
  }
  return bounds;
}

/**
 * @param at tapped point, 0..1 of the photo. @returns the box of the even patch around it, a little inside its
 *   edges, 0..1 of the photo; null where what was tapped is no even patch of a few pixels.
 */
export function proposeCard(raster: EncodedRaster, [x, y]: FractionPoint): Card['box'] | null {
  const { widthPx, heightPx } = raster;
  const held = (share: number, length: number): number =>
    Math.min(length - 1, Math.max(0, Math.floor(share * length)));
  const [left, top, right, bottom] = grown(raster, held(x, widthPx), held(y, heightPx));
  const [width, height] = [right - left, bottom - top];
  if (Math.min(width, height) < SMALLEST_PX) return null;
  return [
    (left + CLEAR * width) / widthPx,
    (top + CLEAR * height) / heightPx,
    (right - CLEAR * width) / widthPx,
    (bottom - CLEAR * height) / heightPx,
  ];
}
