/**
 * A planned ladder as it stands on a sheet: its drawing, and the steps from plane to plane in words.
 *
 * In the flow: taken plan + the photograph's own figures -> [plan-on-sheet] -> content. Amounts in quarter steps: a plan is
 * exact, what is doubtful about a photo does not touch it. Pure.
 */
import { formatHex } from 'culori';
import type { MeasureDocument, PlaneMeasures, PlaneResult } from '../contract/measures.ts';
import type { PlannedPlane } from '../contract/setup.ts';
import { SAME_LIGHTNESS } from '../gaps/gap-words.ts';
import { ladderGeometry } from '../ladder/geometry.ts';
import { amountInWords } from '../readings/words.ts';
import type { SheetLadder } from './content.ts';
import { sheetWords } from './words.ts';

const { plan: words } = sheetWords;

/** C*ab, and units of warm–cool, below which colour is the same (as the gaps say it). */
const SAME_COLOUR = 3;

/** @param photograph Its own figures, for the dashed bars; null = they are not there. */
export function plannedLadder(
  rungs: readonly PlannedPlane[],
  photograph: MeasureDocument | null,
): SheetLadder {
  const seen = new Map((photograph?.planes ?? []).map((plane) => [plane.name, plane.painting]));
  const planes = rungs.map((rung): PlaneResult => {
    return { ...bare, name: rung.name, reference: seen.get(rung.name) ?? null, painting: measuresOf(rung) };
  });
  const compared = planes.some(({ reference }) => reference !== null);
  return {
    geometry: ladderGeometry(planes),
    planes: rungs.map(({ name }) => ({ name, words: '' })),
    against: words.against,
    key: compared ? words.key : null,
  };
}

const bare = { gap: null, recession: null } as const;

const UNMEASURED = {
  ...{ share: 0, munsellValue: null, hue: null, a: null, b: null, detail: null, edge: null },
  ...{ hueShares: null, airShare: null, doubt: {}, notes: [] },
};

function measuresOf({ colours, name: _, ...rung }: PlannedPlane): PlaneMeasures {
  const { dark, mid, light } = rung;
  const grey = (l: number) => formatHex({ mode: 'lab65', l, a: 0, b: 0 });
  return {
    ...UNMEASURED,
    ...rung,
    spread: light - dark,
    colours: colours ?? { dark: grey(dark), mid: grey(mid), light: grey(light) },
  };
}

/** From each plane to the next nearer one: `1 to 2: half a step darker, warmer`. */
export function plannedSteps(rungs: readonly PlannedPlane[]): string[] {
  return rungs.slice(1).map((near, at) => {
    const far = rungs[at] as PlannedPlane; // one before it
    const said = [
      valueWords(near.mid - far.mid),
      ...differs(near.chroma - far.chroma, words.stronger, words.greyer),
      ...differs(near.warmCool - far.warmCool, words.warmer, words.cooler),
    ];
    return words.step(at + 1, at + 2, said.join(', '));
  });
}

function valueWords(difference: number): string {
  if (Math.abs(difference) < SAME_LIGHTNESS) return words.same;
  const amount = amountInWords(difference, 'A') ?? '';
  return difference < 0 ? words.darker(amount) : words.lighter(amount);
}

function differs(difference: number, more: string, less: string): string[] {
  if (Math.abs(difference) < SAME_COLOUR) return [];
  return [difference > 0 ? more : less];
}
