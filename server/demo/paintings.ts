/**
 * The two invented paintings of the demo: who painted them, how each plane is shifted on purpose, how they were
 * drawn; and the one call that paints one.
 *
 * The early one keeps the massif close: too dark, too warm, too coloured. The later one lets it go back, in the
 * painter's own slightly higher key. Pure: the photograph comes in as pixels, the painting goes out as pixels.
 */
import type { FractionPoint, PhotoCorrection } from '../core/contract/setup.ts';
import type { EncodedRaster } from '../core/image/raster.ts';
import { drawLabelMap } from '../core/planes/label-map.ts';
import { DEMO_PLANES } from './outlines.ts';
import { labFields, rasterOf } from './paint/colours.ts';
import { type Drawing, drawnAt, redrawn } from './paint/drawing.ts';
import { photographed } from './paint/finish.ts';
import { MANNERS } from './paint/manner.ts';
import { onShot, onTheWall, SHOT_CARDS, SHOT_CORNERS, SHOT_SIZE } from './paint/on-the-wall.ts';
import { type PlaneShift, paint } from './paint/painter.ts';
import { seededRandom } from './paint/random.ts';
import { studyPlanes } from './paint/study.ts';

/** Long side at which the photograph is studied: as much as a half-closed eye takes in. */
export const STUDY_WIDTH_PX = 640;
export const PAINTING_WIDTH_PX = 1600;
export const PAINTING_HEIGHT_PX = 1065;

export type DemoPaintingName = 'close-massif' | 'far-massif';

interface DemoPainting {
  seed: number;
  drawing: Drawing;
  /** Far to near, as `DEMO_PLANES`. */
  shifts: readonly PlaneShift[];
}

/** The brush smooths: this much spread and colour keeps a plane as varied on the canvas as in the photograph. */
const AS_SEEN: PlaneShift = { L: 0, a: 0, b: 0, span: 1.1, colour: 1.05 };

export const DEMO_PAINTINGS: Record<DemoPaintingName, DemoPainting> = {
  'close-massif': {
    seed: 11,
    drawing: { sway: 0.007, taller: -0.012, phase: 0.6 },
    shifts: [
      AS_SEEN,
      { L: -8.5, a: 13.5, b: 21.5, span: 1.3, colour: 1.15 },
      { ...AS_SEEN, span: 1.2 },
      AS_SEEN,
    ],
  },
  'far-massif': {
    seed: 29,
    drawing: { sway: 0.005, taller: 0.02, phase: 2.4 },
    shifts: [
      AS_SEEN,
      { ...AS_SEEN, L: 2.5 },
      { ...AS_SEEN, L: 2.5, span: 1.2 },
      { ...AS_SEEN, L: 2.5, span: 1.2 },
    ],
  },
};

/** The warm earth rubbed over the canvas before the first stroke; it shows where the brush ran dry. */
const TONE = { L: 58, a: 9, b: 24 };

/**
 * Paints one of the two.
 *
 * @param photo The photograph, `STUDY_WIDTH_PX` wide, sRGB.
 * @returns `PAINTING_WIDTH_PX` by `PAINTING_HEIGHT_PX`; the same pixels every time.
 */
export function paintDemo(name: DemoPaintingName, photo: EncodedRaster): EncodedRaster {
  const { seed, drawing, shifts } = DEMO_PAINTINGS[name];
  const seen = redrawn(labFields(photo), drawing);
  const outlines = DEMO_PLANES.map((_, plane) => paintedOutline(name, plane));
  const labels = drawLabelMap(photo.widthPx, photo.heightPx, outlines);
  const { canvas, tooth } = paint({
    widthPx: PAINTING_WIDTH_PX,
    heightPx: PAINTING_HEIGHT_PX,
    tone: TONE,
    photo: seen,
    planes: studyPlanes(seen, labels, DEMO_PLANES.length),
    manners: MANNERS,
    shifts,
    random: seededRandom(seed),
  });
  return rasterOf(photographed(canvas, tooth));
}

/** The painting as its painter posted it: Maren's on the wall with two grey cards, Jonas's cut to its edges. */
export function shotOf(name: DemoPaintingName, painting: EncodedRaster): EncodedRaster {
  return name === 'close-massif' ? onTheWall(painting) : painting;
}

/** A place on the painting, 0..1, as a place on the picture its painter posted. */
export function onPosted(name: DemoPaintingName, point: FractionPoint): FractionPoint {
  return name === 'close-massif' ? onShot(point) : point;
}

/** What the painter set to put the photo right, or null where nothing is to be set. */
export function correctionOf(name: DemoPaintingName): Required<PhotoCorrection> | null {
  if (name !== 'close-massif') return null;
  return { corners: SHOT_CORNERS, cards: SHOT_CARDS, size: SHOT_SIZE };
}

/** The outline of a plane on the painting, 0..1 of it. @param plane Index far to near. */
export function paintedOutline(name: DemoPaintingName, plane: number): FractionPoint[] {
  const { drawing } = DEMO_PAINTINGS[name];
  return (DEMO_PLANES[plane]?.outline ?? []).map((point) => drawnAt(drawing, point));
}
