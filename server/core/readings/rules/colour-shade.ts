/**
 * C6, C7, C8: the temperature of light and shade, dead shadows, and a lone spot of colour.
 *
 * In the flow: scene and picture facts -> [rules] -> findings; withheld at grade C. Pure. Sources: Harrison 1909,
 * p. 26 (warm light, cool shadow outdoors); Leonardo (Richter 1883, 430: shadows of plants never black); Poore 1903.
 */
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { shows } from '../gate.ts';
import { warmCoolSlope } from '../noise.ts';
import type { AccentFacts, LightShadeFacts, PictureFacts } from '../picture-facts.ts';
import type { Finding, Rule } from '../rule.ts';
import type { Scene, ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';
import { placeInWords, strongSpotOf } from '../words.ts';

/** Trade's 3 and 8 on a linear axis, times 1.2 for C^1.07. */
const SPLIT_LOST = 3.6;
const SPLIT_IN_TARGET = 9.6;
/** Lights and shadows of a sunlit plane are at least this far apart in the target, L*. */
const SUNLIT_L = 6;
const DEAD_SHARE = 0.06;
const LIVING_CHROMA = 8;
const DEAD_CHROMA = 3;
const ACCENT_OVER_PLANE = 15;
const FAR_FROM_FOCUS = 0.2;
const LARGEST_ACCENT = 0.01;

function lightShade(
  facts: PictureFacts,
  side: 'reference' | 'painting',
  name: string,
): LightShadeFacts | null {
  return facts[side]?.lightShade.find((plane) => plane.name === name) ?? null;
}

/** warmCool and L* of the lights minus those of the shadows. */
function splitOf(facts: LightShadeFacts | null): { warmCool: number; L: number; shadows: number } | null {
  if (!facts?.lights || !facts.shadows) return null;
  return {
    warmCool: facts.lights.warmCool - facts.shadows.warmCool,
    L: facts.lights.L - facts.shadows.L,
    shadows: facts.shadows.warmCool,
  };
}

type Turn = 'warm' | 'cool';

const askTurn = (scene: Scene, { label }: ScenePlane, turn: Turn) =>
  turn === 'warm'
    ? say`On the ${label} light and shade share one temperature, ${inTarget(scene)} too. Could the shadows turn warmer?`
    : say`On the ${label} light and shade share one temperature, ${inTarget(scene)} too. Could the shadows turn cooler?`;

const tellTurn = ({ label }: ScenePlane, turn: Turn) =>
  turn === 'warm'
    ? say`On the ${label} the shadows are just darker versions of the lights. Turn them warmer.`
    : say`On the ${label} the shadows are just darker versions of the lights. Turn them cooler.`;

function oneTemperature(scene: Scene, plane: ScenePlane): Finding | null {
  const target = splitOf(lightShade(scene.facts, 'reference', plane.name));
  const painting = splitOf(lightShade(scene.facts, 'painting', plane.name));
  if (!target || !painting || !plane.target || target.L < SUNLIT_L) return null;
  const sigma = scene.noise.relationAb * warmCoolSlope(plane.painting);
  // No difference at all may come out two deviations wide.
  if (Math.abs(painting.warmCool) >= Math.max(SPLIT_LOST, 2 * sigma)) return null;
  const lost = Math.abs(target.warmCool) - Math.abs(painting.warmCool);
  const question = Math.abs(target.warmCool) < SPLIT_LOST;
  if (!question && Math.abs(target.warmCool) < SPLIT_IN_TARGET) return null;
  if (!question && !shows(lost, SPLIT_IN_TARGET - SPLIT_LOST, sigma)) return null;
  const turn = target.warmCool >= 0 ? 'cool' : 'warm';
  return {
    planes: [plane.name],
    difference: question ? SPLIT_LOST : lost,
    threshold: question ? SPLIT_LOST : SPLIT_IN_TARGET - SPLIT_LOST,
    form: question ? 'question' : 'finding',
    sentence: question ? askTurn(scene, plane, turn) : tellTurn(plane, turn),
    restsOn: [plane.name],
    levers: question ? [] : [{ plane: plane.name, part: 'shadows', direction: turn, amountL: null }],
  };
}

export const C6: Rule = {
  id: 'C6',
  name: say`Light and shade same temperature`,
  group: 6,
  family: null,
  inputs: 'warmCool of lights and shadows of each land plane, both pictures',
  threshold: 'under 3.6 apart where the target has 9.6 or more, in planes with lights 6 L* above shadows',
  noise: 'a relation inside the painting, times the slope of warmCool',
  mutedBy: because('fog', 'against-light', 'night'),
  colour: true,
  why: say`Outdoors a warm light throws cool shadows, and indoors by a north light the reverse.`,
  source: say`Harrison 1909, p. 26`,
  find: (scene) => scene.land.flatMap((plane) => oneTemperature(scene, plane) ?? []),
};

function deadShadows(scene: Scene, plane: ScenePlane): Finding | null {
  const painted = lightShade(scene.facts, 'painting', plane.name);
  const [p, r] = [painted?.darkChroma, lightShade(scene.facts, 'reference', plane.name)?.darkChroma];
  if (!painted || p == null || r == null || !plane.target) return null;
  if (!shows(painted.deadShare, DEAD_SHARE, scene.noise.share)) return null;
  const question = r < DEAD_CHROMA;
  const alive = r >= LIVING_CHROMA && shows(r - p, LIVING_CHROMA - DEAD_CHROMA, scene.noise.absoluteAb);
  if (!question && !alive) return null;
  return {
    planes: [plane.name],
    difference: painted.deadShare,
    threshold: DEAD_SHARE,
    form: question ? 'question' : 'finding',
    sentence: question
      ? say`The deepest shadows on the ${plane.label} are black, ${inTarget(scene)} too. Did the camera crush them?`
      : say`The deepest shadows on the ${plane.label} are black. Open them with some colour.`,
    restsOn: [plane.name],
    levers: question ? [] : [{ plane: plane.name, part: 'shadows', direction: 'strengthen', amountL: null }],
  };
}

export const C7: Rule = {
  id: 'C7',
  name: say`Shadows dead`,
  group: 6,
  family: null,
  inputs: 'share of the picture with C* under 3 and L* under 22; chroma of the darkest tenth, both pictures',
  threshold: 'at least 6 % of the picture in one plane, where the target has C* of 8 or more there',
  noise: 'an absolute chroma at the grade',
  mutedBy: because('night', 'against-light'),
  colour: true,
  why: say`Outdoors no shadow is black: the sky always throws some colour into it.`,
  source: 'Leonardo, Notebooks (Richter 1883, 430)',
  find: (scene) => scene.land.flatMap((plane) => deadShadows(scene, plane) ?? []),
};

/** Distance from the focus in widths of the picture; heights count by the side ratio, taken as 1 when unknown. */
function fromFocus(scene: Scene, [x, y]: AccentFacts['at']): number {
  const focus = scene.setup.focus;
  return focus ? Math.hypot(x - focus[0], y - focus[1]) : 0;
}

/** The same spot in the target: any accent of like hue in the same plane. */
function spotInTarget(scene: Scene, accent: AccentFacts): boolean {
  const near = (one: number, two: number) => Math.abs(((one - two + 540) % 360) - 180) <= 25;
  return (scene.facts.reference?.accents ?? []).some(
    (other) => other.plane === accent.plane && near(other.hueDeg, accent.hueDeg),
  );
}

function loneAccent(scene: Scene, accent: AccentFacts): Finding | null {
  const plane = scene.planes.find(({ name }) => name === accent.plane);
  if (!plane || accent.echoed || accent.share > LARGEST_ACCENT) return null;
  if (fromFocus(scene, accent.at) <= FAR_FROM_FOCUS) return null;
  const threshold = Math.max(ACCENT_OVER_PLANE, accent.planeStrong);
  const over = accent.chroma - accent.planeStrong;
  if (!shows(over, threshold, scene.noise.relationAb)) return null;
  const question = spotInTarget(scene, accent);
  const [spot, place] = [strongSpotOf(accent.hueDeg), placeInWords(accent.at)];
  return {
    planes: [plane.name],
    difference: over,
    threshold,
    form: question ? 'question' : 'finding',
    sentence: question
      ? say`${spot} at the ${place} pulls from your focus, ${inTarget(scene)} too. Keep it?`
      : say`${spot} at the ${place} pulls away from your focus. Echo it or quiet it.`,
    restsOn: [],
    levers: question ? [] : [{ plane: plane.name, part: 'accent', direction: 'quiet', amountL: null }],
  };
}

export const C8: Rule = {
  id: 'C8',
  name: say`Lone accent`,
  group: 6,
  family: null,
  inputs: 'patches of up to 1 % with twice the strong of their plane; the marked focus',
  threshold:
    'chroma more than twice the plane’s strong (and 15 above it), over 20 % of the width from the focus, no echo',
  noise: 'a relation inside the painting',
  mutedBy: {},
  colour: true,
  why: say`A single spot that nothing answers weighs more than its size and draws the eye from the subject.`,
  source: say`Poore 1903, ch. III`,
  find: (scene) =>
    scene.hasTarget && scene.setup.focus
      ? scene.facts.painting.accents.flatMap((accent) => loneAccent(scene, accent) ?? [])
      : [],
};
