/**
 * C5: the foreground's green carried back into the distance.
 *
 * In the flow: scene -> [rule] -> findings; withheld at grade C. Pure. Source: Leonardo (Richter 1883, 307: green
 * changes more than yellow or white); common practice (the commonest student fault).
 */
import { hueDegOf } from '../../colour/lab.ts';
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { shows } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import { type Figures, farAndNear, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const GREEN_DEG = [95, 150] as const;
const SAME_HUE_DEG = 8;
const OTHER_HUE_DEG = 15;
const KEPT_CHROMA = 0.7;
const LOST_CHROMA = 0.5;
/** A green weaker than this is a grey to the eye. */
const LEAST_GREEN = 12;

const hueGap = (one: number, two: number) => Math.abs(((one - two + 540) % 360) - 180);
const isGreen = (hueDeg: number) => hueDeg >= GREEN_DEG[0] && hueDeg <= GREEN_DEG[1];

interface Green {
  gapDeg: number;
  ratio: number;
}

/** @param leewayDeg @param leewayLog by how much one green may seem two in the photograph. */
const isOne = ({ gapDeg, ratio }: Green, leewayDeg = 0, leewayLog = 0) =>
  gapDeg < Math.max(SAME_HUE_DEG, leewayDeg) && ratio >= KEPT_CHROMA * Math.exp(-leewayLog);

function sigmasOf(scene: Scene, far: ScenePlane, near: ScenePlane): { hueDeg: number; log: number } {
  const relative = (plane: ScenePlane) =>
    scene.noise.own(plane.painting, 'a') /
    Math.max(LEAST_GREEN, Math.hypot(plane.painting.a ?? 0, plane.painting.b ?? 0));
  return {
    hueDeg: (Math.hypot(relative(far), relative(near)) * 180) / Math.PI,
    log: scene.noise.logRatio(far.painting, near.painting, 'strong'),
  };
}

/** Hue gap and chroma ratio of far to near. @returns null when either has no hue. */
function greensOf(far: Figures | null, near: Figures | null): Green | null {
  if (!far || !near || far.a === null || far.b === null || near.a === null || near.b === null) return null;
  if (far.strong === null || near.strong === null || near.strong < LEAST_GREEN) return null;
  return {
    gapDeg: hueGap(hueDegOf(far.a, far.b), hueDegOf(near.a, near.b)),
    ratio: far.strong / near.strong,
  };
}

function bothGreen({ painting: far }: ScenePlane, { painting: near }: ScenePlane): boolean {
  return [far, near].every(
    ({ a, b, strong }) => a !== null && b !== null && (strong ?? 0) >= LEAST_GREEN && isGreen(hueDegOf(a, b)),
  );
}

/** How many times over the painting lost what the target changes: by hue or by chroma; 0 inside the noise. */
function timesLost(scene: Scene, far: ScenePlane, near: ScenePlane, painting: Green, target: Green): number {
  const byHue = target.gapDeg >= OTHER_HUE_DEG ? target.gapDeg - painting.gapDeg : 0;
  const byChroma = target.ratio <= LOST_CHROMA ? Math.log(painting.ratio / Math.max(target.ratio, 0.05)) : 0;
  const { hueDeg: sigmaDeg, log: sigmaLog } = sigmasOf(scene, far, near);
  const [leastDeg, leastLog] = [OTHER_HUE_DEG - SAME_HUE_DEG, Math.log(KEPT_CHROMA / LOST_CHROMA)];
  return Math.max(
    shows(byHue, leastDeg, sigmaDeg) ? byHue / leastDeg : 0,
    shows(byChroma, leastLog, sigmaLog) ? byChroma / leastLog : 0,
  );
}

function sameGreen(scene: Scene, far: ScenePlane, near: ScenePlane): Finding | null {
  const painting = greensOf(far.painting, near.painting);
  const sigma = sigmasOf(scene, far, near);
  if (!painting || !bothGreen(far, near) || !isOne(painting, 2 * sigma.hueDeg, sigma.log)) return null;
  if (!scene.hasTarget) return far.kind === near.kind ? greenFinding(far, near, 'check', 1, scene) : null;
  const target = greensOf(far.target, near.target);
  if (!target) return null;
  const times = timesLost(scene, far, near, painting, target);
  if (times > 0) return greenFinding(far, near, 'finding', times, scene);
  return isOne(target) ? greenFinding(far, near, 'question', 1, scene) : null;
}

function greenFinding(
  far: ScenePlane,
  near: ScenePlane,
  form: Finding['form'],
  times: number,
  scene: Scene,
): Finding {
  return {
    planes: [far.name, near.name],
    difference: times,
    threshold: 1,
    form,
    sentence: {
      finding: say`The same green runs from the ${near.label} back to the ${far.label}. Change it as it recedes: less yellow, greyer.`,
      question: say`The same green runs from the ${near.label} back to the ${far.label}, ${inTarget(scene)} too. Would you change it?`,
      check: say`Check: the same green runs from the ${near.label} back to the ${far.label}. Would you grey it as it recedes?`,
    }[form],
    restsOn: form === 'check' ? [] : [far.name, near.name],
    levers:
      form === 'question' ? [] : [{ plane: far.name, part: 'colour', direction: 'grey', amountL: null }],
  };
}

export const C5: Rule = {
  id: 'C5',
  name: say`Foreground green carried back`,
  group: 4,
  family: null,
  inputs: 'hue and strong of each far plane and of the nearest, where both are green (95-150 degrees)',
  threshold:
    'painting within 8 degrees and 0.7 of the chroma, target 15 degrees apart or at 0.5 of the chroma',
  noise: 'hue and log chroma ratio, first order in a*, b*',
  mutedBy: because('shallow'),
  colour: true,
  why: say`Leaf green loses its yellow and its strength through air; one green from front to back closes the space.`,
  source: say`Leonardo, Notebooks (Richter 1883, 307); common practice`,
  find: (scene) => farAndNear(scene).flatMap(({ far, near }) => sameGreen(scene, far, near) ?? []),
};
