/**
 * What a person wishes of a planned ladder, with every wish filled in. Types, and the usual wishes.
 *
 * The shapes that travel stand in `contract/plan-wishes.ts`.
 */
import type { PlaneHandle, WishedAir } from '../../contract/plan-wishes.ts';
import type { Condition } from '../../contract/setup.ts';

export interface LadderWishes {
  /** Number of planes, sky included; null = as many as there are (fewer in fog and at night). */
  readonly count: number | null;
  /** Colour of the planned air; null = the photograph's own, warm under a low sun. */
  readonly air: WishedAir | null;
  /** Air to add: 0 = as the photograph, 1 = usual. */
  readonly strength: number;
  readonly conditions: readonly Condition[];
  /** By key of the plane: its name, unless it has a key of its own. */
  readonly handles: Readonly<Record<string, PlaneHandle>>;
}

export const USUAL_WISHES: LadderWishes = {
  count: null,
  air: null,
  strength: 1,
  conditions: [],
  handles: {},
};
