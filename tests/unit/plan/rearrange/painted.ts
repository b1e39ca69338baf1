/** Small pictures whose every pixel is known, and steps on them. */
import type { Bend, Motif } from '#server/core/contract/rearranging.ts';
import { type EncodedRaster, encodedRaster } from '#server/core/image/raster.ts';
import type { PlaneMap } from '#server/core/plan/rearrange/soft-mask.ts';

export type Painter = (x: number, y: number) => readonly [number, number, number];

export function painted(widthPx: number, heightPx: number, colour: Painter): EncodedRaster {
  const samples = new Uint8Array(widthPx * heightPx * 3);
  for (let y = 0, at = 0; y < heightPx; y++) {
    for (let x = 0; x < widthPx; x++, at += 3) samples.set(colour(x, y), at);
  }
  return encodedRaster(widthPx, heightPx, samples);
}

export function masked(
  widthPx: number,
  heightPx: number,
  inside: (x: number, y: number) => boolean,
): Uint8Array {
  return Uint8Array.from({ length: widthPx * heightPx }, (_, at) =>
    inside(at % widthPx, Math.floor(at / widthPx)) ? 1 : 0,
  );
}

/** Two planes, one above the other. */
export function twoPlanes({ widthPx, heightPx }: EncodedRaster, horizon: number): PlaneMap {
  return {
    labels: Uint8Array.from({ length: widthPx * heightPx }, (_, at) => (at / widthPx < horizon ? 0 : 1)),
    planeIds: ['sky', 'land'],
  };
}

export function aMotif(box: readonly [number, number, number, number], change: Partial<Motif> = {}): Motif {
  const [x0, y0, x1, y1] = box;
  return {
    ...{ pictureId: 'photograph', name: 'Motif', order: 'V', off: false, planeId: null },
    outline: [
      [x0, y0],
      [x1, y0],
      [x1, y1],
      [x0, y1],
    ],
    ...{ move: [0, 0], scale: 1, mirrored: false },
    ...change,
  };
}

export function aBend(change: Partial<Bend> = {}): Bend {
  return {
    ...{ pictureId: 'photograph', name: 'Ridge', order: 'V', off: false },
    line: [
      [0, 0.5],
      [1, 0.5],
    ],
    ...{ at: 0.5, reach: 0.25, lift: 0.1 },
    ...change,
  };
}

export function codeAt({ widthPx, samples }: EncodedRaster, x: number, y: number): number[] {
  const at = (y * widthPx + x) * 3;
  return [...samples.subarray(at, at + 3)];
}
