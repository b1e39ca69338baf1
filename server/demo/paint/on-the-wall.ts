/**
 * A finished painting as its painter photographed it: on a wall under a warm lamp, a little askew, with two grey
 * cards beside it.
 *
 * In the flow: painting -> [on-the-wall] -> encoder; the seed stores the corners, cards and size as the painter
 * would have set them. Pure. The lamp is a gain on Bradford's responses, the rest is invented.
 */
import { RESPONSES_FROM_RGB, RGB_FROM_RESPONSES } from '../../core/colour/adaptation.ts';
import { codeOfLinear, LINEAR_OF_CODE } from '../../core/colour/transfer.ts';
import type { Card, FractionPoint } from '../../core/contract/setup.ts';
import { type Corners, project, squareToCorners } from '../../core/geometry/homography.ts';
import { diagonal3, invert3, type Matrix3, multiply3, type Triple } from '../../core/geometry/matrix3.ts';
import { type EncodedRaster, encodedRaster } from '../../core/image/raster.ts';
import { seededRandom } from './random.ts';

export const SHOT_WIDTH_PX = 2500;
export const SHOT_HEIGHT_PX = 1750;

/** Where the painting's corners lie in the photo, clockwise from its top left: turned and seen from a little below. */
export const SHOT_CORNERS: [FractionPoint, FractionPoint, FractionPoint, FractionPoint] = [
  [0.132, 0.148],
  [0.862, 0.118],
  [0.882, 0.858],
  [0.12, 0.848],
];

/** Luminance factor of the two cards: 18 % grey. */
const GREY = 0.18;
/** Boxes drawn round each card by a careful hand, inside its edges. */
export const SHOT_CARDS: Card[] = [
  { box: [0.032, 0.42, 0.084, 0.55], Y: GREY },
  { box: [0.916, 0.42, 0.968, 0.55], Y: GREY },
];
/** How far a card reaches beyond the box drawn in it, in 0..1 of the photo. */
const CARD_RIM = 0.008;

/** Width and height of the canvas, centimetres. */
export const SHOT_SIZE: [number, number] = [54, 36];

/** The lamp on Bradford's three responses: warm. */
const LAMP: Triple = [1.03, 0.97, 0.66];
/** What reaches the camera, and how much of it is lost from the lit side to the other. */
const EXPOSURE = 0.8;
const FALL_OFF = 0.05;
/** Luminance factor of the wall and how far its plaster strays. */
const WALL = 0.5;
const PLASTER = 0.012;
/** Grain of the camera, in linear light. */
const GRAIN = 0.003;
const CARD_COLOUR: Triple = [GREY, GREY, GREY];
const WALL_COLOUR: Triple = [WALL, WALL * 0.985, WALL * 0.96];
/** Rays along each side of a pixel where edges run. */
const RAYS = 3;
const SEED = 41;

/** A place on the painting, 0..1, as a place on the photo. */
export function onShot(point: FractionPoint): FractionPoint {
  return project(squareToCorners(SHOT_CORNERS), point);
}

/** Whether (x, y) lies on a card, or within `more` of one. */
function onCard(x: number, y: number, more: number): boolean {
  const rim = CARD_RIM + more;
  for (const { box } of SHOT_CARDS) {
    if (x > box[0] - rim && x < box[2] + rim && y > box[1] - rim && y < box[3] + rim) return true;
  }
  return false;
}

/** Adds the painting's linear colour at (u, v), bilinear, to `sum`; (u, v) lies inside it. */
function addPaint(
  { widthPx, heightPx, samples }: EncodedRaster,
  u: number,
  v: number,
  sum: Float64Array,
): void {
  const x = Math.min(Math.max(u * widthPx - 0.5, 0), widthPx - 1);
  const y = Math.min(Math.max(v * heightPx - 0.5, 0), heightPx - 1);
  const left = Math.floor(x);
  const top = Math.floor(y);
  const fx = x - left;
  const fy = y - top;
  const across = left + 1 < widthPx ? 3 : 0;
  const upper = (top * widthPx + left) * 3;
  const lower = top + 1 < heightPx ? upper + widthPx * 3 : upper;
  for (let c = 0; c < 3; c++) {
    const above = lightAt(samples, upper + c) * (1 - fx) + lightAt(samples, upper + across + c) * fx;
    const below = lightAt(samples, lower + c) * (1 - fx) + lightAt(samples, lower + across + c) * fx;
    sum[c] = (sum[c] as number) + above * (1 - fy) + below * fy;
  }
}

function lightAt(samples: EncodedRaster['samples'], at: number): number {
  return LINEAR_OF_CODE[samples[at] as number] as number;
}

/** Rays of one photo: what they meet, and where on the painting. Holds its last place, so that nothing is allocated. */
class Rays {
  readonly #painting: EncodedRaster;
  readonly #to: Matrix3;
  /** Where the last ray met the painting's plane, in its sides. */
  u = 0;
  v = 0;
  /** Sum of what the rays met, linear light, before the lamp. */
  readonly sum = new Float64Array(3);

  constructor(painting: EncodedRaster) {
    this.#painting = painting;
    this.#to = invert3(squareToCorners(SHOT_CORNERS as Corners));
  }

  get onPainting(): boolean {
    return this.u >= 0 && this.u < 1 && this.v >= 0 && this.v < 1;
  }

  /** Sends a ray to (x, y) of the photo, 0..1. */
  aim(x: number, y: number): void {
    const [rowU, rowV, rowW] = this.#to;
    const w = rowW[0] * x + rowW[1] * y + rowW[2];
    this.u = (rowU[0] * x + rowU[1] * y + rowU[2]) / w;
    this.v = (rowV[0] * x + rowV[1] * y + rowV[2]) / w;
  }

  /** Adds what the ray to (x, y) meets. */
  add(x: number, y: number): void {
    this.aim(x, y);
    if (this.onPainting) {
      addPaint(this.#painting, this.u, this.v, this.sum);
      return;
    }
    const colour = onCard(x, y, 0) ? CARD_COLOUR : WALL_COLOUR;
    for (let c = 0; c < 3; c++) this.sum[c] = (this.sum[c] as number) + (colour[c] as number);
  }

  /** Whether the pixel round (x, y), aimed at before, may hold more than one thing. */
  nearEdge(x: number, y: number): boolean {
    const rim = 4 / SHOT_WIDTH_PX;
    const outside = Math.max(Math.abs(this.u - 0.5), Math.abs(this.v - 0.5)) - 0.5;
    return Math.abs(outside) < rim || (outside > 0 && onCard(x, y, rim) && !onCard(x, y, -rim));
  }
}

/** Fills `rays.sum` with what pixel (column, row) sees: one ray through its middle, or several where edges run. */
function seePixel(rays: Rays, column: number, row: number): void {
  const [x, y] = [(column + 0.5) / SHOT_WIDTH_PX, (row + 0.5) / SHOT_HEIGHT_PX];
  rays.sum.fill(0);
  rays.aim(x, y);
  if (!rays.nearEdge(x, y)) {
    rays.add(x, y);
    return;
  }
  const all = RAYS * RAYS;
  for (let i = 0; i < all; i++) {
    rays.add(
      (column + ((i % RAYS) + 0.5) / RAYS) / SHOT_WIDTH_PX,
      (row + (Math.floor(i / RAYS) + 0.5) / RAYS) / SHOT_HEIGHT_PX,
    );
  }
  for (let c = 0; c < 3; c++) rays.sum[c] = (rays.sum[c] as number) / all;
}

/** @param painting Any size. @returns The photo, `SHOT_WIDTH_PX` by `SHOT_HEIGHT_PX`; the same every time. */
export function onTheWall(painting: EncodedRaster): EncodedRaster {
  const lamp = multiply3(RGB_FROM_RESPONSES, multiply3(diagonal3(LAMP), RESPONSES_FROM_RGB));
  const rays = new Rays(painting);
  const random = seededRandom(SEED);
  const samples = new Uint8Array(SHOT_WIDTH_PX * SHOT_HEIGHT_PX * 3);
  for (let row = 0, at = 0; row < SHOT_HEIGHT_PX; row++) {
    for (let column = 0; column < SHOT_WIDTH_PX; column++) {
      seePixel(rays, column, row);
      const plaster = rays.onPainting ? 0 : (random() - 0.5) * PLASTER;
      const light = EXPOSURE * (1 - (FALL_OFF * column) / SHOT_WIDTH_PX);
      const [red, green, blue] = rays.sum as unknown as Triple; // three numbers, filled just now
      for (const [forRed, forGreen, forBlue] of lamp) {
        const lit = forRed * red + forGreen * green + forBlue * blue + plaster;
        samples[at++] = codeOfLinear(lit * light + (random() - 0.5) * GRAIN);
      }
    }
  }
  return encodedRaster(SHOT_WIDTH_PX, SHOT_HEIGHT_PX, samples);
}
