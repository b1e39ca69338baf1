/** The whole photo as corners. Pure. */
import type { Corners } from '../geometry/homography.ts';

export const WHOLE_PHOTO: Corners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];
