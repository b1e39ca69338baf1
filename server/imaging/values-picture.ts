/**
 * A stored picture, or a frame of it, in a few values, as it stands on a printed page.
 *
 * In the flow: sheet's worker -> [values-picture] -> server/sheet. IO: reads the plate's file; libvips shrinks and encodes.
 */
import sharp from 'sharp';
import { encodedRaster } from '../core/image/raster.ts';
import type { ValueNumber } from '../core/look/value-numbers.ts';
import { drawnValues, plannedValues, valuePicture } from '../core/look/value-plan.ts';
import { type PagePicture, shownRaster, type WantedPicture } from './sheet-picture.ts';

/** Longest side on which values are grouped, pixels: shapes are planned, not blades of grass. */
const SIDE_PX = 480;
/** How far the eyes are closed, as the plan page begins with. */
const SQUINT = 0.004;

/** @param cuts Rising L*; null = where they begin by themselves. */
export async function valuesPicture(
  wanted: WantedPicture,
  count: ValueNumber,
  cuts: readonly number[] | null,
): Promise<PagePicture> {
  const shown = await shownRaster(wanted);
  const raw = { width: shown.widthPx, height: shown.heightPx, channels: 3 as const };
  const { data, info } = await sharp(shown.samples, { raw })
    .resize(SIDE_PX, SIDE_PX, { fit: 'inside', withoutEnlargement: true })
    .raw()
    .toBuffer({ resolveWithObject: true });
  const picture = valuePicture(encodedRaster(info.width, info.height, data), [0, 0, 1, 1], SQUINT);
  const drawn = drawnValues(picture, plannedValues(picture, count, cuts));
  const { widthPx, heightPx } = picture;
  const jpeg = await sharp(drawn, { raw: { width: widthPx, height: heightPx, channels: 4 } })
    .removeAlpha()
    .jpeg({ quality: 95, chromaSubsampling: '4:4:4' })
    .toBuffer();
  return { jpeg, widthPx, heightPx };
}
