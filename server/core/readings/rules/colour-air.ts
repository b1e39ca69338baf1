/**
 * C3, C4: colour on its way into the distance: past the air, or turned the wrong way.
 *
 * In the flow: scene -> [rules] -> findings; withheld at grade C. Pure. Sources: Romero et al. 2011 (colours converge
 * on the horizon), Lynch & Mazuk 2005.
 */
import { chromaOf } from '../../colour/lab.ts';
import { warmCoolKernel } from '../../colour/temperature.ts';
import type { Condition, LabColour } from '../../contract/setup.ts';
import { say } from '../../say/say.ts';
import { because, NO_AIR } from '../conditions.ts';
import { shows } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import { type Figures, farAndNear, fourFigures, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const PAST_AIR = 8;
/** Trade's 6 units along the warm-cool axis, times the 1.2 by which C^1.07 stretches chromas of 10 to 20. */
const TURN = 7.2;

/** How far a colour lies past the air on the way to blue: the smaller of the two margins. */
function pastAir(figures: Figures | null, air: LabColour | null): number | null {
  if (!figures || !air || figures.a === null || figures.b === null) return null;
  if (warmCoolKernel(air.a, air.b) > 0) return null;
  return Math.min(air.b - figures.b, chromaOf(figures.a, figures.b) - chromaOf(air.a, air.b));
}

function overshoot(scene: Scene, far: ScenePlane): Finding | null {
  const painting = pastAir(far.painting, scene.air.painting);
  const target = pastAir(far.target, scene.air.target);
  if (painting === null || target === null) return null;
  const sigma = Math.SQRT2 * scene.noise.own(far.painting, 'b');
  if (!shows(painting, PAST_AIR, sigma)) return null;
  const question = target > PAST_AIR;
  if (!question && !shows(painting - target, 0, sigma)) return null;
  return {
    planes: [far.name],
    difference: painting,
    threshold: PAST_AIR,
    form: question ? 'question' : 'finding',
    sentence: question
      ? say`The ${far.label} is bluer than the sky behind it, ${inTarget(scene)} too. Is the air that clear?`
      : say`The ${far.label} is bluer than the sky behind it. Ease it back toward the horizon colour.`,
    restsOn: [far.name],
    levers: question ? [] : [{ plane: far.name, part: 'colour', direction: 'back-from-air', amountL: null }],
  };
}

export const C3: Rule = {
  id: 'C3',
  name: say`Overshoots the air`,
  group: 6,
  family: null,
  inputs: 'a, b of each far plane; air colour, unless it is warm',
  threshold: 'more than 8 bluer and 8 stronger than the air, and not so in the target',
  noise: 'a relation inside the painting, plus the sampling of the plane',
  mutedBy: because(...NO_AIR, 'low-sun', 'smoke'),
  colour: true,
  why: say`Air cannot tint a hill bluer than itself; only a dark ridge on a very clear day looks so.`,
  source: 'Romero et al. 2011',
  find: (scene) => farAndNear(scene).flatMap(({ far }) => overshoot(scene, far) ?? []),
};

export const C4: Rule = {
  id: 'C4',
  name: say`Temperature turns the wrong way`,
  group: 4,
  family: null,
  inputs: 'warmCool of the farthest and of the nearest land plane',
  threshold:
    'change with depth of more than 7.2 in both pictures, with opposite signs (trade: 6 on a linear axis)',
  noise: 'difference of two warmCool figures inside the painting',
  mutedBy: because('shallow', 'snow', 'against-light', 'low-sun', 'smoke', 'cloud-shadow'),
  colour: true,
  why: say`Which way colour turns with depth tells the eye what the air is like.`,
  source: say`Lynch & Mazuk 2005; common practice`,
  find(scene) {
    const [far, near] = [scene.land[0], scene.nearest];
    const four = far && near && far !== near ? fourFigures(far, near, 'warmCool') : null;
    if (!far || !near || !four) return [];
    const [target, painting] = [four.rFar - four.rNear, four.pFar - four.pNear];
    const sigma = scene.noise.difference(far.painting, near.painting, 'warmCool');
    const opposite = target * painting < 0 && Math.abs(target) > TURN;
    if (!opposite || !shows(Math.abs(painting), TURN, sigma)) return [];
    const warms = painting > 0;
    // Warm air, snow and a shaded foreground excuse colour that warms with distance, never the reverse.
    const immuneTo: Condition[] = warms ? [] : ['snow', 'against-light', 'low-sun', 'smoke', 'cloud-shadow'];
    return [
      {
        planes: [far.name, near.name],
        difference: Math.abs(painting),
        threshold: TURN,
        form: 'finding',
        sentence: warms
          ? say`Colour gets warmer as it goes back; ${inTarget(scene)} it gets cooler.`
          : say`Colour gets cooler as it goes back; ${inTarget(scene)} it gets warmer.`,
        restsOn: [far.name, near.name],
        immuneTo,
        levers: [{ plane: far.name, part: 'colour', direction: warms ? 'cool' : 'warm', amountL: null }],
      },
    ];
  },
};
