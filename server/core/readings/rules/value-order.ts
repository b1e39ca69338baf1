/**
 * V1, V3: the order of the big values, and the one plane that jumps.
 *
 * In the flow: scene -> [rules] -> findings. Pure. Sources: Poore 1903 (the isolated false value is the worst),
 * Harrison 1909 (values are relations); thresholds from the trade notes.
 */
import { fitKeyAndSpan } from '../../gaps/fit.ts';
import { median } from '../../image/percentiles.ts';
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { shows } from '../gate.ts';
import type { Finding, Rule } from '../rule.ts';
import type { Scene, ScenePlane } from '../scene.ts';
import { inTargetFirst } from '../target-words.ts';
import { aboutAmount } from '../words.ts';

const SWAP_IN_TARGET = 6;
const SWAP_IN_PAINTING = 4;
const JUMP_L = 7;
const JUMP_TIMES = 2.5;
const JUMP_PLANES = 4;
/** A step within the line must be this much smaller to go before one far beyond its end. */
const SMALLER_TIMES = 2.5;
/** What a faithful hand departs by, one standard deviation in L* (own estimate). */
const HAND_L = 1.5;
/**
 * The one plane that stands out most of about five is looked at: at 2.6 deviations one faithful picture in twenty would
 * be accused, at 3.4 one in three hundred (two-sided normal, five planes); seen on painted pairs.
 */
const PICKED = 1.7;

const mid = (plane: ScenePlane) => ({ r: plane.target?.mid ?? null, p: plane.painting.mid ?? 0 });

/** Residuals of the key-and-span fit over planes whose target is trusted, by plane. */
export function residuals(scene: Scene): Map<ScenePlane, number> {
  const usable = scene.planes.filter((plane) => plane.target?.mid != null);
  const trusted = usable.filter((plane) => !plane.unreliable || scene.document.target === 'plan');
  const { key, span } = fitKeyAndSpan(trusted.map((plane) => [plane.target?.mid ?? 0, mid(plane).p]));
  if (key === null || span === null) return new Map();
  return new Map(usable.map((plane) => [plane, mid(plane).p - key - span * (plane.target?.mid ?? 0)]));
}

function swap(scene: Scene, one: ScenePlane, two: ScenePlane, off: Map<ScenePlane, number>): Finding | null {
  const [first, second] = [mid(one), mid(two)];
  if (first.r === null || second.r === null || first.r - second.r < SWAP_IN_TARGET) return null;
  const difference = second.p - first.p;
  const sigma = scene.noise.difference(one.painting, two.painting, 'mid');
  if (!shows(difference, SWAP_IN_PAINTING, sigma)) return null;
  const firstIsOff = Math.abs(off.get(one) ?? 0) >= Math.abs(off.get(two) ?? 0);
  const nearestLowered = two !== scene.nearest;
  return {
    planes: [one, two].sort((p, q) => p.index - q.index).map((plane) => plane.name),
    difference,
    threshold: SWAP_IN_PAINTING,
    form: 'finding',
    sentence: say`${inTargetFirst(scene)} the ${one.label} is lighter than the ${two.label}; you have them the other way round.`,
    restsOn: [one.name, two.name],
    // Only a foreground put into shadow, or a far plane put into sun, is what these conditions excuse.
    immuneTo: [
      ...(one === scene.nearest ? [] : (['cloud-shadow'] as const)),
      ...(nearestLowered ? [] : (['sun-spot'] as const)),
    ],
    levers: [
      {
        plane: firstIsOff ? one.name : two.name,
        part: 'whole',
        direction: firstIsOff ? 'lift' : 'deepen',
        amountL: difference + SWAP_IN_PAINTING,
      },
    ],
  };
}

export const V1: Rule = {
  id: 'V1',
  name: say`Value order swapped`,
  group: 2,
  family: null,
  inputs: 'mid of any two planes, sky included',
  threshold: 'target at least 6 L* one way, painting more than 4 L* the other: together one step',
  noise: 'difference of two mids inside the painting',
  mutedBy: because('cloud-shadow', 'sun-spot'),
  colour: false,
  why: say`The order of the big values carries the picture before anything else does.`,
  source: say`Harrison 1909, ch. on values; Poore 1903`,
  find(scene) {
    const off = residuals(scene);
    const found = scene.planes
      .flatMap((one) =>
        scene.planes.flatMap((two) => (one === two ? [] : (swap(scene, one, two, off) ?? []))),
      )
      .sort((one, two) => two.difference - one.difference);
    const told = new Set<string>();
    return found.filter(({ planes }) => {
      const news = planes.some((plane) => !told.has(plane));
      for (const plane of planes) told.add(plane);
      return news;
    });
  },
};

function jump(scene: Scene, plane: ScenePlane, off: number): Finding {
  const tooLight = off > 0;
  const amount = aboutAmount(off, scene.noise.grade);
  return {
    planes: [plane.name],
    difference: Math.abs(off),
    threshold: JUMP_L,
    form: 'finding',
    sentence: tooLight
      ? say`Everything else keeps its relation, but the ${plane.label} is${amount} too light.`
      : say`Everything else keeps its relation, but the ${plane.label} is${amount} too dark.`,
    restsOn: [plane.name],
    immuneTo: [
      ...(plane === scene.nearest && !tooLight ? [] : (['cloud-shadow'] as const)),
      ...(plane !== scene.nearest && tooLight ? [] : (['sun-spot'] as const)),
    ],
    levers: [
      { plane: plane.name, part: 'whole', direction: tooLight ? 'deepen' : 'lift', amountL: Math.abs(off) },
    ],
  };
}

/** One plane against the key and span of all the others. */
interface Jump {
  plane: ScenePlane;
  /** What is painted minus what the others foretell, L*. */
  off: number;
  /** Median of what the others depart by, L*. */
  typical: number;
  sigma: number;
  /** True when the line of the others is drawn farther than its own length to reach this plane. */
  farOff: boolean;
}

function jumpOf(scene: Scene, plane: ScenePlane, others: ScenePlane[]): Jump | null {
  const pairs = others.map((other): [number, number] => [mid(other).r ?? 0, mid(other).p]);
  const { key, span } = fitKeyAndSpan(pairs);
  const r = mid(plane).r;
  if (key === null || span === null || r === null) return null;
  const targets = pairs.map(([x]) => x);
  const [lowest, highest] = [Math.min(...targets), Math.max(...targets)];
  const mean = pairs.reduce((sum, [x]) => sum + x, 0) / pairs.length;
  const spread = pairs.reduce((sum, [x]) => sum + (x - mean) ** 2, 0);
  // A straight line foretells worse the farther it is drawn on.
  const reach = 1 + 1 / pairs.length + (r - mean) ** 2 / Math.max(spread, 1);
  return {
    plane,
    off: mid(plane).p - key - span * r,
    typical: median(pairs.map(([x, p]) => Math.abs(p - key - span * x))) ?? 0,
    sigma: Math.hypot(HAND_L, scene.noise.own(plane.painting, 'mid')) * Math.sqrt(reach),
    farOff: Math.max(r - highest, lowest - r) > highest - lowest,
  };
}

/** How far a jump stands out, in its own deviations and in those of the others. */
const standsOut = ({ off, typical, sigma }: Jump) => Math.abs(off) / Math.hypot(sigma, typical);

const isJump = ({ off, typical, sigma }: Jump) =>
  Math.abs(off) >= JUMP_TIMES * typical && shows(Math.abs(off), JUMP_L, PICKED * sigma);

/** A small step within the line explains as much as a large one far beyond its end: then the small one is meant. */
const explainsAsMuch = (small: Jump, large: Jump) =>
  !small.farOff && Math.abs(small.off) * SMALLER_TIMES < Math.abs(large.off);

export const V3: Rule = {
  id: 'V3',
  name: say`One plane jumps`,
  group: 2,
  family: null,
  inputs: 'mid of every plane, sky included, against the key-and-span fit of all the others',
  threshold:
    'residual at least 7 L* (three quarters of a step) and 2.5 times the median residual of the others; four planes or more; of two that explain as much, the smaller step of a plane within the others goes first',
  noise:
    'the plane’s own part with 1.5 L* for the hand, times the reach of the fitted line (variance of a predicted value), times 1.7 for the choice among planes',
  mutedBy: because('cloud-shadow', 'sun-spot'),
  colour: false,
  why: say`When all values agree but one, the eye goes to that one: the isolated false value is the worst.`,
  source: 'Poore 1903',
  find(scene) {
    const usable = scene.planes.filter((plane) => plane.target?.mid != null);
    if (usable.length < JUMP_PLANES) return [];
    const trusted = usable.filter((plane) => !plane.unreliable || scene.document.target === 'plan');
    const jumps = usable.flatMap(
      (plane) =>
        jumpOf(
          scene,
          plane,
          trusted.filter((other) => other !== plane),
        ) ?? [],
    );
    const [top, ...rest] = jumps.filter(isJump).sort((one, two) => standsOut(two) - standsOut(one));
    const most = top?.farOff ? (rest.find((other) => explainsAsMuch(other, top)) ?? top) : top;
    return most ? [jump(scene, most.plane, most.off)] : [];
  },
};
