/**
 * V2: two neighbouring planes that read as one shape.
 *
 * In the flow: scene -> [rule] -> findings. Pure. Source: common practice; half a step as the smallest difference
 * that a painter mixes on purpose.
 */
import { say } from '../../say/say.ts';
import { because } from '../conditions.ts';
import { shows } from '../gate.ts';
import { NO_SOURCE } from '../no-source.ts';
import type { Finding, Lever, Rule } from '../rule.ts';
import { neighbours, type Scene, type ScenePlane } from '../scene.ts';
import { inTarget } from '../target-words.ts';

const APART_L = 8;
const APART_DE = 12;
const MERGED_L = 4;
const MERGED_DE = 7;
/** Losses that count: of value, and of colour where value tells nothing. */
const LOST_L = 4.5;
const LOST_DE = 9;
/** A level inside the noise may come out this many deviations above its limit. */
const LEEWAY = 2;

interface Apart {
  L: number;
  /** Null where a or b is not known. */
  dE: number | null;
}

function apart(one: ScenePlane, two: ScenePlane, which: 'target' | 'painting'): Apart | null {
  const [p, q] = [one[which], two[which]];
  if (!p || !q || p.mid === null || q.mid === null) return null;
  const L = Math.abs(p.mid - q.mid);
  if (p.a === null || q.a === null || p.b === null || q.b === null) return { L, dE: null };
  return { L, dE: Math.hypot(L, p.a - q.a, p.b - q.b) };
}

/** @param leewayL @param leewayDe by how much merged planes may seem apart in the photograph. */
const isMerged = ({ L, dE }: Apart, leewayL = 0, leewayDe = 0) =>
  L < Math.max(MERGED_L, leewayL) && (dE ?? 0) < Math.hypot(MERGED_DE, leewayDe);

/** What was lost between target and painting, by value or else by colour; null inside the noise. */
function lostOf(scene: Scene, far: ScenePlane, near: ScenePlane, target: Apart, painted: Apart) {
  const lostL = target.L - painted.L;
  const sigmaL = scene.noise.difference(far.painting, near.painting, 'mid');
  if (target.L >= APART_L && shows(lostL, LOST_L, sigmaL)) {
    return { difference: lostL, threshold: LOST_L, byValue: true };
  }
  // At grade C colour is not to be trusted, so only value may tell.
  if (scene.noise.grade === 'C') return null;
  const lostDe = (target.dE ?? 0) - (painted.dE ?? 0);
  const sigmaDe = scene.noise.colourDistance(far.painting, near.painting);
  if ((target.dE ?? 0) >= APART_DE && shows(lostDe, LOST_DE, sigmaDe)) {
    return { difference: lostDe, threshold: LOST_DE, byValue: false };
  }
  return null;
}

function merge(scene: Scene, far: ScenePlane, near: ScenePlane): Finding | null {
  const [target, painted] = [apart(far, near, 'target'), apart(far, near, 'painting')];
  if (!target || !painted) return null;
  const leewayL = LEEWAY * scene.noise.difference(far.painting, near.painting, 'mid');
  const leewayDe = LEEWAY * scene.noise.colourDistance(far.painting, near.painting);
  if (!isMerged(painted, leewayL, leewayDe)) return null;
  const planes = [far.name, near.name];
  if (isMerged(target)) {
    return {
      planes,
      difference: MERGED_L,
      threshold: MERGED_L,
      form: 'question',
      sentence: say`The ${far.label} and the ${near.label} share one value, ${inTarget(scene)} too. Should one sit behind the other?`,
      restsOn: planes,
      levers: [],
    };
  }
  const lost = lostOf(scene, far, near, target, painted);
  if (!lost) return null;
  const lighter = (far.target?.mid ?? 0) > (near.target?.mid ?? 0);
  const lever: Lever = lost.byValue
    ? { plane: far.name, part: 'whole', direction: lighter ? 'lift' : 'deepen', amountL: lost.difference }
    : { plane: far.name, part: 'colour', direction: 'toward-air', amountL: null };
  return {
    planes,
    difference: lost.difference,
    threshold: lost.threshold,
    form: 'finding',
    sentence: say`The ${far.label} and the ${near.label} have almost the same value here, so one can't sit behind the other.`,
    restsOn: planes,
    levers: [lever],
  };
}

export const V2: Rule = {
  id: 'V2',
  name: say`Planes merged`,
  group: 2,
  family: null,
  inputs: 'mid, a, b of neighbours, sky included',
  threshold:
    'target at least 8 L* or 12 dE apart, painting under 4 L* and 7 dE (or inside the noise), and 4.5 L* or 9 dE lost: under half a step reads as one shape',
  noise: 'difference of two mids, or of two colours, inside the painting',
  mutedBy: because('fog', 'night'),
  colour: false,
  why: say`Two planes of one value and colour read as a single shape, and the space between them closes.`,
  source: NO_SOURCE,
  find: (scene) => neighbours(scene.planes).flatMap(({ far, near }) => merge(scene, far, near) ?? []),
};
