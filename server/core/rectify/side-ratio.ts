/**
 * Width / height of the painting behind four corners seen in perspective.
 *
 * In the flow: corners -> [side-ratio] -> size of the squared plate. Pure.
 * Source: Zhang, Z. & He, L.-W. (2007), "Whiteboard scanning and image enhancement", Digital Signal
 * Processing 17(2), 414-432, equations 11 to 21; square pixels, principal point at the photo's centre.
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { Corners } from '../geometry/homography.ts';
import { cross3, dot3, type Triple } from '../geometry/matrix3.ts';

/** Convergence of both pairs of sides, per half diagonal, from which the corners tell the focal length. */
const OBLIQUE_ENOUGH = 0.04;
/** Focal lengths of cameras, in half diagonals of the photo: about 10 to 330 mm on 36 × 24 mm film. */
const SHORTEST_FOCAL = 0.45;
const LONGEST_FOCAL = 15;

export interface SideRatio {
  /** Width / height. */
  readonly ratio: number;
  readonly from: 'size' | 'perspective' | 'sides';
}

/** Mean lengths of opposite sides in pixels: [across, down]. */
export function meanSidesPx(corners: Corners, widthPx: number, heightPx: number): [number, number] {
  const length = (p: FractionPoint, q: FractionPoint): number =>
    Math.hypot((p[0] - q[0]) * widthPx, (p[1] - q[1]) * heightPx);
  const [a, b, c, d] = corners;
  return [(length(a, b) + length(d, c)) / 2, (length(a, d) + length(b, c)) / 2];
}

/** Zhang & He's estimate, or null where the view is too straight or the focal length impossible. */
function ratioFromPerspective(corners: Corners, widthPx: number, heightPx: number): number | null {
  const halfDiagonal = Math.hypot(widthPx, heightPx) / 2;
  const centred = ([x, y]: FractionPoint): Triple => [
    ((x - 0.5) * widthPx) / halfDiagonal,
    ((y - 0.5) * heightPx) / halfDiagonal,
    1,
  ];
  // Their order: 1 top left, 2 top right, 3 bottom left, 4 bottom right.
  const [m1, m2, m4, m3] = [
    centred(corners[0]),
    centred(corners[1]),
    centred(corners[2]),
    centred(corners[3]),
  ];
  const across4 = cross3(m1, m4);
  const k2 = dot3(across4, m3) / dot3(cross3(m2, m4), m3);
  const k3 = dot3(across4, m2) / dot3(cross3(m3, m4), m2);
  const along = (k: number, m: Triple): Triple => [k * m[0] - m1[0], k * m[1] - m1[1], k * m[2] - m1[2]];
  const [n2, n3] = [along(k2, m2), along(k3, m3)];
  if (Math.abs(n2[2]) < OBLIQUE_ENOUGH || Math.abs(n3[2]) < OBLIQUE_ENOUGH) return null;
  const focalSquared = -(n2[0] * n3[0] + n2[1] * n3[1]) / (n2[2] * n3[2]);
  if (!(focalSquared > SHORTEST_FOCAL ** 2 && focalSquared < LONGEST_FOCAL ** 2)) return null;
  const lengthSquared = (n: Triple): number => (n[0] ** 2 + n[1] ** 2) / focalSquared + n[2] ** 2;
  return Math.sqrt(lengthSquared(n2) / lengthSquared(n3));
}

/**
 * @param corners checked. @param size typed width and height of the canvas, which wins over any estimate.
 */
export function sideRatioOf(
  corners: Corners,
  widthPx: number,
  heightPx: number,
  size: readonly [number, number] | undefined,
): SideRatio {
  if (size) return { ratio: size[0] / size[1], from: 'size' };
  const ratio = ratioFromPerspective(corners, widthPx, heightPx);
  if (ratio !== null) return { ratio, from: 'perspective' };
  const [across, down] = meanSidesPx(corners, widthPx, heightPx);
  return { ratio: across / down, from: 'sides' };
}
