/**
 * A measured document with its readings, observations, priorities, cards and the one thing that works.
 *
 * In the flow: measured pair + what its pixels tell besides -> [with-readings] -> document. Pure.
 */
import type { MeasureDocument } from '../contract/measures.ts';
import type { FractionPoint, Setup } from '../contract/setup.ts';
import type { PictureMeasures } from '../measure/measure-planes.ts';
import type { Prepared } from '../measure/prepare.ts';
import { captureFactsOf } from './facts/capture-facts.ts';
import { coarseGrid } from './facts/coarse-grid.ts';
import { sideFactsOf } from './facts/side-facts.ts';
import type { SideFacts } from './picture-facts.ts';
import { readingsOf } from './readings.ts';

/** One picture as it was measured. */
export interface MeasuredSide {
  readonly prepared: Prepared;
  readonly measures: PictureMeasures;
}

function factsOf(
  { prepared, measures }: MeasuredSide,
  names: readonly string[],
  focus: FractionPoint | null,
): SideFacts {
  const shares = measures.planes.map(({ share }) => share);
  const grid = coarseGrid(prepared, measures.kept, names);
  return sideFactsOf({ grid, prepared, boundaries: measures, shares, focus });
}

/**
 * @param sides reference null when painted from life. The focus is the painter's and lies on the painting; where it
 *   would lie on the reference nobody knows, so nothing there is split by it.
 */
export function withReadings(
  document: MeasureDocument,
  setup: Setup,
  sides: { readonly reference: MeasuredSide | null; readonly painting: MeasuredSide },
): MeasureDocument {
  const names = setup.planes.map(({ name }) => name);
  const { prepared, measures } = sides.painting;
  const pictures = {
    reference: sides.reference && factsOf(sides.reference, names, null),
    painting: factsOf(sides.painting, names, setup.focus),
    capture: captureFactsOf(prepared.facts, measures.capture, names, null),
  };
  const { readings, observations, priorities, works, cards } = readingsOf({ document, setup, pictures });
  return { ...document, readings, priorities, works, cards, observations };
}
