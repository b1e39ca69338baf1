/**
 * V10, V11: the sky as the source of light, and surfaces by their angle to it.
 *
 * In the flow: scene -> [rules] -> findings. They need tilt tags on the planes. Pure. Source: Parkhurst 1898, ch.
 * XXXI (three planes, diffused light); Leonardo (Richter 1883, 436).
 */

import type { ReadingForm } from '../../contract/critique.ts';
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { formOf, shows } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import { neighbours, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const SKY_OVER_GROUND = 2;
const SKY_OVER_GROUND_IN_TARGET = 6;
const HALF_STEP = 5;

function darkSky(scene: Scene, sky: ScenePlane, ground: ScenePlane): Finding | null {
  const [rSky, rGround] = [sky.target?.mid ?? null, ground.target?.mid ?? null];
  if (rSky === null || rGround === null) return null;
  const over = { target: rSky - rGround, painting: (sky.painting.mid ?? 0) - (ground.painting.mid ?? 0) };
  const threshold = SKY_OVER_GROUND_IN_TARGET - SKY_OVER_GROUND;
  const sigma = scene.noise.difference(sky.painting, ground.painting, 'mid');
  // A sky painted level with the ground may come out one deviation above the limit.
  if (over.painting >= SKY_OVER_GROUND + sigma) return null;
  const question = over.target < SKY_OVER_GROUND;
  if (!question && over.target < SKY_OVER_GROUND_IN_TARGET) return null;
  if (!question && !shows(over.target - over.painting, threshold, sigma)) return null;
  return {
    planes: [sky.name, ground.name],
    difference: question ? threshold : over.target - over.painting,
    threshold,
    form: question ? 'question' : 'finding',
    sentence: question
      ? say`The sky is no lighter than the ${ground.label}, ${inTarget(scene)} too. Is that the light you want?`
      : say`The sky is not lighter than the ${ground.label} under it, though it lights the scene.`,
    restsOn: [sky.name, ground.name],
    levers: question
      ? []
      : [
          {
            plane: sky.name,
            part: 'whole',
            direction: 'lift',
            amountL: over.target - over.painting,
          },
        ],
  };
}

export const V10: Rule = {
  id: 'V10',
  name: say`Sky not the light source`,
  group: 4,
  family: null,
  inputs: 'mid of the sky and of planes tagged flat',
  threshold: 'painted sky less than 2 L* above flat ground where the target has at least 6',
  noise: 'difference of two mids inside the painting',
  mutedBy: because('snow', 'against-light', 'low-sun', 'sun-spot', 'night', 'smoke'),
  colour: false,
  why: say`The sky lights the land, so flat ground under it is darker, save for snow, storm and a low sun.`,
  source: say`Parkhurst 1898, ch. XXXI`,
  find(scene) {
    const { sky } = scene;
    if (!sky) return [];
    return scene.land
      .filter(({ tilt }) => tilt === 'flat')
      .flatMap((ground) => darkSky(scene, sky, ground) ?? [])
      .sort((one, two) => two.difference - one.difference)
      .slice(0, 1);
  },
};

function outshines(scene: Scene, one: ScenePlane, two: ScenePlane): Finding | null {
  const upright = [one, two].find(({ tilt }) => tilt === 'upright');
  const lying = [one, two].find(({ tilt }) => tilt === 'flat' || tilt === 'slanted');
  if (!upright || !lying) return null;
  const [rUp, rLying] = [upright.target?.mid ?? null, lying.target?.mid ?? null];
  if (rUp === null || rLying === null) return null;
  const painting = (upright.painting.mid ?? 0) - (lying.painting.mid ?? 0);
  const sigma = scene.noise.difference(upright.painting, lying.painting, 'mid');
  const form = formOf({
    painting,
    target: rUp - rLying,
    threshold: HALF_STEP,
    sigma,
    apart: HALF_STEP,
  });
  if (!form || form === 'check') return null;
  // Behind more air an upright is lighter in every photo: nothing to ask.
  if (form === 'question' && upright.index < lying.index) return null;
  const sentences: Record<Exclude<ReadingForm, 'check'>, string> = {
    finding:
      lying.tilt === 'flat'
        ? say`Uprights usually sit darker than flat ground; here the ${upright.label} outshines the ${lying.label}.`
        : say`Uprights usually sit darker than slanted ground; here the ${upright.label} outshines the ${lying.label}.`,
    question: say`The ${upright.label} outshines the ${lying.label}, ${inTarget(scene)} too. Does the light explain it?`,
  };
  return {
    planes: [one.name, two.name],
    difference: painting,
    threshold: HALF_STEP,
    form,
    sentence: sentences[form],
    restsOn: [one.name, two.name],
    levers:
      form === 'question'
        ? []
        : [{ plane: upright.name, part: 'whole', direction: 'deepen', amountL: painting }],
  };
}

export const V11: Rule = {
  id: 'V11',
  name: say`Angle order broken`,
  group: 4,
  family: null,
  inputs: 'mid of neighbours, one tagged upright, the other flat or slanted',
  threshold: 'upright more than 5 L* (half a step) above the lying plane, and as much apart from the target',
  noise: 'difference of two mids inside the painting',
  mutedBy: because('snow', 'against-light', 'low-sun', 'cloud-shadow', 'sun-spot', 'night'),
  colour: false,
  why: say`Under general sky light, what faces the sky is lightest and what stands upright is darkest.`,
  source: say`Leonardo, Notebooks (Richter 1883, 436); Parkhurst 1898, ch. XXXI`,
  find: (scene) => neighbours(scene.land).flatMap(({ far, near }) => outshines(scene, far, near) ?? []),
};
