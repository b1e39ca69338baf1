/**
 * A photograph cut down to a frame, and what was outlined on it carried along.
 *
 * In the flow: kept frame + plate + setup -> [into-frame] -> measuring. Afterwards everything speaks of the frame alone, as
 * if the photograph had been taken so. Pure.
 */
import type { FractionPoint, Outline, Setup } from '../../contract/setup.ts';
import type { MeasurablePlate } from '../../image/raster.ts';
import { countLabels, drawLabelMap } from '../../planes/label-map.ts';
import type { Box } from './crop-scene.ts';

/** Sides of the frame, in frames, beyond which an outline is cut off: far outside, where nothing of it shows. */
const FAR = { low: -1, high: 2 } as const;
/** Long side of the grid on which it is looked up whether a plane shows in the frame, cells. */
const GRID = 256;

/** A point of the whole photograph in 0..1 of the frame; may lie outside. */
export function pointInto([x0, y0, x1, y1]: Box, [x, y]: FractionPoint): FractionPoint {
  return [(x - x0) / (x1 - x0), (y - y0) / (y1 - y0)];
}

/** One side of Sutherland & Hodgman 1974, "Reentrant polygon clipping", CACM 17(1). */
function cutAt(
  points: readonly FractionPoint[],
  axis: 0 | 1,
  at: number,
  keeps: (coordinate: number) => boolean,
): FractionPoint[] {
  const kept: FractionPoint[] = [];
  points.forEach((to, index) => {
    const from = points.at(index - 1) as FractionPoint;
    if (keeps(from[axis]) !== keeps(to[axis])) {
      const share = (at - from[axis]) / (to[axis] - from[axis]);
      const other = from[1 - axis] as number;
      const met = other + share * ((to[1 - axis] as number) - other);
      kept.push(axis === 0 ? [at, met] : [met, at]);
    }
    if (keeps(to[axis])) kept.push(to);
  });
  return kept;
}

/** An outline in 0..1 of the frame. What lies far outside is cut off; what shows is as it was. */
export function outlineInto(box: Box, outline: Outline): Outline {
  let points: FractionPoint[] = outline.map((point) => pointInto(box, point));
  for (const axis of [0, 1] as const) {
    const place = points.map((point) => point[axis]);
    if (Math.min(...place) < FAR.low) points = cutAt(points, axis, FAR.low, (at) => at >= FAR.low);
    if (Math.max(...place) > FAR.high) points = cutAt(points, axis, FAR.high, (at) => at <= FAR.high);
  }
  return points;
}

/**
 * The setup with the photograph's outlines carried into the frame; those of the painting stay. Planes of which nothing
 * shows in the frame are left out, so that there may be none.
 */
export function setupInto(box: Box, setup: Setup): Setup {
  const carried = setup.planes
    .map((plane) => ({ ...plane, reference: outlineInto(box, plane.reference) }))
    .filter(({ reference }) => reference.length >= 3);
  const labels = drawLabelMap(
    GRID,
    GRID,
    carried.map(({ reference }) => reference),
  );
  const cells = countLabels(labels, carried.length);
  return { ...setup, planes: carried.filter((_, at) => (cells[at] ?? 0) > 0) };
}

/** Whole pixels of a picture that a frame takes. */
function pixelsOf([x0, y0, x1, y1]: Box, widthPx: number, heightPx: number) {
  const [left, top] = [Math.round(x0 * widthPx), Math.round(y0 * heightPx)];
  return {
    ...{ left, top },
    width: Math.max(1, Math.round(x1 * widthPx) - left),
    height: Math.max(1, Math.round(y1 * heightPx) - top),
  };
}

/** Rows of a picture cut to a frame. @param each samples of a pixel. */
function cutRows<Samples extends Uint8Array | Uint8ClampedArray>(
  samples: Samples,
  widthPx: number,
  { left, top, width, height }: ReturnType<typeof pixelsOf>,
  each: number,
): Uint8Array {
  const cut = new Uint8Array(width * height * each);
  for (let row = 0; row < height; row++) {
    const from = ((top + row) * widthPx + left) * each;
    cut.set(samples.subarray(from, from + width * each), row * width * each);
  }
  return cut;
}

/** The plate cut to a frame, with its maps. */
export function plateInto(box: Box, plate: MeasurablePlate): MeasurablePlate {
  const { widthPx, heightPx, samples } = plate.raster;
  const pixels = pixelsOf(box, widthPx, heightPx);
  return {
    ...plate,
    raster: {
      encoding: 'srgb8',
      widthPx: pixels.width,
      heightPx: pixels.height,
      samples: cutRows(samples, widthPx, pixels, 3),
    },
    ...(plate.clipped ? { clipped: cutRows(plate.clipped, widthPx, pixels, 1) } : {}),
    ...(plate.glare ? { glare: cutRows(plate.glare, widthPx, pixels, 1) } : {}),
  };
}
