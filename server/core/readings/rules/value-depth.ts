/**
 * V5, V6: darks that turn back on their way into the distance, and distance lights that beat the foreground.
 *
 * In the flow: scene -> [rules] -> findings. Pure. Sources: Leonardo (Richter 1883; Rigaud 1802), Koschmieder 1924.
 */

import type { ReadingForm } from '../../contract/critique.ts';
import { say } from '../../say/say.ts';
import { because, NO_AIR } from '../conditions.ts';
import { formOf } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import { farAndNear, neighbours, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const HALF_STEP = 5;

/** `near - far` of a figure in target and painting; null where a target is missing and kinds differ. */
function dropOf(
  scene: Scene,
  far: ScenePlane,
  near: ScenePlane,
  key: 'dark' | 'light',
): { target: number | null; painting: number } | null {
  const [pFar, pNear] = [far.painting[key], near.painting[key]];
  const [rFar, rNear] = [far.target?.[key] ?? null, near.target?.[key] ?? null];
  if (pFar === null || pNear === null) return null;
  if (!scene.hasTarget) return far.kind === near.kind ? { target: null, painting: pNear - pFar } : null;
  return rFar === null || rNear === null ? null : { target: rNear - rFar, painting: pNear - pFar };
}

function turnBack(scene: Scene, far: ScenePlane, near: ScenePlane): Finding | null {
  const drop = dropOf(scene, far, near, 'dark');
  if (!drop) return null;
  const sigma = scene.noise.difference(far.painting, near.painting, 'dark');
  const form = formOf({ ...drop, threshold: HALF_STEP, sigma, apart: HALF_STEP });
  if (!form) return null;
  const sentences: Record<ReadingForm, string> = {
    finding: say`Going back, the darks should lighten a little each time; between the ${near.label} and the ${far.label} they turn back.`,
    question: say`From the ${near.label} to the ${far.label} the darks get heavier, ${inTarget(scene)} too. Does that help the depth?`,
    check: say`Check: from the ${near.label} to the ${far.label} the darks get heavier. Should they not lighten?`,
  };
  return {
    planes: [far.name, near.name],
    difference: drop.painting,
    threshold: HALF_STEP,
    form,
    sentence: sentences[form],
    restsOn: scene.hasTarget ? [far.name, near.name] : [],
    levers:
      form === 'question'
        ? []
        : [{ plane: far.name, part: 'darks', direction: 'lift', amountL: drop.painting }],
  };
}

export const V5: Rule = {
  id: 'V5',
  name: say`Darks don't climb in steps`,
  group: 3,
  family: null,
  inputs: 'dark of neighbours among the land planes',
  threshold: 'far darks more than 5 L* (half a step) under the near ones, and as much apart from the target',
  noise: 'difference of two darks inside the painting',
  mutedBy: because(...NO_AIR, 'valley-mist', 'cloud-shadow', 'night'),
  colour: false,
  why: say`Behind more air every dark is lighter than the dark in front of it.`,
  source: 'Leonardo, Notebooks (Richter 1883); Koschmieder 1924',
  find: (scene) => neighbours(scene.land).flatMap(({ far, near }) => turnBack(scene, far, near) ?? []),
};

function beats(scene: Scene, far: ScenePlane, near: ScenePlane): Finding | null {
  const drop = far.kind === 'snow' ? null : dropOf(scene, far, near, 'light');
  if (!drop) return null;
  const sigma = scene.noise.difference(far.painting, near.painting, 'light');
  const trait = { painting: -drop.painting, target: drop.target === null ? null : -drop.target };
  const form = formOf({ ...trait, threshold: HALF_STEP, sigma, apart: HALF_STEP });
  if (!form) return null;
  const sentences: Record<ReadingForm, string> = {
    finding: say`The lights on the ${far.label} beat the foreground. Bring them down or warm-grey them slightly.`,
    question: say`The lights on the ${far.label} beat the foreground, ${inTarget(scene)} too. Should the eye go there?`,
    check: say`Check: the lights on the ${far.label} beat those on the ${near.label}. Is that where the sun falls?`,
  };
  return {
    planes: [far.name],
    difference: trait.painting,
    threshold: HALF_STEP,
    form,
    sentence: sentences[form],
    restsOn: scene.hasTarget ? [far.name, near.name] : [],
    levers:
      form === 'question'
        ? []
        : [{ plane: far.name, part: 'lights', direction: 'deepen', amountL: trait.painting }],
  };
}

export const V6: Rule = {
  id: 'V6',
  name: say`Distance lights too strong`,
  group: 3,
  family: null,
  inputs: 'light of each far plane (not snow) and of the nearest',
  threshold: 'far lights more than 5 L* (half a step) above the near ones, and as much apart from the target',
  noise: 'difference of two lights inside the painting',
  mutedBy: because('shallow', 'snow', 'against-light', 'cloud-shadow', 'sun-spot'),
  colour: false,
  why: say`Through air, lights fall or hold; they never gain.`,
  source: say`Leonardo, Treatise (Rigaud 1802, ch. 287)`,
  find: (scene) => farAndNear(scene).flatMap(({ far, near }) => beats(scene, far, near) ?? []),
};
