/**
 * A ladder planned on the small copy, as the chart and the panel show it.
 *
 * In the flow: plan worker -> [planned-view] -> chart with handles, panel, what is taken. The server's own planning and
 * measuring; a plane's place in the answer is its place among the planes asked about. Pure.
 */

import { GAP_KEYS, type MeasureDocument, type PlaneMeasures } from '#server/core/contract/measures.ts';
import type { LabColour } from '#server/core/contract/setup.ts';
import { gapOf, stepGapOf, stepOf } from '#server/core/gaps/gap.ts';
import { figuresOf, figuresOfPlan } from '#server/core/gaps/target.ts';
import type { LiveRung } from '#server/core/live/layout.ts';
import type { PictureToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';
import type { PlanWish } from '#server/core/plan/ladder/plan-ground.ts';
import { type LadderPlan, planLadder } from '#server/core/plan/ladder/plan-ladder.ts';

export interface PlannedView {
  /** The photograph as `reference`, the plan as `painting`. */
  document: MeasureDocument;
  /** What is taken: one rung a measured plane, far to near. */
  rungs: LiveRung[];
  /** Id of the plane whose handles move a column: of planes planned as one, the one that has handles already. */
  planeIds: string[];
  /** What does not recede, in whole sentences; then all else that was decided. */
  amiss: string[];
  notes: string[];
  /** The photograph's own air and the planned one. */
  air: { photograph: LabColour | null; planned: LabColour | null };
}

const NOTHING: PlaneMeasures = {
  ...{ share: 0, dark: null, mid: null, light: null, spread: null, munsellValue: null, chroma: null },
  ...{ strong: null, hue: null, a: null, b: null, warmCool: null, detail: null, edge: null },
  ...{ hueShares: null, airDistance: null, airShare: null, doubt: {}, notes: [], colours: null },
};

/** A rung as a measured plane has it; null for a plane that could not be measured. */
function asMeasures(rung: LiveRung | null, share: number): PlaneMeasures {
  if (!rung) return NOTHING;
  const figures = figuresOfPlan(rung);
  const kept = Object.fromEntries(GAP_KEYS.map((key) => [key, figures[key]]));
  return { ...NOTHING, ...kept, share, colours: rung.colours ?? null };
}

/** Rungs by place of their plane; the plan leaves out planes that were not measured. */
function rungsByPlane({ planes }: PictureToPlan, { ladder, colours }: LadderPlan): (LiveRung | null)[] {
  let at = 0;
  return planes.map(({ key, measures }): LiveRung | null => {
    if (measures.mid === null) return null;
    const [rung, own] = [ladder[at], colours[at]];
    at++;
    return rung ? { ...rung, ...(own ? { colours: own } : {}), ...(key ? { planeId: key } : {}) } : null;
  });
}

function documentOf(picture: PictureToPlan, rungs: readonly (LiveRung | null)[], plan: LadderPlan) {
  const planes = picture.planes.map(({ name, measures }, at) => {
    const painting = asMeasures(rungs[at] ?? null, measures.share);
    const gap = gapOf({ ...figuresOf(painting), share: null }, figuresOf(measures));
    return { name, reference: measures, painting, gap, recession: null };
  });
  const steps = planes.slice(1).map((near, at) => {
    const far = planes[at] ?? near;
    const there = stepOf(figuresOf(far.reference), figuresOf(near.reference));
    const here = stepOf(figuresOf(far.painting), figuresOf(near.painting));
    return { far: far.name, near: near.name, reference: there, painting: here, gap: stepGapOf(here, there) };
  });
  return {
    ...{ version: 1, target: 'reference', readings: [], priorities: [], works: null },
    units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' },
    capture: { grade: 'A', reasons: [] },
    air: { reference: picture.air, painting: plan.air },
    fit: { key: null, span: null },
    ...{ planes, steps },
  } satisfies MeasureDocument;
}

function holdersOf({ planes }: PictureToPlan, { together }: LadderPlan, { handles }: PlanWish): string[] {
  const ids = planes.map(({ key, name }) => key ?? name);
  const measured = planes.flatMap(({ measures }, at) => (measures.mid === null ? [] : [at]));
  const holders = [...ids];
  measured.forEach((place, at) => {
    const mates = measured.filter((_, other) => together[other] === together[at]);
    const holding = mates.find((mate) => Object.hasOwn(handles, ids[mate] ?? ''));
    if (holding !== undefined) holders[place] = ids[holding] ?? '';
  });
  return holders;
}

/** @throws Problem `setup-invalid` for wishes that say nothing. */
export function plannedView(picture: PictureToPlan, wish: PlanWish): PlannedView {
  const plan = planLadder(picture, wish);
  const rungs = rungsByPlane(picture, plan);
  return {
    document: documentOf(picture, rungs, plan),
    rungs: rungs.filter((rung) => rung !== null),
    planeIds: holdersOf(picture, plan, wish),
    amiss: plan.amiss,
    notes: plan.notes.filter((note) => !plan.amiss.includes(note)),
    air: { photograph: picture.air, planned: plan.air },
  };
}
