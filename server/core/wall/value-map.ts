/**
 * A painting in a few values, each as the grey of its own mean lightness, cut where it falls apart by itself.
 *
 * In the flow: squared painting -> look's codes, cuts and groups -> [value-map] -> wall. Pure.
 */
import { luminanceFromLightness } from '../colour/lab.ts';
import { codeOfLinear } from '../colour/transfer.ts';
import { type EncodedRaster, encodedRaster } from '../image/raster.ts';
import { startingCuts } from '../look/starting-cuts.ts';
import { countCodes, valueCodes } from '../look/value-counts.ts';
import { groupOfCodes, valueGroups } from '../look/value-groups.ts';
import type { ValueNumber } from '../look/value-numbers.ts';

/** Softening before grouping, sigma as a share of the long side: brush marks join, shapes stay. */
const SOFT = 0.004;

/** The same size as the painting, in at most `count` neutral greys. */
export function valueMap(painting: EncodedRaster, count: ValueNumber): EncodedRaster {
  const codes = valueCodes(painting, SOFT);
  const counts = countCodes(codes);
  const cuts = startingCuts(counts, count);
  const greys = valueGroups(counts, cuts).map(({ lightness }) =>
    codeOfLinear(luminanceFromLightness(lightness)),
  );
  const greyOfCode = groupOfCodes(cuts).map((group) => greys[group] as number);
  const samples = new Uint8Array(codes.length * 3);
  for (let pixel = 0, at = 0; pixel < codes.length; pixel++, at += 3) {
    samples.fill(greyOfCode[codes[pixel] as number] as number, at, at + 3);
  }
  return encodedRaster(painting.widthPx, painting.heightPx, samples);
}
