/**
 * Refuses corners that no flat picture can have. Pure.
 *
 * In the flow: photo correction -> [check-corners] -> homography.
 */
import type { FractionPoint } from '../contract/setup.ts';
import type { Corners } from '../geometry/homography.ts';
import { signedArea } from '../geometry/outline.ts';
import { Problem } from '../problem.ts';
import { say } from '../say/say.ts';

/** Smallest part of the photo that a painting can fill, and smallest triangle of three neighbouring corners. */
const SMALLEST_AREA = 0.01;
const SMALLEST_TRIANGLE = 0.002;
/** How far outside the photo a corner may be put, as a share of its side. */
const OUTSIDE = 0.02;

const NAMES = [say`top left`, say`top right`, say`bottom right`, say`bottom left`];

/** @param at 0..3, as corners are given. */
function nameOf(at: number): string {
  return NAMES[at] as string; // there are four
}

/** Signed area of the triangle that a corner makes with its two neighbours; above 0 when convex and clockwise. */
function turnsAt(corners: Corners): number[] {
  return corners.map((corner, at) => {
    const before = corners[(at + 3) % 4] as FractionPoint;
    const after = corners[(at + 1) % 4] as FractionPoint;
    return signedArea([before, corner, after]);
  });
}

/** In percent, its sign left out. */
function percent(share: number): string {
  return (share * 100).toFixed(1);
}

/**
 * @param corners clockwise from the painting's top left, 0..1 of the upright photo.
 * @throws Problem `corners-invalid` when they lie outside the photo, cross, run the wrong way round, make a
 *   dent, or enclose next to nothing.
 */
export function checkCorners(corners: Corners): void {
  const refuse = (sentence: string): Problem => new Problem('corners-invalid', sentence);
  const astray = corners.findIndex(
    ([x, y]) => !(x >= -OUTSIDE && x <= 1 + OUTSIDE && y >= -OUTSIDE && y <= 1 + OUTSIDE),
  );
  const stray = corners[astray];
  if (stray) {
    throw refuse(
      say`The ${nameOf(astray)} corner lies at (${stray[0]}, ${stray[1]}), outside the photo. Corners are fractions of the photo, 0 to 1; move it inside.`,
    );
  }
  const turns = turnsAt(corners);
  if (turns.every((turn) => turn < 0)) {
    throw refuse(
      say`The 4 corners run the wrong way round. Start at the top left of the painting and go clockwise: top right, bottom right, bottom left.`,
    );
  }
  const wrong = turns.filter((turn) => turn < 0).length;
  if (wrong === 2)
    throw refuse(
      say`The 4 corners cross over: 2 sides of the painting cut each other. Swap two neighbouring corners.`,
    );
  if (wrong > 0) {
    const dent = nameOf(turns.findIndex((turn) => turn < 0));
    throw refuse(
      say`The 4 corners make a dent at the ${dent}. Move that corner outwards, onto the corner of the painting.`,
    );
  }
  const area = signedArea(corners);
  if (area < SMALLEST_AREA) {
    throw refuse(
      say`The 4 corners enclose ${percent(area)} % of the photo; at least 1 % is needed. Move them onto the corners of the painting.`,
    );
  }
  const thinnest = turns.indexOf(Math.min(...turns));
  if ((turns[thinnest] as number) < SMALLEST_TRIANGLE) {
    throw refuse(
      say`The ${nameOf(thinnest)} corner lies almost on the line between its neighbours, so the shape is a sliver with 3 sides. Move it onto the corner of the painting.`,
    );
  }
}
