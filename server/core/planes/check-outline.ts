/**
 * Refuses outlines that enclose nothing, with a sentence that names the plane.
 *
 * In the flow: setup -> [check-outline] -> label map. Pure.
 */
import type { FractionPoint } from '../contract/setup.ts';
import { findSelfCrossing, signedArea } from '../geometry/outline.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';

/** Outlines may leave the picture (squaring moves points), but not by more than this many picture sides. */
const COORDINATE_LIMIT = 10;
/** Smallest area, as a share of the picture: about a tenth of a pixel of the largest plate. */
const SMALLEST_AREA = 2e-8;

/**
 * @param outline fractions of the picture.
 * @throws Problem `outline-invalid` for fewer than three points, a coordinate that is no fraction, an
 *   outline that crosses itself, or one without area.
 */
export function checkOutline(planeName: string, outline: readonly FractionPoint[]): void {
  const refuse = (sentence: string): Problem => new Problem('outline-invalid', sentence);
  if (outline.length < 3) {
    throw refuse(
      outline.length === 1
        ? say`The outline of '${planeName}' has 1 point. An outline needs at least 3; add some.`
        : say`The outline of '${planeName}' has ${outline.length} points. An outline needs at least 3; add some.`,
    );
  }
  const astray = outline.findIndex(
    ([x, y]) => !(Math.abs(x) <= COORDINATE_LIMIT && Math.abs(y) <= COORDINATE_LIMIT),
  );
  const strayPoint = outline[astray];
  if (strayPoint) {
    throw refuse(
      say`The outline of '${planeName}' has point ${astray + 1} at (${strayPoint[0]}, ${strayPoint[1]}). Points are fractions of the picture, 0 to 1; move it inside.`,
    );
  }
  const crossing = findSelfCrossing(outline);
  if (crossing) {
    throw refuse(
      say`The outline of '${planeName}' crosses itself between points ${crossing[0] + 1} and ${crossing[1] + 1}. Move one of them.`,
    );
  }
  if (Math.abs(signedArea(outline)) < SMALLEST_AREA) {
    throw refuse(
      say`The outline of '${planeName}' has ${outline.length} points on one line and so no area. Move one of them off the line.`,
    );
  }
}
