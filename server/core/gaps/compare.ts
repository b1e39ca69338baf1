/**
 * Two measured pictures to the document that everything else reads.
 *
 * In the flow: measures of both -> [compare] -> ladder, table, headless output. Capture grade, doubt,
 * readings and priorities are added by others and stand here empty. Pure.
 */

import type {
  MeasureDocument,
  PlaneMeasures,
  PlaneResult,
  PlannedFigures,
  Recession,
  Step,
} from '../contract/measures.ts';
import type { PlannedPlane, Setup, SetupPlane } from '../contract/setup.ts';
import type { PictureMeasures as AllMeasures } from '../measure/measure-planes.ts';
import { say } from '../say/say.ts';
import { fitKeyAndSpan } from './fit.ts';
import { gapOf, stepGapOf, stepOf } from './gap.ts';
import { recessionOf } from './recession.ts';
import { type Figures, figuresOf, figuresOfPlan } from './target.ts';

/** What comparing needs of a measured picture. */
type PictureMeasures = Pick<AllMeasures, 'planes' | 'air'>;

const UNRELIABLE_NOTE = say`Declared unreliable: it is shown, but the painting is not compared with it.`;

interface Compared {
  readonly plane: SetupPlane;
  readonly reference: PlaneMeasures | null;
  readonly painting: PlaneMeasures;
  readonly figures: Figures;
  /** Null where there is nothing to compare with. */
  readonly target: Figures | null;
}

function targetKind(reference: PictureMeasures | null, setup: Setup): MeasureDocument['target'] {
  if (setup.plan !== null) return 'plan';
  return reference ? 'reference' : 'none';
}

function rungOf({ name }: SetupPlane, plan: readonly PlannedPlane[]): PlannedPlane | null {
  return plan.find((rung) => rung.name === name) ?? null;
}

function targetOf(plane: SetupPlane, reference: PlaneMeasures | null, setup: Setup): Figures | null {
  if (setup.plan !== null) {
    const planned = rungOf(plane, setup.plan);
    return planned && figuresOfPlan(planned);
  }
  return reference && !plane.unreliable ? figuresOf(reference) : null;
}

function comparePlanes(
  reference: PictureMeasures | null,
  painting: PictureMeasures,
  setup: Setup,
): Compared[] {
  return setup.planes.map((plane, at) => {
    const painted = painting.planes[at] as PlaneMeasures;
    const measured = reference?.planes[at] ?? null;
    const noted =
      measured && plane.unreliable ? { ...measured, notes: [...measured.notes, UNRELIABLE_NOTE] } : measured;
    return {
      plane,
      reference: noted,
      painting: painted,
      figures: figuresOf(painted),
      target: targetOf(plane, measured, setup),
    };
  });
}

/** What was planned for a plane, for whoever shows it. */
function plannedOf({ plane, target }: Compared, { plan }: Setup): { planned?: PlannedFigures | null } {
  if (plan === null) return {};
  return { planned: target && { ...target, colours: rungOf(plane, plan)?.colours ?? null } };
}

function recessions(compared: readonly Compared[]): (Recession | null)[] {
  const land = ({ plane, painting }: Compared): boolean => plane.kind !== 'sky' && painting.mid !== null;
  const nearest = compared.findLastIndex(land);
  const near = compared[nearest];
  return compared.map((far, at) => {
    if (!near?.target || at >= nearest || !land(far) || !far.target) return null;
    return recessionOf({
      paintingFar: far.figures,
      paintingNear: near.figures,
      targetFar: far.target,
      targetNear: near.target,
    });
  });
}

function stepBetween(far: Compared, near: Compared): Step {
  const painting = stepOf(far.figures, near.figures);
  const target = far.target && near.target ? stepOf(far.target, near.target) : null;
  return {
    far: far.plane.name,
    near: near.plane.name,
    reference:
      far.reference && near.reference ? stepOf(figuresOf(far.reference), figuresOf(near.reference)) : null,
    painting,
    gap: target ? stepGapOf(painting, target) : null,
  };
}

/** @param reference null when painted from life; both hold the planes of `setup` in its order, far to near. */
export function comparePictures(
  reference: PictureMeasures | null,
  painting: PictureMeasures,
  setup: Setup,
): MeasureDocument {
  const compared = comparePlanes(reference, painting, setup);
  const recession = recessions(compared);
  const mids = compared.flatMap(({ target, figures }): [number, number][] =>
    target?.mid != null && figures.mid !== null ? [[target.mid, figures.mid]] : [],
  );
  return {
    version: 1,
    target: targetKind(reference, setup),
    units: { lightness: 'CIE L*, D65', chroma: 'C*ab', hue: 'degrees' },
    capture: { grade: null, reasons: [] },
    air: { reference: reference?.air ?? null, painting: painting.air },
    planes: compared.map((each, at): PlaneResult => {
      const { plane, reference: measured, painting: painted, figures, target } = each;
      return {
        name: plane.name,
        reference: measured,
        painting: painted,
        ...plannedOf(each, setup),
        gap: target ? gapOf(figures, target) : null,
        recession: recession[at] ?? null,
      };
    }),
    steps: compared.slice(1).map((near, at) => stepBetween(compared[at] as Compared, near)),
    fit: fitKeyAndSpan(mids),
    readings: [],
    priorities: [],
    works: null,
  };
}
