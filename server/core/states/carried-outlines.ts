/**
 * Outlines of the last state on the next one: the same places of the same painting, in another photograph.
 *
 * In the flow: outlines + both photos' corners + alignment -> [carried-outlines] -> the next state's room. Pure.
 */
import type { Outline, PhotoCorrection } from '../contract/setup.ts';
import { project } from '../geometry/homography.ts';
import type { Matrix3 } from '../geometry/matrix3.ts';
import { fractionMapper } from '../rectify/fraction-mapper.ts';

/**
 * @param outlines by plane, in fractions of the earlier upright photo. @returns In fractions of the later one.
 * @throws Problem `corners-invalid`.
 */
export function carriedOutlines(
  outlines: ReadonlyMap<string, Outline>,
  earlier: PhotoCorrection,
  later: PhotoCorrection,
  toLater: Matrix3,
): Map<string, Outline> {
  const [from, to] = [fractionMapper(earlier), fractionMapper(later)];
  const held = (value: number) => Math.min(1, Math.max(0, value));
  return new Map(
    [...outlines].map(([planeId, outline]) => [
      planeId,
      outline.map((point): Outline[number] => {
        const [x, y] = to.toOriginal(project(toLater, from.toSquared(point)));
        return [held(x), held(y)];
      }),
    ]),
  );
}
