/**
 * A mark stays on its spot of the painting, however the photo of it is squared, cropped or mirrored.
 *
 * The truth comes from a camera, not from our own map: a pinhole (Hartley & Zisserman 2004, "Multiple View Geometry",
 * chapter 6) photographs a flat canvas, so every spot of the canvas has a known place in the photo. The aim is the
 * issue's own: within 0.3 % of the painting's width.
 */
import { describe, expect, test } from 'vitest';
import { mirroredFrame, plainFrame } from '#app/_easel/frame.ts';
import { squaredFrameOf } from '#app/_easel/squared-frame.ts';
import { thinned } from '#app/_easel/stroke-points.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';

const PHOTO = { width: 4000, height: 3000 };
const CANVAS = { width: 0.6, height: 0.45 };
const TOLERANCE = 0.003;

interface Shot {
  what: string;
  /** Turn of the canvas about its upright, its level and the line of sight, radians. */
  turn: [number, number, number];
  /** Where its middle stands, metres: right, down, away. */
  middle: [number, number, number];
  /** In photo widths. */
  focal: number;
}

const SHOTS: Shot[] = [
  { what: 'straight on', turn: [0, 0, 0], middle: [0, 0, 1], focal: 0.9 },
  { what: 'from the left', turn: [0.4, 0, 0], middle: [0.02, 0, 1], focal: 0.9 },
  { what: 'from below, held aslant', turn: [0.1, 0.35, 0.12], middle: [-0.05, 0.04, 1.1], focal: 0.9 },
  { what: 'near, with a wide lens', turn: [-0.3, 0.2, -0.05], middle: [0.03, -0.02, 0.8], focal: 0.7 },
];

/** Where a spot of the canvas (0..1) lies in the photo (0..1). */
function photographed({ turn: [y, x, z], middle, focal }: Shot, [u, v]: FractionPoint): FractionPoint {
  const [px, py] = [(u - 0.5) * CANVAS.width, (v - 0.5) * CANVAS.height];
  const [rx, ry] = [px * Math.cos(z) - py * Math.sin(z), px * Math.sin(z) + py * Math.cos(z)];
  const [tx, ty, tz] = [rx, ry * Math.cos(x), ry * Math.sin(x)];
  const at = [tx * Math.cos(y) + tz * Math.sin(y), ty, -tx * Math.sin(y) + tz * Math.cos(y)] as const;
  const [cx, cy, cz] = [at[0] + middle[0], at[1] + middle[1], at[2] + middle[2]];
  const aspect = PHOTO.width / PHOTO.height;
  return [0.5 + (focal * cx) / cz, 0.5 + (focal * aspect * cy) / cz];
}

const SPOTS: FractionPoint[] = [
  [0.5, 0.5],
  [0.04, 0.93],
  [0.31, 0.12],
  [0.87, 0.66],
  [0.98, 0.02],
];

const apart = ([a, b]: FractionPoint, [c, d]: FractionPoint) => Math.hypot(a - c, b - d);

/** As the product keeps a point that was drawn. */
function kept(point: FractionPoint): FractionPoint {
  const [first] = thinned([point, point]);
  return [first?.[0] ?? Number.NaN, first?.[1] ?? Number.NaN];
}

function squaredBy(shot: Shot, part: readonly [FractionPoint, FractionPoint, FractionPoint, FractionPoint]) {
  const [a, b, c, d] = part.map((corner) => photographed(shot, corner));
  if (!a || !b || !c || !d) throw new Error('Four corners were asked for.');
  const frame = squaredFrameOf({ corners: [a, b, c, d] }, PHOTO);
  if (!frame) throw new Error('These corners make no picture.');
  return frame;
}

const WHOLE = [[0, 0], [1, 0], [1, 1], [0, 1]] as const satisfies FractionPoint[]; // biome-ignore format: four corners
/** A part of the canvas: the painter crops a tenth off the left and a fifth off the top. */
const PART = [[0.1, 0.2], [1, 0.2], [1, 1], [0.1, 1]] as const satisfies FractionPoint[]; // biome-ignore format: four corners

describe('a mark set on the photo as it came', () => {
  test.each(SHOTS)('lies on the same spot once the painting is squared: $what', (shot) => {
    const frame = squaredBy(shot, [...WHOLE]);
    for (const spot of SPOTS) {
      const mark = kept(photographed(shot, spot));
      expect(apart(frame.shown(mark), spot)).toBeLessThan(TOLERANCE);
      const [x, y] = mirroredFrame(frame).shown(mark);
      expect(apart([1 - x, y], spot)).toBeLessThan(TOLERANCE);
    }
  });

  test.each(SHOTS)('and once it is cropped: $what', (shot) => {
    const frame = squaredBy(shot, [...PART]);
    for (const spot of SPOTS) {
      const mark = kept(photographed(shot, spot));
      const inPart: FractionPoint = [(spot[0] - 0.1) / 0.9, (spot[1] - 0.2) / 0.8];
      expect(apart(frame.shown(mark), inPart)).toBeLessThan(TOLERANCE);
    }
  });
});

describe('a mark set on the squared painting', () => {
  test.each(SHOTS)('lies on the same spot of the photo, and of another squaring: $what', (shot) => {
    const [whole, part] = [squaredBy(shot, [...WHOLE]), squaredBy(shot, [...PART])];
    const plain = plainFrame(PHOTO);
    for (const spot of SPOTS) {
      const mark = kept(whole.original(spot));
      expect(apart(plain.shown(mark), photographed(shot, spot))).toBeLessThan(TOLERANCE);
      const inPart: FractionPoint = [(spot[0] - 0.1) / 0.9, (spot[1] - 0.2) / 0.8];
      expect(apart(part.shown(mark), inPart)).toBeLessThan(TOLERANCE);
    }
  });
});
