/**
 * How straight and how large the painting stands in its photo.
 *
 * In the flow: corners + size of the photo -> [view-facts] -> photo facts. Pure.
 */
import type { PhotoCorrection } from '../contract/setup.ts';
import { meanSidesPx, sideRatioOf } from '../rectify/side-ratio.ts';
import { WHOLE_PHOTO } from '../rectify/whole-photo.ts';
import type { PhotoFacts } from './photo-facts.ts';

type View = Pick<PhotoFacts, 'crookedDeg' | 'sideRatioError' | 'shortSidePx'>;

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
  if (!corners) return { crookedDeg: null, sideRatioError: null, shortSidePx };
  const seen = sideRatioOf(corners, widthPx, heightPx, undefined).ratio;
  return {
    crookedDeg: crookedDegOf(corners.map(([x, y]) => [x * widthPx, y * heightPx] as const)),
    sideRatioError: size ? Math.abs(seen / (size[0] / size[1]) - 1) : null,
    shortSidePx,
  };
}
