/**
 * A setup as measuring wants it: what lies on the painting in fractions of the squared painting.
 *
 * In the flow: setup (fractions of the upright photo) -> [on-squared] -> measure-pair. Pure.
 */
import type { Setup } from '../contract/setup.ts';
import { fractionMapper } from '../rectify/fraction-mapper.ts';

/** Outlines and focus of the painting from its upright photo to the squared painting. @throws Problem `corners-invalid`. */
export function onSquared(setup: Setup): Setup {
  const { toSquared } = fractionMapper(setup.photo);
  return {
    ...setup,
    planes: setup.planes.map((plane) =>
      plane.painting ? { ...plane, painting: plane.painting.map(toSquared) } : plane,
    ),
    focus: setup.focus && toSquared(setup.focus),
  };
}
