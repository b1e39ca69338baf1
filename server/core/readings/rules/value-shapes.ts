/**
 * V12, V13: big shapes that break into spots, and a picture in which no value wins.
 *
 * In the flow: scene -> [rules] -> findings. Both look at the squinted three-value map. Pure. Sources: Poore 1903,
 * ch. X (petty planes); Reynolds, quoted there (a quarter light, a quarter dark, half half-tone).
 */
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { formOf, shows } from '../gate.ts';
import type { ValueMapFacts } from '../picture-facts.ts';
import type { Rule } from '../rule.ts';
import { inBoth, inTarget } from '../target-words.ts';
import { placeInWords } from '../words.ts';

const SPOTS = 0.12;
const SPOTS_TIMES_TARGET = 1.5;
const EQUAL = 0.06;
/**
 * How much nearer to thirds than the target. A faithful hand with a key and span of its own moved ground across the cuts
 * by up to 8 points on painted pairs, so a target just outside of 6 is no proof.
 */
const NEARER = 0.09;

const SPOT_WORDS = { dark: say`the darks`, middle: say`the half-tones`, light: say`the lights` } as const;

/** @param at where most of them lie; null where that is not known. */
const joinSpots = (what: string, at: ValueMapFacts['spotAt']) =>
  at
    ? say`Squint: the big shapes break into small spots. Join ${what} in the ${placeInWords(at)}.`
    : say`Squint: the big shapes break into small spots. Join ${what}.`;

export const V12: Rule = {
  id: 'V12',
  name: say`Spotty values`,
  group: 4,
  family: null,
  inputs: 'share of the three-value map in patches under 0.5 % of the picture, both pictures',
  threshold: 'at least 12 % of the picture, and 1.5 times the target',
  noise: 'deviation of a share in the map (own estimate)',
  mutedBy: {},
  colour: false,
  why: say`Failure comes from crumbling into many petty planes; a few big shapes carry.`,
  source: say`Poore 1903, ch. X`,
  find(scene) {
    const [map, target] = [scene.facts.painting.valueMap, scene.facts.reference?.valueMap ?? null];
    if (!map || !target || !scene.hasTarget) return [];
    const threshold = Math.max(SPOTS, SPOTS_TIMES_TARGET * target.spots);
    const sigma = scene.noise.share;
    const asSpotty = target.spots > SPOTS && shows(map.spots, SPOTS, sigma);
    const found = shows(map.spots, threshold, sigma) && shows(map.spots - target.spots, 0, sigma);
    if (!found && !asSpotty) return [];
    const what = SPOT_WORDS[map.spotValue ?? 'dark'];
    return [
      {
        planes: [],
        difference: map.spots,
        threshold: found ? threshold : SPOTS,
        form: found ? 'finding' : 'question',
        sentence: found
          ? joinSpots(what, map.spotAt)
          : say`Squint: the big shapes break into small spots, ${inTarget(scene)} too. Could ${what} be joined?`,
        restsOn: [],
        levers: found ? [{ plane: null, part: 'shapes', direction: 'join', amountL: null }] : [],
      },
    ];
  },
};

/** Largest departure of the three shares from one third. */
function dominance({ dark, middle, light }: ValueMapFacts): number {
  return Math.max(...[dark, middle, light].map((share) => Math.abs(share - 1 / 3)));
}

export const V13: Rule = {
  id: 'V13',
  name: say`No dominant value`,
  group: 4,
  family: null,
  inputs: 'dark, middle and light shares of the three-value map, both pictures',
  threshold: 'all three within 6 points of one third; not so in the target, and 9 points nearer than it',
  noise: 'deviation of a share in the map (own estimate)',
  mutedBy: because('night'),
  colour: false,
  why: say`Unequal shares give a picture its mood: a quarter, a quarter and a half is an old guide, not a law.`,
  source: say`Reynolds, quoted in Poore 1903, ch. X`,
  find(scene) {
    const map = scene.facts.painting.valueMap;
    const target = scene.facts.reference?.valueMap ?? null;
    if (!map || (scene.hasTarget && !target)) return [];
    // The trait is closeness to thirds: turned round so that larger means more of it.
    const closeness = (shares: ValueMapFacts) => 1 / 3 - dominance(shares);
    const form = formOf({
      painting: closeness(map),
      target: scene.hasTarget && target ? closeness(target) : null,
      threshold: 1 / 3 - EQUAL,
      sigma: scene.noise.share,
      apart: NEARER,
    });
    if (!form) return [];
    return [
      {
        planes: [],
        difference: closeness(map),
        threshold: 1 / 3 - EQUAL,
        form,
        sentence: {
          finding: say`Light, middle and dark take equal room. Let one of them win.`,
          question: say`${inBoth(scene)} light, middle and dark take equal room. Which should win?`,
          check: say`Check: light, middle and dark take equal room. Which should win?`,
        }[form],
        restsOn: [],
        levers:
          form === 'question' ? [] : [{ plane: null, part: 'shapes', direction: 'join', amountL: null }],
      },
    ];
  },
};
