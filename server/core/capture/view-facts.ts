/**
 * How straight and how large the painting stands in its photo.
 *
 * In the flow: corners + size of the photo -> [view-facts] -> photo facts. Pure.
 */
import type { PhotoCorrection } from '../contract/setup.ts';
import { meanSidesPx, sideRatioOf } from '../rectify/side-ratio.ts';
import { WHOLE_PHOTO } from '../rectify/whole-photo.ts';
import type { PhotoFacts } from './photo-facts.ts';

type View = Pick<PhotoFacts, 'crookedDeg' | 'sideRatioError' | 'shortSidePx' | 'fillsPhoto'>;

/** Share of the photo's width or height from which on the camera cannot come closer. */
const FILLED = 0.9;

/** Whether the corners reach over nearly all of the photo, across or down. */
function fills(corners: readonly (readonly [number, number])[]): boolean {
  const reach = (at: 0 | 1) => {
    const along = corners.map((corner) => corner[at]);
    return Math.max(...along) - Math.min(...along);
  };
  return reach(0) >= FILLED || reach(1) >= FILLED;
}

/** Largest departure of the four corners from a right angle, degrees. */
function crookedDegOf(points: readonly (readonly [number, number])[]): number {
  const away = points.map((corner, at) => {
    const before = points[(at + 3) % 4] as readonly [number, number];
    const after = points[(at + 1) % 4] as readonly [number, number];
    const [ux, uy] = [before[0] - corner[0], before[1] - corner[1]];
    const [vx, vy] = [after[0] - corner[0], after[1] - corner[1]];
    const angle = Math.abs(Math.atan2(ux * vy - uy * vx, ux * vx + uy * vy));
    return Math.abs((angle * 180) / Math.PI - 90);
  });
  return Math.max(...away);
}

/** @param widthPx, heightPx of the whole upright photo as it was taken. */
export function viewOf(photo: PhotoCorrection, widthPx: number, heightPx: number): View {
  const { corners, size } = photo;
  const shortSidePx = Math.min(...meanSidesPx(corners ?? WHOLE_PHOTO, widthPx, heightPx));
  const fillsPhoto = fills(corners ?? WHOLE_PHOTO);
  if (!corners) return { crookedDeg: null, sideRatioError: null, shortSidePx, fillsPhoto };
  const seen = sideRatioOf(corners, widthPx, heightPx, undefined).ratio;
  return {
    crookedDeg: crookedDegOf(corners.map(([x, y]) => [x * widthPx, y * heightPx] as const)),
    sideRatioError: size ? Math.abs(seen / (size[0] / size[1]) - 1) : null,
    shortSidePx,
    fillsPhoto,
  };
}
