/**
 * Measures all planes of one picture.
 *
 * In the flow: prepared plate + outlines -> [measure-planes] -> gaps. Pure.
 */
import type { PlaneMeasures } from '../contract/measures.ts';
import type { FractionPoint, LabColour, PlaneKind } from '../contract/setup.ts';
import { checkOutline } from '../planes/check-outline.ts';
import { erodeLabels, labelsOfBlocks } from '../planes/erode.ts';
import { countLabels, drawLabelMap } from '../planes/label-map.ts';
import { airColour } from './air.ts';
import { edgesOf } from './edge.ts';
import { cellsByPlane } from './plane-cells.ts';
import { figuresOfPlane } from './plane-figures.ts';
import type { Prepared } from './prepare.ts';

/** Rim that is left out around every plane, as a share of the long side. */
const RIM = 0.006;

export interface PlaneToMeasure {
  readonly name: string;
  readonly kind: PlaneKind;
  /** Fractions of the plate. */
  readonly outline: readonly FractionPoint[];
}

export interface PictureMeasures {
  /** Far to near, as given. */
  readonly planes: PlaneMeasures[];
  readonly air: LabColour | null;
}

/**
 * @param planes far to near. @param pickedAir colour of the air picked by a person, or null to measure it.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePlanes(
  prepared: Prepared,
  planes: readonly PlaneToMeasure[],
  pickedAir: LabColour | null,
): PictureMeasures {
  for (const plane of planes) checkOutline(plane.name, plane.outline);
  const { widthPx, heightPx, side, longSidePx } = prepared;
  const labels = drawLabelMap(
    widthPx,
    heightPx,
    planes.map((plane) => plane.outline),
  );
  const counts = countLabels(labels, planes.length);
  const eroded = erodeLabels(labels, widthPx, heightPx, RIM * longSidePx);
  const kept = labelsOfBlocks(eroded, widthPx, heightPx, side);
  const cells = cellsByPlane(kept, planes.length);
  const isSky = planes.map((plane) => plane.kind === 'sky');
  const air = pickedAir ?? airColour(prepared, labels, kept, isSky);
  const edges = edgesOf(prepared, labels, planes.length);
  return {
    air,
    planes: planes.map(({ kind }, label) =>
      figuresOfPlane({
        prepared,
        kind,
        share: (counts[label] as number) / labels.length,
        cells: cells[label] as Int32Array,
        edge: edges[label] ?? null,
        air,
      }),
    ),
  };
}
