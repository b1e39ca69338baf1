/**
 * A photograph, or a frame of it, in a few values: the plan that is painted from.
 *
 * In the flow: copy of the photograph + kept frame + cuts -> [value-plan] -> thumbnails, stage, planning sheet. Pure.
 * Practice: two values (notan) to five (Dow 1913; Poore 1903, ch. X: choose three, four or five separate tones).
 */
import { luminanceFromLightness } from '../colour/lab.ts';
import { codeOfLinear } from '../colour/transfer.ts';
import type { EncodedRaster } from '../image/raster.ts';
import type { Box } from '../plan/crops/crop-scene.ts';
import { plateInto } from '../plan/crops/into-frame.ts';
import { startingCuts } from './starting-cuts.ts';
import { countCodes, valueCodes } from './value-counts.ts';
import { groupOfCodes, type ValueGroup, valueGroups } from './value-groups.ts';
import type { ValueNumber } from './value-numbers.ts';

/** The values of a frame, before it is cut into a few. */
export interface ValuePicture {
  readonly widthPx: number;
  readonly heightPx: number;
  /** L* of each pixel in half L*. */
  readonly codes: Uint8Array;
  /** How many pixels have each code. */
  readonly counts: Uint32Array;
}

export interface PlannedValues {
  /** Rising L*, one fewer than there are values. */
  readonly cuts: readonly number[];
  /** Darkest to lightest. */
  readonly groups: readonly ValueGroup[];
}

/**
 * @param box 0..1 of the photograph.
 * @param squint how far the eyes are closed: sigma of the softening as a share of the frame's long side.
 */
export function valuePicture(photograph: EncodedRaster, box: Box, squint: number): ValuePicture {
  const { raster } = plateInto(box, { raster: photograph });
  const codes = valueCodes(raster, squint);
  return { widthPx: raster.widthPx, heightPx: raster.heightPx, codes, counts: countCodes(codes) };
}

/** @param cuts as somebody moved them; null = where they begin by themselves. */
export function plannedValues(
  { counts }: Pick<ValuePicture, 'counts'>,
  count: ValueNumber,
  cuts: readonly number[] | null,
): PlannedValues {
  const own = cuts ?? startingCuts(counts, count);
  return { cuts: own, groups: valueGroups(counts, own) };
}

/** The plan as pixels: red, green, blue, alpha, each value in its own mean grey. */
export function drawnValues(
  { codes }: Pick<ValuePicture, 'codes'>,
  { cuts, groups }: PlannedValues,
): Uint8ClampedArray<ArrayBuffer> {
  const greys = groups.map(({ lightness }) => codeOfLinear(luminanceFromLightness(lightness)));
  const greyOfCode = groupOfCodes(cuts).map((group) => greys[group] ?? 0);
  const rgba = new Uint8ClampedArray(codes.length * 4);
  for (let pixel = 0, at = 0; pixel < codes.length; pixel++, at += 4) {
    const grey = greyOfCode[codes[pixel] as number] as number;
    rgba[at] = grey;
    rgba[at + 1] = grey;
    rgba[at + 2] = grey;
    rgba[at + 3] = 255;
  }
  return rgba;
}
