/**
 * The small copy on which planes are proposed, with what is seen at each of its pixels.
 *
 * In the flow: plate -> [working-copy] -> superpixels -> merging -> ridges. Colour, strength of edges,
 * and the dark channel (He, Sun & Tang 2009) as a sign of air. Pure.
 */
import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { type LabPlanes, labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { slidingMinimum } from '../../image/sliding-minimum.ts';

/** Long side aimed at, pixels; the plate is divided by a whole number, so the copy has two thirds to one and a half of it. */
const LONG_SIDE_PX = 576;
/** Side of the dark channel's window, as a share of the long side. */
const DARK_WINDOW = 0.025;

export interface WorkingCopy {
  readonly columns: number;
  readonly rows: number;
  /** As it is, not blurred. */
  readonly lab: LabPlanes;
  /** Length of the gradient of L*, a*, b* over one pixel. */
  readonly edge: Float32Array;
  /** Least linear channel within a window, 0..1. */
  readonly dark: Float32Array;
}

/** Squared length of the gradient of one channel, by differences weighted 1, 2, 1 (Sobel), per pixel. */
function slopeSquared(
  channel: Float32Array,
  at: number,
  up: number,
  down: number,
  x: readonly [number, number],
) {
  const [left, right] = x;
  const nw = channel[at + up + left] as number;
  const ne = channel[at + up + right] as number;
  const sw = channel[at + down + left] as number;
  const se = channel[at + down + right] as number;
  const across = ne + se - nw - sw + 2 * ((channel[at + right] as number) - (channel[at + left] as number));
  const along = sw + se - nw - ne + 2 * ((channel[at + down] as number) - (channel[at + up] as number));
  return (across * across + along * along) / 64;
}

/** Length of the gradient of L*, a*, b* over one pixel. */
export function edgesOf({ lightness, a, b }: LabPlanes, columns: number, rows: number): Float32Array {
  const result = new Float32Array(columns * rows);
  for (let y = 0, at = 0; y < rows; y++) {
    const up = y > 0 ? -columns : 0;
    const down = y < rows - 1 ? columns : 0;
    for (let x = 0; x < columns; x++, at++) {
      const beside = [x > 0 ? -1 : 0, x < columns - 1 ? 1 : 0] as const;
      result[at] = Math.sqrt(
        slopeSquared(lightness, at, up, down, beside) +
          slopeSquared(a, at, up, down, beside) +
          slopeSquared(b, at, up, down, beside),
      );
    }
  }
  return result;
}

function darkChannel(linear: Float32Array, columns: number, rows: number): Float32Array {
  const least = new Float32Array(columns * rows);
  for (let cell = 0, at = 0; cell < least.length; cell++, at += 3) {
    least[cell] = Math.min(linear[at] as number, linear[at + 1] as number, linear[at + 2] as number);
  }
  const radius = Math.max(1, Math.floor((DARK_WINDOW * Math.max(columns, rows)) / 2));
  return slidingMinimum(least, columns, rows, radius);
}

/** @param raster a plate of any size, at least one pixel. */
export function workingCopy(raster: EncodedRaster): WorkingCopy {
  const longSidePx = Math.max(raster.widthPx, raster.heightPx);
  const shrink = Math.max(1, Math.round(longSidePx / LONG_SIDE_PX));
  const { linear, columns, rows } = shrunkLinear(raster, longSidePx / shrink);
  const lab = labPlanesFromLinear(linear);
  return {
    columns,
    rows,
    lab,
    edge: edgesOf(lab, columns, rows),
    dark: darkChannel(linear, columns, rows),
  };
}
