/** Pixels to CIELAB fields and back. In the flow: decoder -> [colours] -> study; finish -> [colours] -> encoder. Pure. */
import { xyzFromLab } from '../../core/colour/lab.ts';
import { RGB_FROM_XYZ } from '../../core/colour/spaces.ts';
import { codeOfLinear, LINEAR_OF_CODE } from '../../core/colour/transfer.ts';
import { labPlanesFromLinear } from '../../core/image/light-tables.ts';
import { type EncodedRaster, encodedRaster } from '../../core/image/raster.ts';
import type { LabFields } from './field.ts';

/** CIELAB (D65) of every pixel. */
export function labFields({ widthPx: width, heightPx: height, samples }: EncodedRaster): LabFields {
  const linear = new Float32Array(samples.length);
  for (let at = 0; at < linear.length; at++) linear[at] = LINEAR_OF_CODE[samples[at] as number] as number;
  const { lightness, a, b } = labPlanesFromLinear(linear);
  const field = (values: Float32Array) => ({ width, height, values });
  return { L: field(lightness), a: field(a), b: field(b) };
}

/** The nearest 8-bit sRGB colours; what lies outside sRGB is clipped a channel at a time. */
export function rasterOf({ L, a, b }: LabFields): EncodedRaster {
  const samples = new Uint8Array(L.values.length * 3);
  const [redRow, greenRow, blueRow] = RGB_FROM_XYZ;
  for (let pixel = 0, at = 0; at < samples.length; pixel++, at += 3) {
    const lab = {
      L: L.values[pixel] as number,
      a: a.values[pixel] as number,
      b: b.values[pixel] as number,
    };
    const [x, y, z] = xyzFromLab(lab);
    samples[at] = codeOfLinear(redRow[0] * x + redRow[1] * y + redRow[2] * z);
    samples[at + 1] = codeOfLinear(greenRow[0] * x + greenRow[1] * y + greenRow[2] * z);
    samples[at + 2] = codeOfLinear(blueRow[0] * x + blueRow[1] * y + blueRow[2] * z);
  }
  return encodedRaster(L.width, L.height, samples);
}
