/**
 * What is lifted: the pixels within a motif's outline, and of one plane alone where that was chosen.
 *
 * In the flow: motif -> [soft-mask] -> hole and paste. Pure.
 */
import type { Motif } from '../../contract/rearranging.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { drawLabelMap } from '../../planes/label-map.ts';
import { boxMean } from '../preview/box-mean.ts';

/** Softness of a motif's edge and how far the hole reaches beyond it, as shares of the long side. */
const FEATHER = 0.0012;
const BEYOND = 0.004;

export interface MotifMask {
  /** 1 inside, 0 outside, soft between. */
  readonly soft: Float32Array;
  /** 1 where the motif was, and a little around it. */
  readonly hole: Uint8Array;
}

export interface PlaneMap {
  /** Plane of each pixel, far to near; 255 = none. */
  readonly labels: Uint8Array;
  /** Ids by label. */
  readonly planeIds: readonly string[];
}

function radiusPx(share: number, { widthPx, heightPx }: EncodedRaster): number {
  return Math.max(1, Math.round(share * Math.max(widthPx, heightPx)));
}

/** Where the chosen plane is gone or isn't under the outline, all within the outline is lifted. */
function liftedPixels(raster: EncodedRaster, motif: Motif, map: PlaneMap): Float32Array {
  const inside = drawLabelMap(raster.widthPx, raster.heightPx, [motif.outline]);
  const plane = motif.planeId === null ? -1 : map.planeIds.indexOf(motif.planeId);
  const all = new Float32Array(inside.length);
  const own = new Float32Array(inside.length);
  let found = false;
  for (let at = 0; at < inside.length; at++) {
    if (inside[at] !== 0) continue;
    all[at] = 1;
    if (map.labels[at] !== plane) continue;
    own[at] = 1;
    found = true;
  }
  return found ? own : all;
}

export function motifMask(raster: EncodedRaster, motif: Motif, map: PlaneMap): MotifMask {
  const { widthPx, heightPx } = raster;
  const lifted = { widthPx, heightPx, values: liftedPixels(raster, motif, map) };
  const soft = boxMean(lifted, radiusPx(FEATHER, raster));
  const reached = boxMean(lifted, radiusPx(BEYOND, raster));
  const hole = new Uint8Array(reached.length);
  for (let at = 0; at < hole.length; at++) if ((reached[at] as number) > 1e-6) hole[at] = 1;
  return { soft, hole };
}
