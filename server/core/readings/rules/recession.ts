/**
 * V4, V7, C1, C2: how much of the target's step back did the paint take? One family, one card per far plane.
 *
 * In the flow: scene -> [rules] -> findings. 1 = as the target, 0.5 or less = a finding. With no target only planes
 * of one kind are compared, and the word is "check". Pure. Sources: Koschmieder 1924 (exponential loss of
 * contrast); Leonardo (Richter 1883); Romero et al. 2011; Troscianko et al. 1991.
 */

import type { CardDirection, CardPart } from '../../contract/critique.ts';
import { say } from '../../say/say.ts';
import { because, NO_AIR } from '../conditions.ts';
import { shows } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import { type FigureKey, farAndNear, fourFigures, type Scene, type ScenePlane } from '../scene.ts';
import { aboutAmount } from '../words.ts';

const HALF = 0.5;
const RISE_OF_DARKS = 10;
const SHORTFALL_OF_DARKS = 5;
const LARGEST_RATIO = 0.7;
const RATIO_FLOOR = 2;
const STRONG_ENOUGH = 15;
/** C* that the far plane must have over what the target's ratio asks for: less is not seen as too coloured. */
const OVER_CHROMA = 6;
const FALL_TO_AIR = 15;
/** dE that the painting must be short: style alone (span, chroma) loses up to this on a fall of 15 to 24. */
const SHORTFALL_TO_AIR = 12;
/** With no target: how far against the rule a like plane must go, in L* or dE, and as a log ratio. */
const CHECK_L = 5;
const CHECK_LOG = Math.log(1.2);

interface Achieved {
  far: ScenePlane;
  near: ScenePlane;
  /** Step back of target and painting, in one unit; `target` null = there is none. */
  target: number | null;
  painting: number;
  /** Shortfall that counts at least. */
  least: number;
  sigma: number;
}

interface Telling {
  part: CardPart;
  direction: CardDirection;
  sentence(far: ScenePlane, near: ScenePlane, shortfall: number): string;
  check(far: ScenePlane, near: ScenePlane): string;
  amountL(shortfall: number): number | null;
}

function fromAchieved(achieved: Achieved, telling: Telling): Finding[] {
  const { far, near, target, painting, sigma } = achieved;
  const difference = (target ?? 0) - painting;
  const threshold = target === null ? achieved.least : Math.max(HALF * target, achieved.least);
  if (!shows(difference, threshold, sigma)) return [];
  const form = target === null ? 'check' : 'finding';
  const { part, direction } = telling;
  return [
    {
      planes: form === 'check' ? [far.name, near.name] : [far.name],
      difference,
      threshold,
      form,
      sentence: form === 'check' ? telling.check(far, near) : telling.sentence(far, near, difference),
      restsOn: target === null ? [] : [far.name, near.name],
      levers: [{ plane: far.name, part, direction, amountL: telling.amountL(difference) }],
    },
  ];
}

const log = (far: number, near: number, floor: number) =>
  Math.log(Math.max(far, floor) / Math.max(near, floor));

/** Under two deviations a chroma cannot be told from grey, in either picture. */
function floorOf(scene: Scene, key: 'spread' | 'strong'): number {
  return key === 'spread' ? RATIO_FLOOR : Math.max(RATIO_FLOOR, 2 * scene.noise.absoluteAb);
}

/** Far and nearest planes of one kind, when there is no target. */
function likePairs(scene: Scene) {
  return scene.hasTarget ? [] : farAndNear(scene).filter(({ far, near }) => far.kind === near.kind);
}

/** Decay of a figure as a log ratio, against the target or, without one, between like planes. */
function decays(scene: Scene, key: 'spread' | 'strong', telling: Telling): Finding[] {
  const floor = floorOf(scene, key);
  const strongEnough = (value: number) => key === 'spread' || value >= STRONG_ENOUGH;
  const withTarget = farAndNear(scene).flatMap(({ far, near }) => {
    const four = fourFigures(far, near, key);
    if (!four || !strongEnough(four.rNear) || !strongEnough(four.pNear)) return [];
    const target = -log(four.rFar, four.rNear, floor);
    if (target < -Math.log(LARGEST_RATIO)) return [];
    if (key === 'strong' && four.pFar - four.pNear * Math.exp(-target) < OVER_CHROMA) return [];
    const sigma = scene.noise.logRatio(far.painting, near.painting, key);
    return fromAchieved(
      { far, near, target, painting: -log(four.pFar, four.pNear, floor), least: 0, sigma },
      telling,
    );
  });
  const alike = likePairs(scene).flatMap(({ far, near }) => {
    const [pFar, pNear] = [far.painting[key], near.painting[key]];
    if (pFar === null || pNear === null || !strongEnough(pNear)) return [];
    const sigma = scene.noise.logRatio(far.painting, near.painting, key);
    const achieved = { far, near, target: null, painting: -log(pFar, pNear, floor), least: CHECK_LOG, sigma };
    return fromAchieved(achieved, telling);
  });
  return [...withTarget, ...alike];
}

/** Rise of a figure from near to far, against the target or, without one, between like planes. */
function rises(
  scene: Scene,
  key: FigureKey,
  sign: 1 | -1,
  smallest: number,
  least: number,
  sigmaOf: (far: ScenePlane, near: ScenePlane) => number,
  telling: Telling,
): Finding[] {
  const withTarget = farAndNear(scene).flatMap(({ far, near }) => {
    const four = fourFigures(far, near, key);
    if (!four) return [];
    const target = sign * (four.rFar - four.rNear);
    if (target < smallest) return [];
    const painting = sign * (four.pFar - four.pNear);
    return fromAchieved({ far, near, target, painting, least, sigma: sigmaOf(far, near) }, telling);
  });
  const alike = likePairs(scene).flatMap(({ far, near }) => {
    const [pFar, pNear] = [far.painting[key], near.painting[key]];
    if (pFar === null || pNear === null) return [];
    const achieved = { far, near, target: null, painting: sign * (pFar - pNear), least: CHECK_L };
    return fromAchieved({ ...achieved, sigma: sigmaOf(far, near) }, telling);
  });
  return [...withTarget, ...alike];
}

export const V4: Rule = {
  id: 'V4',
  name: say`Distance darks too heavy`,
  group: 3,
  family: 'recession',
  inputs: 'dark of each far plane and of the nearest',
  threshold: 'half or less of the target rise (at least 10 L*), and 5 L* short: darks carry depth',
  noise: 'difference of two darks inside the painting',
  mutedBy: because(...NO_AIR, 'valley-mist'),
  colour: false,
  why: say`Air lifts the darks about five times as much as the lights, so depth is built in the darks.`,
  source: say`Koschmieder 1924; the five times are our own calculation`,
  find(scene) {
    const sigmaOf = (far: ScenePlane, near: ScenePlane) =>
      scene.noise.difference(far.painting, near.painting, 'dark');
    return rises(scene, 'dark', 1, RISE_OF_DARKS, SHORTFALL_OF_DARKS, sigmaOf, {
      part: 'darks',
      direction: 'lift',
      sentence: (far, _near, short) => {
        const amount = aboutAmount(short, scene.noise.grade);
        return say`The darkest notes on the ${far.label} are nearly as strong as the near ones. Lift them${amount}.`;
      },
      check: (far, near) =>
        say`Check: the darks on the ${far.label} are heavier than on the ${near.label}. Should they not be lighter?`,
      amountL: (short) => short,
    });
  },
};

export const V7: Rule = {
  id: 'V7',
  name: say`Contrast doesn't narrow`,
  group: 3,
  family: 'recession',
  inputs: 'spread of each far plane and of the nearest',
  threshold: 'half or less of the target narrowing in logs, where the target narrows to 0.7 or less',
  noise: 'log ratio of two spreads, first order',
  mutedBy: because(...NO_AIR, 'valley-mist', 'cloud-shadow'),
  colour: false,
  why: say`Contrast falls off exponentially through air, so a far plane has a shorter range than a near one.`,
  source: 'Koschmieder 1924; O’Shea, Blackburn & Ono 1994',
  find: (scene) =>
    decays(scene, 'spread', {
      part: 'contrast',
      direction: 'narrow',
      sentence: (far) =>
        say`The ${far.label} has nearly as much light–dark contrast as the foreground. Close it up.`,
      check: (far, near) =>
        say`Check: the ${far.label} has more light–dark contrast than the ${near.label}. Is that meant?`,
      amountL: () => null,
    }),
};

export const C1: Rule = {
  id: 'C1',
  name: say`Distance too coloured`,
  group: 4,
  family: 'recession',
  inputs: 'strong (90th percentile of C*) of each far plane and of the nearest',
  threshold:
    'half or less of the target fall in logs, where the target falls to 0.7 or less and both near values are 15 or more; values floored at two deviations; 6 C* over what that asks for',
  noise: 'log ratio of two chromas, first order',
  mutedBy: because(...NO_AIR, 'cloud-shadow', 'sun-spot', 'night'),
  colour: true,
  why: say`A fall in strength of colour is one of the surest signs of distance.`,
  source: 'Troscianko et al. 1991',
  find: (scene) =>
    decays(scene, 'strong', {
      part: 'colour',
      direction: 'grey',
      sentence: (far) =>
        say`The ${far.label} is almost as colourful as the foreground. Grey it with a little complement.`,
      check: (far, near) =>
        say`Check: the ${far.label} is more colourful than the ${near.label}. Would you grey it a little?`,
      amountL: () => null,
    }),
};

export const C2: Rule = {
  id: 'C2',
  name: say`Not approaching the air`,
  group: 3,
  family: 'recession',
  inputs: 'airDistance of each far plane and of the nearest; air colour of the painting',
  threshold: 'half or less of the target fall (at least 15 dE), and 12 dE short',
  noise: 'difference of two distances to one air colour, first order in L*, a*, b*',
  mutedBy: because(...NO_AIR, 'smoke'),
  colour: true,
  why: say`Everything distant drifts toward the colour of the air; that is what the eye takes for depth.`,
  source: say`Romero et al. 2011; Leonardo, Treatise (Rigaud 1802, ch. 287)`,
  find(scene) {
    const { painting: air } = scene.air;
    if (!air) return [];
    const sigmaOf = (far: ScenePlane, near: ScenePlane) =>
      scene.noise.airFall(near.painting, far.painting, air);
    return rises(scene, 'airDistance', -1, FALL_TO_AIR, SHORTFALL_TO_AIR, sigmaOf, {
      part: 'colour',
      direction: 'toward-air',
      sentence: (far) => say`The ${far.label} hasn't moved far enough toward the colour of the air.`,
      check: (far, near) =>
        say`Check: the ${far.label} stands farther from the colour of the air than the ${near.label}. Is that meant?`,
      amountL: () => null,
    });
  },
};
