/**
 * Measures all planes of one picture.
 *
 * In the flow: prepared plate + outlines -> [measure-planes] -> gaps. Pure.
 */
import { dropGlare, type PlaneCapture, planeCapture } from '../capture/plane-capture.ts';
import type { PlaneMeasures } from '../contract/measures.ts';
import type { FractionPoint, LabColour, PlaneKind } from '../contract/setup.ts';
import { type Sampling, samplingOf } from '../doubt/bootstrap.ts';
import { checkOutline } from '../planes/check-outline.ts';
import { erodeLabels, labelsOfBlocks } from '../planes/erode.ts';
import { countLabels, drawLabelMap } from '../planes/label-map.ts';
import { airColour, airSharesOf } from './air.ts';
import { boundariesOf, hardnessAlong } from './edge.ts';
import { cellsByPlane } from './plane-cells.ts';
import { figuresOfPlane, type PlaneInput, tellsAirShare } from './plane-figures.ts';
import type { Prepared } from './prepare.ts';

/** Rim that is left out around every plane, as a share of the long side. */
export const RIM = 0.006;

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
  /** What glare and clipping take. */
  readonly capture: PlaneCapture;
  /** Deviations by the bootstrap, far to near; null for planes not measured, or when not asked for. */
  readonly sampling: (Sampling | null)[];
  /** Plane of each pixel, before the rim is taken off; 255 = none. */
  readonly labels: Uint8Array;
  /** Plane of each cell within its rim and out of glare; 255 = none. */
  readonly kept: Uint8Array;
  /** Pixels of each plane that touch a farther one. */
  readonly boundaries: readonly (readonly number[])[];
}

export interface MeasureOptions {
  /** Whether to work out the bootstrap's deviations as well. */
  readonly sampling?: boolean;
}

/**
 * @param planes far to near. @param pickedAir colour of the air picked by a person, or null to measure it.
 * @throws Problem `outline-invalid`, naming the plane.
 */
export function measurePlanes(
  prepared: Prepared,
  planes: readonly PlaneToMeasure[],
  pickedAir: LabColour | null,
  options: MeasureOptions = {},
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
  const blocks = labelsOfBlocks(eroded, widthPx, heightPx, side);
  const glare = dropGlare(blocks, prepared.glare, planes.length);
  const cells = cellsByPlane(blocks, planes.length);
  const isSky = planes.map((plane) => plane.kind === 'sky');
  const air = pickedAir ?? airColour(prepared, labels, blocks, isSky);
  const boundaries = boundariesOf(labels, widthPx, planes.length);
  const edges = boundaries.map((pixels, near) => hardnessAlong(prepared, labels, pixels, near));
  const inputs = planes.map(({ kind }, label): PlaneInput => {
    const own = cells[label] as Int32Array;
    return {
      prepared,
      kind,
      share: (counts[label] as number) / labels.length,
      cells: own,
      edges: edges[label] ?? [],
      air,
      airShares: air && own.length > 0 && tellsAirShare(kind) ? airSharesOf(prepared, own, air) : null,
      glare: glare[label] ?? 0,
    };
  });
  const figures = inputs.map(figuresOfPlane);
  return {
    air,
    labels,
    kept: blocks,
    boundaries,
    planes: figures,
    capture: planeCapture(prepared, cells, isSky, glare),
    sampling: figures.map(({ mid }, place) =>
      options.sampling && mid !== null ? samplingOf({ ...(inputs[place] as PlaneInput), place }) : null,
    ),
  };
}
