/**
 * V8, V9: nothing kept in reserve, and a range too short for the scene.
 *
 * In the flow: scene -> [rules] -> findings. Pure. Source: Harrison 1909, pp. 67-73 (choose key and span first and
 * hold some in reserve); limits of paint about L* 12-95, from memory.
 */

import type { ReadingForm } from '../../contract/critique.ts';
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { formOf, shows } from '../gate.ts';
import type { LightnessEnds } from '../picture-facts.ts';
import type { Finding, Rule } from '../rule.ts';
import type { Figures, Scene } from '../scene.ts';
import { asTargetDoes, inTarget } from '../target-words.ts';

const DARKEST_PAINT = 14;
const LIGHTEST_PAINT = 94;
const FULL_USE = 0.7;
const PLANES_AT_FULL = 3;
const SHORT_RANGE = 45;
const LONG_RANGE = 65;

/** Third largest share of the picture's range that one plane uses; null when it can't be told. */
function thirdUse(ends: LightnessEnds | null, planes: (Figures | null)[]): number | null {
  if (!ends || ends.L1 > DARKEST_PAINT || ends.L99 < LIGHTEST_PAINT) return null;
  const spreads = planes.flatMap((plane) => plane?.spread ?? []).sort((one, two) => two - one);
  const third = spreads[PLANES_AT_FULL - 1];
  return third === undefined ? null : third / (ends.L99 - ends.L1);
}

export const V8: Rule = {
  id: 'V8',
  name: say`No reserve`,
  group: 7,
  family: null,
  inputs: 'L1 and L99 of the painting; spread of every plane',
  threshold: 'L1 at most 14 and L99 at least 94, with three planes that use over 70 % of that range',
  noise: 'one spread against the range; withheld at grade C, where exposure is not known',
  mutedBy: because('night'),
  colour: false,
  why: say`A picture that uses black and white everywhere has no air and nothing left for its focus.`,
  source: say`Harrison 1909, pp. 67-73`,
  find(scene: Scene): Finding[] {
    const { ends } = scene.facts.painting;
    if (scene.noise.grade === 'C' || !ends) return [];
    const painting = thirdUse(
      ends,
      scene.planes.map((plane) => plane.painting),
    );
    if (painting === null) return [];
    const targetEnds = scene.facts.reference?.ends ?? null;
    const target =
      thirdUse(
        targetEnds,
        scene.planes.map((plane) => plane.target),
      ) ?? 0;
    const sigma = scene.noise.relationL / (ends.L99 - ends.L1);
    const form = formOf({ painting, target: scene.hasTarget ? target : null, threshold: FULL_USE, sigma });
    if (!form) return [];
    const sentences: Record<ReadingForm, string> = {
      finding: say`You use the darkest and lightest paint in several places; save them for the focus.`,
      question: say`The darkest and lightest paint stand in several places, as ${inTarget(scene)}. Where should the focus be?`,
      check: say`Check: the darkest and lightest paint stand in several places. Are they needed outside the focus?`,
    };
    return [
      {
        planes: [],
        difference: painting,
        threshold: FULL_USE,
        form,
        sentence: sentences[form],
        restsOn: [],
        levers:
          form === 'question' ? [] : [{ plane: null, part: 'contrast', direction: 'narrow', amountL: null }],
      },
    ];
  },
};

export const V9: Rule = {
  id: 'V9',
  name: say`Short range`,
  group: 7,
  family: null,
  inputs: 'L2 and L98 of both pictures',
  threshold: 'painting under 45 L* where the target has 65 or more: a third lost',
  noise: 'a relation inside the painting',
  mutedBy: because('fog', 'night', 'smoke'),
  colour: false,
  why: say`One true dark and one true light give the eye the ends by which it reads all other values.`,
  source: say`Harrison 1909, pp. 67-73; common practice`,
  find(scene: Scene): Finding[] {
    const [target, painting] = [scene.facts.reference?.ends, scene.facts.painting.ends];
    if (!target || !painting || !scene.hasTarget) return [];
    const [r, p] = [target.L98 - target.L2, painting.L98 - painting.L2];
    const bothShort = r < SHORT_RANGE;
    if (p >= SHORT_RANGE || (!bothShort && r < LONG_RANGE)) return [];
    const threshold = LONG_RANGE - SHORT_RANGE;
    if (!bothShort && !shows(r - p, threshold, scene.noise.relationL)) return [];
    return [
      {
        planes: [],
        difference: bothShort ? threshold : r - p,
        threshold,
        form: bothShort ? 'question' : 'finding',
        sentence: bothShort
          ? say`The picture stays in a narrow band of greys, ${asTargetDoes(scene)}. Is it meant to be misty?`
          : say`The picture stays in a narrow band of greys. Fine if misty; if not, set one true dark and one true light.`,
        restsOn: [],
        levers: bothShort ? [] : [{ plane: null, part: 'contrast', direction: 'widen', amountL: null }],
      },
    ];
  },
};
