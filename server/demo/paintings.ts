/**
 * The invented paintings of the demo: how each plane is shifted on purpose, how they were drawn and with which brushes;
 * and the one call that paints one.
 *
 * Five answers to the same air: one keeps the massif close, too dark, too warm, too coloured; one lets it go back in a
 * slightly higher key; one drowns it in pale air, one greys everything instead, one makes the distance violet. Pure: the photograph comes in as pixels, the painting goes out as pixels.
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

export type DemoPaintingName =
  | 'close-massif'
  | 'far-massif'
  | 'pale-massif'
  | 'grey-massif'
  | 'violet-massif';

interface DemoPainting {
  seed: number;
  drawing: Drawing;
  /** Far to near, as `DEMO_PLANES`. */
  shifts: readonly PlaneShift[];
  /** How many of each plane's brushes were used, the biggest first. */
  brushes: number;
  /** Photographed on the wall with two grey cards; else cut to its edges. */
  onWall: boolean;
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
    brushes: 4,
    onWall: true,
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
    brushes: 4,
    onWall: false,
  },
  'pale-massif': {
    seed: 53,
    drawing: { sway: 0.008, taller: 0.012, phase: 4.1 },
    shifts: [
      { ...AS_SEEN, L: 1.5, b: -2 },
      { L: 13, a: -1.5, b: -5, span: 0.6, colour: 0.6 },
      { ...AS_SEEN, L: 3, span: 1.1 },
      { ...AS_SEEN, L: -3, span: 1.2 },
    ],
    brushes: 2,
    onWall: true,
  },
  'grey-massif': {
    seed: 71,
    drawing: { sway: 0.009, taller: -0.006, phase: 1.5 },
    shifts: [
      { L: -7, a: 0, b: 1.5, span: 1, colour: 0.5 },
      { L: -5, a: 0.5, b: 2, span: 0.75, colour: 0.35 },
      { L: -6, a: -3, b: -3, span: 1, colour: 0.55 },
      { L: -8, a: 0, b: 0, span: 1.1, colour: 0.6 },
    ],
    brushes: 2,
    onWall: false,
  },
  'violet-massif': {
    seed: 97,
    drawing: { sway: 0.006, taller: 0.03, phase: 5.3 },
    shifts: [
      { ...AS_SEEN, L: -3, a: 3, b: -2 },
      { L: 4, a: 9, b: -13, span: 0.9, colour: 1.2 },
      { L: 2, a: 4, b: 6, span: 1.15, colour: 1.25 },
      { ...AS_SEEN, L: 1, b: 5, span: 1.1 },
    ],
    brushes: 3,
    onWall: false,
  },
};

/** The warm earth rubbed over the canvas before the first stroke; it shows where the brush ran dry. */
const TONE = { L: 58, a: 9, b: 24 };

/**
 * Paints one of them.
 *
 * @param photo The photograph, `STUDY_WIDTH_PX` wide, sRGB.
 * @returns `PAINTING_WIDTH_PX` by `PAINTING_HEIGHT_PX`; the same pixels every time.
 */
export function paintDemo(name: DemoPaintingName, photo: EncodedRaster): EncodedRaster {
  const { seed, drawing, shifts, brushes } = DEMO_PAINTINGS[name];
  const seen = redrawn(labFields(photo), drawing);
  const outlines = DEMO_PLANES.map((_, plane) => paintedOutline(name, plane));
  const labels = drawLabelMap(photo.widthPx, photo.heightPx, outlines);
  const { canvas, tooth } = paint({
    widthPx: PAINTING_WIDTH_PX,
    heightPx: PAINTING_HEIGHT_PX,
    tone: TONE,
    photo: seen,
    planes: studyPlanes(seen, labels, DEMO_PLANES.length),
    manners: MANNERS.map((manner) => ({ ...manner, layers: manner.layers.slice(0, brushes) })),
    shifts,
    random: seededRandom(seed),
  });
  return rasterOf(photographed(canvas, tooth));
}

/** The painting as its painter posted it: on the wall with two grey cards, or cut to its edges. */
export function shotOf(name: DemoPaintingName, painting: EncodedRaster): EncodedRaster {
  return DEMO_PAINTINGS[name].onWall ? onTheWall(painting) : painting;
}

/** A place on the painting, 0..1, as a place on the picture its painter posted. */
export function onPosted(name: DemoPaintingName, point: FractionPoint): FractionPoint {
  return DEMO_PAINTINGS[name].onWall ? onShot(point) : point;
}

/** What the painter set to put the photo right, or null where nothing is to be set. */
export function correctionOf(name: DemoPaintingName): Required<PhotoCorrection> | null {
  if (!DEMO_PAINTINGS[name].onWall) return null;
  return { corners: SHOT_CORNERS, cards: SHOT_CARDS, size: SHOT_SIZE };
}

/** The outline of a plane on the painting, 0..1 of it. @param plane Index far to near. */
export function paintedOutline(name: DemoPaintingName, plane: number): FractionPoint[] {
  const { drawing } = DEMO_PAINTINGS[name];
  return (DEMO_PLANES[plane]?.outline ?? []).map((point) => drawnAt(drawing, point));
}
