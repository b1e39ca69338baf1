/**
 * The one thing that works: the plane whose relation is best kept. Always computed when there is a plane to praise.
 *
 * In the flow: scene + readings -> [works] -> document. A plane that a speaking finding is about is praised only when
 * all are. Pure. Source: Hattie & Timperley 2007; common practice of critiques (strengths first).
 */
import { say } from '../say/say.ts';
import type { Found } from './find-readings.ts';
import { residuals } from './rules/value-order.ts';
import type { Scene, ScenePlane } from './scene.ts';
import { inTarget } from './target-words.ts';

export interface Works {
  /** Full name, as in the document. */
  plane: string;
  /** At most 30 words. */
  sentence: string;
}

/** Change of the steps to both neighbours, L*; smaller is better kept. */
function stepDepartures(planes: ScenePlane[]): Map<ScenePlane, number> {
  const usable = planes.filter((plane) => plane.target?.mid != null);
  const gap = (plane: ScenePlane) => (plane.painting.mid ?? 0) - (plane.target?.mid ?? 0);
  return new Map(
    usable.map((plane, at) => {
      const beside = [usable[at - 1], usable[at + 1]].flatMap((other) => (other ? [other] : []));
      return [plane, Math.max(0, ...beside.map((other) => Math.abs(gap(plane) - gap(other))))];
    }),
  );
}

/** With no target: how clearly a plane stands from its neighbours, turned round so that smaller is better. */
function merging(planes: ScenePlane[]): Map<ScenePlane, number> {
  return new Map(
    planes.map((plane, at) => {
      const beside = [planes[at - 1], planes[at + 1]].flatMap((other) => (other ? [other] : []));
      const steps = beside.map((other) => Math.abs((plane.painting.mid ?? 0) - (other.painting.mid ?? 0)));
      return [plane, steps.length === 0 ? 0 : -Math.min(...steps)];
    }),
  );
}

/** Smaller is better kept: residual of the fit plus half the change of the steps beside it. */
function departures(scene: Scene): Map<ScenePlane, number> {
  if (!scene.hasTarget) return merging(scene.planes);
  const trusted = scene.planes.filter((plane) => !plane.unreliable || scene.document.target === 'plan');
  const steps = stepDepartures(trusted);
  const off = residuals(scene);
  return new Map([...steps].map(([plane, step]) => [plane, Math.abs(off.get(plane) ?? 0) + step / 2]));
}

/** A plane that departs by more than this is praised as the best kept, not as kept. */
const KEPT_L = 5;

function sentenceFor(scene: Scene, plane: ScenePlane): string {
  const at = scene.planes.indexOf(plane);
  const [far, near] = [scene.planes[at - 1], scene.planes[at + 1]];
  if (!scene.hasTarget) return say`The ${plane.label} stands clear of its neighbours in value. Keep that.`;
  if (far && near) {
    return say`The ${plane.label} sits between the ${far.label} and the ${near.label} just as ${inTarget(scene)}. Keep that.`;
  }
  const beside = far ?? near;
  return beside
    ? say`The ${plane.label} keeps its step to the ${beside.label}, just as ${inTarget(scene)}. Keep that.`
    : say`The ${plane.label} keeps its value, just as ${inTarget(scene)}. Keep that.`;
}

/** @returns null only when no plane could be compared at all. */
export function worksOf(scene: Scene, readings: readonly Found[]): Works | null {
  const blamed = new Set(
    readings
      .filter(({ muted, form }) => muted === null && form === 'finding')
      .flatMap(({ planes }) => planes),
  );
  const departed = departures(scene);
  const all = [...departed].sort((one, two) => one[1] - two[1]).map(([plane]) => plane);
  const best = all.find((plane) => !blamed.has(plane.name)) ?? all[0];
  if (!best) return null;
  const sentence =
    blamed.has(best.name) || (departed.get(best) ?? 0) > KEPT_L
      ? say`The ${best.label} keeps its value best of all the planes. Build on that.`
      : sentenceFor(scene, best);
  return { plane: best.name, sentence };
}
