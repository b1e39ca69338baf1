/**
 * The patches of a picture that hang together in colour, which the hand adds to a plane or takes away.
 *
 * In the flow: small copy, once a picture -> [patches] -> regions. Superpixels after Achanta et al. 2012. Pure.
 */
import { shrunkLinear } from '../../capture/shrunk-linear.ts';
import { labPlanesFromLinear } from '../../image/light-tables.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { superpixels } from '../propose/superpixels.ts';
import { edgesOf } from '../propose/working-copy.ts';
import { type Grid, gridOf } from './grid.ts';

export interface Patches {
  readonly grid: Grid;
  /** Number of each cell's patch. */
  readonly labels: Int32Array;
  /** L*, a*, b* of each patch, three numbers each. */
  readonly colours: Float32Array;
}

/** What the hand painted over. */
export interface Stroke {
  /** Place of the plane far to near. */
  readonly plane: number;
  /** Numbers of the patches under the hand. */
  readonly picked: ReadonlySet<number>;
  readonly way: 'add' | 'away';
}

/** @param wanted how many patches, about. */
export function patchesOf(raster: EncodedRaster, wanted: number): Patches {
  const grid = gridOf(raster.widthPx, raster.heightPx);
  const { linear, columns, rows } = shrunkLinear(raster, Math.max(grid.columns, grid.rows));
  const lab = labPlanesFromLinear(linear);
  const { labels, count } = superpixels(lab, edgesOf(lab, columns, rows), columns, rows, wanted);
  const colours = new Float32Array(count * 3);
  const cells = new Uint32Array(count);
  for (let cell = 0; cell < labels.length; cell++) {
    const label = labels[cell] as number;
    cells[label] = (cells[label] as number) + 1;
    colours[label * 3] = (colours[label * 3] as number) + (lab.lightness[cell] as number);
    colours[label * 3 + 1] = (colours[label * 3 + 1] as number) + (lab.a[cell] as number);
    colours[label * 3 + 2] = (colours[label * 3 + 2] as number) + (lab.b[cell] as number);
  }
  for (let at = 0; at < colours.length; at++) {
    colours[at] = (colours[at] as number) / (cells[Math.floor(at / 3)] as number);
  }
  return { grid: { columns, rows }, labels, colours };
}
