/**
 * The photograph in the planned light, plane by plane.
 *
 * In the flow: ground + lights -> [relight] -> the server's preview, and the page's where there is no WebGL. Pure. The
 * page's shader does the same in the same order: `app/_plan/preview/relight-shader.ts`.
 */
import { codeOfLinear, LINEAR_OF_CODE } from '../../colour/transfer.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { litColour, type PlaneLight } from './plane-light.ts';
import type { PreviewGround } from './preview-ground.ts';
import { eachPlane } from './soft-planes.ts';

/** @param lights by plane; null = as it is. @returns A picture of the same size. */
export function relight(
  { raster, calm, soft }: Pick<PreviewGround, 'raster' | 'calm' | 'soft'>,
  lights: readonly (PlaneLight | null)[],
): EncodedRaster {
  const samples = new Uint8Array(raster.samples.length);
  const [own, seen, sum] = [new Float64Array(3), new Float64Array(3), new Float64Array(3)];
  let at = 0;
  // Made once, not for each pixel.
  const addPlane = (plane: number, weight: number): void => {
    const light = lights[plane];
    for (let channel = 0; channel < 3; channel++) {
      const value = LINEAR_OF_CODE[raster.samples[at + channel] as number] as number;
      const level = LINEAR_OF_CODE[calm.samples[at + channel] as number] as number;
      own[channel] = light ? level + light.detail * (value - level) : value;
    }
    if (light) litColour(light, own, 0, seen);
    else seen.set(own);
    for (let channel = 0; channel < 3; channel++) {
      sum[channel] = (sum[channel] as number) + weight * (seen[channel] as number);
    }
  };
  for (let pixel = 0; at < samples.length; pixel++, at += 3) {
    sum.fill(0);
    eachPlane(soft, pixel, addPlane);
    for (let channel = 0; channel < 3; channel++)
      samples[at + channel] = codeOfLinear(sum[channel] as number);
  }
  return { ...raster, samples };
}
