/**
 * One measurement from stored files: plates → photo corrections → planes → measures → gaps.
 *
 * In the flow: worker → [measure-picture] → runner. IO: reads the stored files.
 */
import { readFile } from 'node:fs/promises';
import { photographed } from '../core/capture/photographed.ts';
import type { PhotoCorrection } from '../core/contract/setup.ts';
import type { MeasurablePlate } from '../core/image/raster.ts';
import { measurePrepared } from '../core/measure/measure-pair.ts';
import { measuredBefore } from '../core/measure/measured-before.ts';
import { onSquared } from '../core/measure/on-squared.ts';
import { type Prepared, prepareMeasurable } from '../core/measure/prepare.ts';
import type { Box } from '../core/plan/crops/crop-scene.ts';
import { plateInto } from '../core/plan/crops/into-frame.ts';
import { Problem } from '../core/problem.ts';
import { paintingPlateOf, readPlateFiles } from '../imaging/plate.ts';
import type { Measured, MeasureJob, PictureSource } from './jobs.ts';
import { createPreparedCache } from './prepared-cache.ts';
import { soundPlanes } from './sound-planes.ts';

const cache = createPreparedCache();
const measure = measuredBefore();

/**
 * Measures a painting, against its reference where there is one.
 *
 * A plane with an outline that crosses itself or encloses nothing is left out, and said so.
 * @throws Problem `outline-invalid` when no plane is left; `corners-invalid`, `card-invalid`.
 */
export async function measurePicture(job: MeasureJob): Promise<Measured> {
  const { planes, leftOut } = soundPlanes(job.setup.planes);
  if (planes.length === 0) throw new Problem('outline-invalid', leftOut.join(' '));
  const setup = { ...job.setup, planes };
  const [reference, painting] = await Promise.all([
    job.reference && prepared(job.reference, null, job.frame),
    prepared(job.painting, job.ofReference ? null : (setup.photo ?? {})),
  ]);
  const options = { exact: job.ofReference, measure };
  const document = measurePrepared(reference, noted(painting, job.wet), onSquared(setup), options);
  return { document, leftOut };
}

/** With the painter's note about the paint, which changes no pixel: the kept plate serves either way. */
function noted(painting: Prepared, wet: boolean | null): Prepared {
  return painting.facts ? { ...painting, facts: { ...painting.facts, wet } } : painting;
}

/**
 * @param photo corrections of a painting's photo; null for a reference, which is taken as it is.
 * @param frame what is cut out of it; null = nothing is.
 */
function prepared(
  source: PictureSource,
  photo: PhotoCorrection | null,
  frame: Box | null = null,
): Promise<Prepared> {
  const key = JSON.stringify([source.originalHash, source.orientation, photo, frame]);
  return cache.get(key, async () => {
    const plate = await plateOf(source, photo);
    return prepareMeasurable(frame ? plateInto(frame, plate) : plate);
  });
}

/** The plate of a stored picture, put right. @param photo As above. @throws Problem `corners-invalid`, `card-invalid`. */
export async function plateOf(
  source: PictureSource,
  photo: PhotoCorrection | null,
): Promise<MeasurablePlate> {
  if (!photo?.corners && !photo?.cards?.length) {
    const [colours, clipMap] = await Promise.all([readFile(source.platePath), readFile(source.clipMapPath)]);
    const stored = await readPlateFiles(colours, clipMap);
    return photo ? photographed(stored, photo, source.longSidePx) : stored;
  }
  const bytes = await readFile(source.originalPath);
  return paintingPlateOf({ bytes, mediaType: source.mediaType, orientation: source.orientation }, photo);
}
