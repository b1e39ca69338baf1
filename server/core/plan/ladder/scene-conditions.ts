/**
 * What the conditions of a scene change in a planned ladder, each with its reason.
 *
 * In the flow: conditions of the setup -> [scene-conditions] -> amounts, groups, notes. Pure. Reasons and their sources:
 * `readings/conditions.ts`; the amounts are our own choice, no source.
 */
import type { Condition } from '../../contract/setup.ts';
import { CONDITION_REASONS, NO_AIR } from '../../readings/conditions.ts';
import { say } from '../../say/say.ts';

interface Effect {
  /** Factor on the air that is usually added from plane to plane. */
  readonly airFactor?: number;
  /** Most planes of land, where a person does not say. */
  readonly mostLand?: number;
  /** What the plan does about it, as a sentence. */
  readonly does: string;
}

const EFFECTS: Record<Condition, Effect> = {
  snow: { does: say`Snow is planned with the air that lies before it and not made lighter again.` },
  'against-light': { does: say`A dark foreground and a warmer distance are kept.` },
  'low-sun': { does: say`Unless you picked one, the planned air is warm.` },
  fog: {
    airFactor: 2,
    mostLand: 3,
    does: say`The plan has fewer planes and twice the usual air between them.`,
  },
  'valley-mist': { does: say`Dark far summits are kept.` },
  'cloud-shadow': { does: say`The shaded plane is kept as dark as it is.` },
  'sun-spot': { does: say`The plane in the sun keeps its place and only takes its share of the air.` },
  'clear-air': { airFactor: 0.5, does: say`Only half the usual air is added.` },
  smoke: { airFactor: 1.25, does: say`A quarter more than the usual air is added.` },
  shallow: { airFactor: 0.25, does: say`Only a quarter of the usual air is added.` },
  night: { mostLand: 2, does: say`The plan groups the land into two planes at most.` },
};

/** Conditions under which darks may turn back on their way into the distance; those of reading V5. */
const DARKS_MAY_TURN: readonly Condition[] = [...NO_AIR, 'valley-mist', 'cloud-shadow', 'night'];
/** Conditions under which neighbours may share one value; those of reading V2. */
const PLANES_MAY_MERGE: readonly Condition[] = ['fog', 'night'];

export interface SceneEffects {
  readonly airFactor: number;
  /** Null = no limit. */
  readonly mostLand: number | null;
  /** Why darks may turn back, or null where they may not. */
  readonly darksMayTurn: string | null;
  /** Why planes may merge, or null. */
  readonly planesMayMerge: string | null;
  /** One note a condition: the reason, and what the plan does. */
  readonly notes: string[];
}

function firstReason(conditions: readonly Condition[], among: readonly Condition[]): string | null {
  const found = conditions.find((condition) => among.includes(condition));
  return found ? CONDITION_REASONS[found] : null;
}

export function sceneEffects(conditions: readonly Condition[]): SceneEffects {
  const met = [...new Set(conditions)];
  const limits = met.flatMap((condition) => EFFECTS[condition].mostLand ?? []);
  return {
    airFactor: met.reduce((factor, condition) => factor * (EFFECTS[condition].airFactor ?? 1), 1),
    mostLand: limits.length === 0 ? null : Math.min(...limits),
    darksMayTurn: firstReason(met, DARKS_MAY_TURN),
    planesMayMerge: firstReason(met, PLANES_MAY_MERGE),
    notes: met.map((condition) => `${CONDITION_REASONS[condition]} ${EFFECTS[condition].does}`),
  };
}
