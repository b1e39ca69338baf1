/**
 * The planned picture of one photograph at the size of its plate, as a JPEG: rearranged, and in the planned light.
 *
 * In the flow: worker -> [relight-photograph] -> relighter. By the same code as the page's preview. IO: reads stored files.
 */
import { readFile } from 'node:fs/promises';
import { LitGround } from '../core/plan/preview/lit-ground.ts';
import { relight } from '../core/plan/preview/relight.ts';
import { viewingJpeg } from '../imaging/encode-raster.ts';
import { readPlateFiles } from '../imaging/plate.ts';
import type { RelightJob } from './jobs.ts';

/** @throws Problem of the outlines or of planning. */
export async function relightPhotograph({
  photograph,
  ground,
  steps,
  wish,
}: RelightJob): Promise<Uint8Array> {
  const { raster } = await readPlateFiles(
    ...(await Promise.all([readFile(photograph.platePath), readFile(photograph.clipMapPath)])),
  );
  const copies = { shown: raster, small: raster };
  const lit = new LitGround();
  if (!wish) return viewingJpeg(lit.arranged(copies, ground.planes, steps).raster);
  const lights = lit.lights(copies, ground, steps, wish);
  return viewingJpeg(relight(lit.ground(copies, ground, steps), lights));
}
