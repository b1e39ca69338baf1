/**
 * Projective maps between a rectangle and a four-sided shape.
 *
 * In the flow: corners -> [homography] -> squared picture, moved points. Pure.
 * Source: Heckbert (1989), "Fundamentals of texture mapping and image warping", §2.2.3.
 */
import type { FractionPoint } from '../contract/setup.ts';
import { apply3, type Matrix3 } from './matrix3.ts';

/** Clockwise from the top left. */
export type Corners = readonly [FractionPoint, FractionPoint, FractionPoint, FractionPoint];

/**
 * Map from the unit square (0,0 top left to 1,1 bottom right) to a convex four-sided shape.
 * @param corners checked before: convex, not a sliver.
 */
export function squareToCorners(corners: Corners): Matrix3 {
  const [[x0, y0], [x1, y1], [x2, y2], [x3, y3]] = corners;
  const [dx1, dy1, dx2, dy2] = [x1 - x2, y1 - y2, x3 - x2, y3 - y2];
  const [sx, sy] = [x0 - x1 + x2 - x3, y0 - y1 + y2 - y3];
  const area = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / area;
  const h = (dx1 * sy - sx * dy1) / area;
  return [
    [x1 - x0 + g * x1, x3 - x0 + h * x3, x0],
    [y1 - y0 + g * y1, y3 - y0 + h * y3, y0],
    [g, h, 1],
  ];
}

/** Where a point goes. A point on the horizon of the map goes to infinity. */
export function project(matrix: Matrix3, [x, y]: FractionPoint): FractionPoint {
  const [px, py, w] = apply3(matrix, [x, y, 1]);
  return [px / w, py / w];
}
