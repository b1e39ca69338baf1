/**
 * How the light falls off along a border of one colour around the painting.
 *
 * In the flow: photo + corners -> [border-light] -> light-field. Patches just outside the corners are read; where
 * they are alike but for a steady fall-off, each is a sample of the light, up to one common unknown colour. Pure.
 */
import { RESPONSES_FROM_RGB } from '../colour/adaptation.ts';
import { LINEAR_OF_CODE } from '../colour/transfer.ts';
import type { Card } from '../contract/setup.ts';
import { type Corners, project, squareToCorners } from '../geometry/homography.ts';
import { apply3, type Matrix3, type Triple } from '../geometry/matrix3.ts';
import { CLIP, clipOf, type EncodedRaster } from '../image/raster.ts';
import type { LightSample } from './card-samples.ts';
import { fitPlane } from './fit-plane.ts';

/** Patches a side, and where they lie outside the painting, in its sides. */
const PATCHES = 12;
const NEAR = 0.015;
const FAR = 0.045;
/** Rays a side of one patch. */
const RAYS = 6;
const FEWEST_PATCHES = 16;
/** Sides of the painting that must show the border, and patches that make a side. */
const FEWEST_SIDES = 3;
const FEWEST_ON_A_SIDE = 4;
/** Share of the patches that must lie on one plane. */
const ALIKE = 0.8;
/** Unlikeness, in log light: inside one patch, of one patch against the plane, and of all (root mean square). */
const GRAIN = 0.35;
const STRAY = 0.08;
const ROUGH = 0.03;
const DARKEST = 0.004;

interface Patch extends LightSample {
  readonly side: number;
}

function inAnyCard(cards: readonly Card[], x: number, y: number): boolean {
  return cards.some(
    ({ box: [x0, y0, x1, y1] }) => x > x0 - 0.01 && x < x1 + 0.01 && y > y0 - 0.01 && y < y1 + 0.01,
  );
}

function medianOf(values: number[]): number {
  return values.sort((p, q) => p - q)[values.length >> 1] as number;
}

/** Where ray (`i`, `j`) of patch `step` on a side meets the plane of the painting, in its sides. */
function rayAt(side: number, step: number, i: number, j: number): [number, number] {
  const along = (step + (i + 0.5) / RAYS) / PATCHES;
  const out = NEAR + ((FAR - NEAR) * (j + 0.5)) / RAYS;
  if (side === 0) return [along, -out];
  if (side === 1) return [1 + out, along];
  return side === 2 ? [along, 1 + out] : [-out, along];
}

/** One patch, or null where it leaves the photo, meets a card, is clipped, too dark or patterned. */
function patchOf(
  raster: EncodedRaster,
  toPhoto: Matrix3,
  cards: readonly Card[],
  side: number,
  step: number,
): Patch | null {
  const channels: [number[], number[], number[]] = [[], [], []];
  let [sumX, sumY] = [0, 0];
  for (let ray = 0; ray < RAYS * RAYS; ray++) {
    const [x, y] = project(toPhoto, rayAt(side, step, ray % RAYS, Math.floor(ray / RAYS)));
    if (!(x >= 0 && y >= 0 && x < 1 && y < 1) || inAnyCard(cards, x, y)) return null;
    const at = (Math.floor(y * raster.heightPx) * raster.widthPx + Math.floor(x * raster.widthPx)) * 3;
    const codes = [0, 1, 2].map((channel) => raster.samples[at + channel] as number) as [
      number,
      number,
      number,
    ];
    if (clipOf(...codes) !== CLIP.none) return null;
    codes.forEach((code, channel) => {
      channels[channel]?.push(LINEAR_OF_CODE[code] as number);
    });
    sumX += x;
    sumY += y;
  }
  const middle = channels.map(medianOf) as unknown as Triple; // three in, three out
  const green = channels[1]; // sorted by now
  const [low, high] = [
    green[Math.floor(green.length * 0.1)] ?? 0,
    green[Math.floor(green.length * 0.9)] ?? 0,
  ];
  if (Math.min(...middle) < DARKEST || Math.log(high / Math.max(low, 1e-6)) > GRAIN) return null;
  const logGain = apply3(RESPONSES_FROM_RGB, middle).map(
    (response) => -Math.log(Math.max(response, 1e-6)),
  ) as unknown as Triple; // three in, three out
  return { side, x: sumX / RAYS ** 2, y: sumY / RAYS ** 2, logGain };
}

function sidesShown(patches: readonly Patch[]): number {
  return [0, 1, 2, 3].filter(
    (side) => patches.filter((patch) => patch.side === side).length >= FEWEST_ON_A_SIDE,
  ).length;
}

/** How far a patch lies off the plane through all, in its worst response. */
function residualsOf(patches: readonly Patch[]): number[] {
  const planes = ([0, 1, 2] as const).map((channel) =>
    fitPlane(patches.map(({ x, y, logGain }) => ({ x, y, value: logGain[channel], group: 0 }))),
  );
  const level = ([0, 1, 2] as const).map((channel) =>
    medianOf(
      patches.map(
        ({ x, y, logGain }) =>
          logGain[channel] - x * (planes[channel]?.[0] ?? 0) - y * (planes[channel]?.[1] ?? 0),
      ),
    ),
  );
  return patches.map(({ x, y, logGain }) =>
    Math.max(
      ...([0, 1, 2] as const).map((channel) =>
        Math.abs(
          logGain[channel] -
            x * (planes[channel]?.[0] ?? 0) -
            y * (planes[channel]?.[1] ?? 0) -
            (level[channel] ?? 0),
        ),
      ),
    ),
  );
}

/** The patches that lie on one plane together, once those farthest off are left out in turn. */
function alike(patches: readonly Patch[]): Patch[] {
  let kept = [...patches];
  while (kept.length > patches.length * ALIKE) {
    const residuals = residualsOf(kept);
    const worst = Math.max(...residuals);
    if (worst <= STRAY) break;
    kept = kept.filter((_, at) => (residuals[at] as number) < worst);
  }
  return kept;
}

/**
 * Samples of the light along the border, or none where it is not of one colour, shows on fewer than three
 * sides, or is too dark or clipped.
 *
 * @param corners checked. @returns log gains up to one constant a response, common to all of them.
 */
export function readBorder(raster: EncodedRaster, corners: Corners, cards: readonly Card[]): LightSample[] {
  const toPhoto = squareToCorners(corners);
  const patches: Patch[] = [];
  for (let side = 0; side < 4; side++) {
    for (let step = 0; step < PATCHES; step++) {
      const patch = patchOf(raster, toPhoto, cards, side, step);
      if (patch) patches.push(patch);
    }
  }
  if (patches.length < FEWEST_PATCHES || sidesShown(patches) < FEWEST_SIDES) return [];
  const kept = alike(patches);
  const residuals = residualsOf(kept);
  const rough = Math.sqrt(residuals.reduce((sum, residual) => sum + residual ** 2, 0) / kept.length);
  if (Math.max(...residuals) > STRAY || rough > ROUGH || sidesShown(kept) < FEWEST_SIDES) return [];
  return kept;
}
