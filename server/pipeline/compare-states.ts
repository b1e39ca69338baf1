/**
 * Two states of a painting laid on one another, from stored files: plates -> alignment -> pictures to look at.
 *
 * In the flow: worker -> [compare-states] -> comparer. IO: reads the stored files; libvips encodes.
 */
import { gradeCapture } from '../core/capture/grade.ts';
import { luminanceFromLightness } from '../core/colour/lab.ts';
import { codeOfLinear } from '../core/colour/transfer.ts';
import type { MeasurablePlate } from '../core/image/raster.ts';
import { alignStates } from '../core/states/align/align-states.ts';
import { changeGreys, changeMap } from '../core/states/change/change-map.ts';
import { laidOn } from '../core/states/change/laid-on.ts';
import { greyPng, smallerRaster, viewingJpeg } from '../imaging/encode-raster.ts';
import type { Compared, CompareJob, StateSource } from './jobs.ts';
import { plateOf } from './measure-picture.ts';

/** Long side of the pictures to look at, pixels. */
const SHOWN_PX = 1280;

const gradeOf = ({ facts }: MeasurablePlate) =>
  gradeCapture(facts ?? null, null, { cast: false, toneMapped: false }).grade;

const read = ({ picture, photo }: StateSource) => plateOf(picture, photo);

/** @throws Problem `corners-invalid`, `card-invalid`. */
export async function compareStates({ earlier, later }: CompareJob): Promise<Compared> {
  const [one, two] = [await read(earlier), await read(later)];
  const alignment = alignStates(one.raster, two.raster);
  if (alignment.trouble !== null) return { alignment, pictures: null };
  const before = await smallerRaster(one.raster, SHOWN_PX);
  const { widthPx, heightPx } = before;
  const after = laidOn(await smallerRaster(two.raster, SHOWN_PX), alignment.toLater, widthPx, heightPx);
  const map = changeMap(before, after, [gradeOf(one), gradeOf(two)]);
  const codes = Uint8Array.from(changeGreys(map), (lightness) =>
    codeOfLinear(luminanceFromLightness(lightness)),
  );
  return {
    alignment,
    pictures: {
      ...{ widthPx, heightPx, doubtL: map.doubtL, lighter: map.lighter, darker: map.darker },
      before: await viewingJpeg(before),
      after: await viewingJpeg(after),
      change: await greyPng(codes, map.columns, map.rows),
    },
  };
}
