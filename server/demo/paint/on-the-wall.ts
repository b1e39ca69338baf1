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
import { apply3, diagonal3, invert3, multiply3, type Triple } from '../../core/geometry/matrix3.ts';
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
const GRAIN = 0.0015;
/** Rays along each side of a pixel where edges run. */
const RAYS = 3;
const SEED = 41;

/** A place on the painting, 0..1, as a place on the photo. */
export function onShot(point: FractionPoint): FractionPoint {
  return project(squareToCorners(SHOT_CORNERS), point);
}

function cardAt(x: number, y: number): boolean {
  return SHOT_CARDS.some(
    ({ box: [x0, y0, x1, y1] }) =>
      x > x0 - CARD_RIM && x < x1 + CARD_RIM && y > y0 - CARD_RIM && y < y1 + CARD_RIM,
  );
}

/** Linear colour of the painting at (u, v), bilinear; (u, v) lies inside it. */
function paintAt({ widthPx, heightPx, samples }: EncodedRaster, u: number, v: number): Triple {
  const x = Math.min(Math.max(u * widthPx - 0.5, 0), widthPx - 1);
  const y = Math.min(Math.max(v * heightPx - 0.5, 0), heightPx - 1);
  const [left, top] = [Math.floor(x), Math.floor(y)];
  const [right, bottom] = [Math.min(left + 1, widthPx - 1), Math.min(top + 1, heightPx - 1)];
  const [fx, fy] = [x - left, y - top];
  const channel = (c: number) => {
    const at = (px: number, py: number) =>
      LINEAR_OF_CODE[samples[(py * widthPx + px) * 3 + c] as number] as number;
    const upper = at(left, top) * (1 - fx) + at(right, top) * fx;
    return upper * (1 - fy) + (at(left, bottom) * (1 - fx) + at(right, bottom) * fx) * fy;
  };
  return [channel(0), channel(1), channel(2)];
}

/** What the camera meets along one ray, before the lamp. */
function sceneAt(
  painting: EncodedRaster,
  toPainting: ReturnType<typeof invert3>,
  x: number,
  y: number,
): Triple {
  const [u, v] = project(toPainting, [x, y]);
  if (u >= 0 && u < 1 && v >= 0 && v < 1) return paintAt(painting, u, v);
  if (cardAt(x, y)) return [GREY, GREY, GREY];
  return [WALL, WALL * 0.985, WALL * 0.96];
}

/** Whether a pixel may hold more than one thing: the rim of painting or card is near. */
function nearEdge(u: number, v: number, x: number, y: number): boolean {
  const rim = 2 / SHOT_WIDTH_PX;
  const near = (value: number, edge: number) => Math.abs(value - edge) < 2 * rim;
  const painting = near(u, 0) || near(u, 1) || near(v, 0) || near(v, 1);
  const cards = SHOT_CARDS.some(
    ({ box: [x0, y0, x1, y1] }) =>
      [x0 - CARD_RIM, x1 + CARD_RIM].some((edge) => near(x, edge)) ||
      [y0 - CARD_RIM, y1 + CARD_RIM].some((edge) => near(y, edge)),
  );
  return painting || cards;
}

/** @param painting Any size. @returns The photo, `SHOT_WIDTH_PX` by `SHOT_HEIGHT_PX`; the same every time. */
export function onTheWall(painting: EncodedRaster): EncodedRaster {
  const toPainting = invert3(squareToCorners(SHOT_CORNERS as Corners));
  const lamp = multiply3(RGB_FROM_RESPONSES, multiply3(diagonal3(LAMP), RESPONSES_FROM_RGB));
  const random = seededRandom(SEED);
  const samples = new Uint8Array(SHOT_WIDTH_PX * SHOT_HEIGHT_PX * 3);
  for (let row = 0, at = 0; row < SHOT_HEIGHT_PX; row++) {
    for (let column = 0; column < SHOT_WIDTH_PX; column++, at += 3) {
      const seen = pixelAt(painting, toPainting, column, row);
      const x = (column + 0.5) / SHOT_WIDTH_PX;
      const light = EXPOSURE * (1 - FALL_OFF * x);
      const [u, v] = project(toPainting, [x, (row + 0.5) / SHOT_HEIGHT_PX]);
      const plaster = u >= 0 && u < 1 && v >= 0 && v < 1 ? 0 : (random() - 0.5) * PLASTER;
      const lit = apply3(lamp, seen);
      for (let c = 0; c < 3; c++) {
        const value = (lit[c as 0 | 1 | 2] + plaster) * light + (random() + random() - 1) * GRAIN;
        samples[at + c] = codeOfLinear(value);
      }
    }
  }
  return encodedRaster(SHOT_WIDTH_PX, SHOT_HEIGHT_PX, samples);
}

/** One ray through the middle of a pixel, or several where edges run. */
function pixelAt(
  painting: EncodedRaster,
  toPainting: ReturnType<typeof invert3>,
  column: number,
  row: number,
): Triple {
  const [x, y] = [(column + 0.5) / SHOT_WIDTH_PX, (row + 0.5) / SHOT_HEIGHT_PX];
  const [u, v] = project(toPainting, [x, y]);
  if (!nearEdge(u, v, x, y)) return sceneAt(painting, toPainting, x, y);
  let [red, green, blue] = [0, 0, 0];
  for (let i = 0; i < RAYS * RAYS; i++) {
    const rayX = (column + ((i % RAYS) + 0.5) / RAYS) / SHOT_WIDTH_PX;
    const rayY = (row + (Math.floor(i / RAYS) + 0.5) / RAYS) / SHOT_HEIGHT_PX;
    const ray = sceneAt(painting, toPainting, rayX, rayY);
    [red, green, blue] = [red + ray[0], green + ray[1], blue + ray[2]];
  }
  const rays = RAYS * RAYS;
  return [red / rays, green / rays, blue / rays];
}
