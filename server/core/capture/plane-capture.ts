/**
 * What glare and clipping take from each plane, and from the picture.
 *
 * In the flow: eroded grid + prepared plate -> [plane-capture] -> figures, grade, readings. Pure.
 */
import { CLIP } from '../image/raster.ts';
import type { Prepared } from '../measure/prepare.ts';
import { NO_PLANE } from '../planes/label-map.ts';

/** Share of glare above which a plane is not measured. */
export const MOST_GLARE = 0.3;

export interface PlaneCapture {
  /** Share of each plane's cells, within its rim, that glare covers, 0..1; far to near. */
  readonly glare: readonly number[];
  /** Largest blown share of a sky plane; null without a sky. */
  readonly clippedSky: number | null;
  /** Share of the whole picture with all channels at 1 or less. */
  readonly clippedDarks: number;
}

/** Takes glare out of the eroded grid, in place, and counts it by plane. */
export function dropGlare(kept: Uint8Array, glare: Uint8Array | null, planes: number): number[] {
  const lost = new Uint32Array(256);
  const all = new Uint32Array(256);
  for (let cell = 0; cell < kept.length; cell++) {
    const label = kept[cell] as number;
    all[label] = (all[label] as number) + 1;
    if (glare?.[cell] !== 1 || label === NO_PLANE) continue;
    lost[label] = (lost[label] as number) + 1;
    kept[cell] = NO_PLANE;
  }
  return Array.from({ length: planes }, (_, label) =>
    all[label] === 0 ? 0 : (lost[label] as number) / (all[label] as number),
  );
}

function shareOf(clipped: Uint8Array, cells: Int32Array, value: number): number {
  let count = 0;
  for (let at = 0; at < cells.length; at++) if (clipped[cells[at] as number] === value) count++;
  return cells.length === 0 ? 0 : count / cells.length;
}

/** @param cells of each plane. @param glare from `dropGlare`. */
export function planeCapture(
  prepared: Prepared,
  cells: readonly Int32Array[],
  isSky: readonly boolean[],
  glare: readonly number[],
): PlaneCapture {
  const { clipped } = prepared;
  let crushed = 0;
  for (let cell = 0; cell < clipped.length; cell++) if (clipped[cell] === CLIP.crushed) crushed++;
  const skies = cells.filter((_, label) => isSky[label]);
  return {
    glare,
    clippedSky:
      skies.length === 0 ? null : Math.max(...skies.map((sky) => shareOf(clipped, sky, CLIP.blown))),
    clippedDarks: crushed / clipped.length,
  };
}
