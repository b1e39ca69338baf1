/**
 * Everything the shapes of a picture suggest, the plainest of each rank first.
 *
 * In the flow: shape scene -> rules -> [suggest] -> plan. Nothing here is a fault; each says where to look. Pure.
 */
import { say } from '../../say/say.ts';
import { focusPlace } from './focus.ts';
import { equalDivisions, horizonHalves } from './horizon.ts';
import { lopsidedWeight, oneLevel, twoRivals } from './pull.ts';
import { ridgeShapes } from './ridges.ts';
import type { ShapeScene } from './shape-scene.ts';
import type { Seen, Suggestion } from './suggestion.ts';
import { touchingContours } from './touching.ts';

const RULES: readonly ((scene: ShapeScene) => Seen[])[] = [
  horizonHalves,
  focusPlace,
  touchingContours,
  ridgeShapes,
  lopsidedWeight,
  twoRivals,
  oneLevel,
  equalDivisions,
];

/** K1-K3 and K6 before K4, K5 and what is of their kind. */
const FIRST = new Set(['K1', 'K2', 'K3', 'K6']);
const MEANT = say`The painter marked this as meant.`;

/** @param meant readings that the painter meant: `K4` everywhere, `K4/far ridge` on one plane. */
export function suggestionsOf(scene: ShapeScene, meant: readonly string[]): Suggestion[] {
  const isMeant = ({ id, planes }: Seen): boolean =>
    meant.includes(id) || planes.some((plane) => meant.includes(`${id}/${plane}`));
  return RULES.flatMap((rule) => rule(scene))
    .map((seen) => ({ ...seen, muted: isMeant(seen) ? MEANT : null }))
    .sort(
      (one, two) =>
        Number(one.muted !== null) - Number(two.muted !== null) ||
        Number(FIRST.has(two.id)) - Number(FIRST.has(one.id)) ||
        two.severity - one.severity,
    );
}
