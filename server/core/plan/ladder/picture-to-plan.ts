/**
 * What planning needs of one measured picture.
 *
 * In the flow: prepared plate + measures -> [picture-to-plan] -> plan-ladder. Pure.
 */
import type { PlaneMeasures } from '../../contract/measures.ts';
import type { LabColour, PlaneKind } from '../../contract/setup.ts';
import type { PictureMeasures } from '../../measure/measure-planes.ts';
import { cellsByPlane } from '../../measure/plane-cells.ts';
import type { Prepared } from '../../measure/prepare.ts';

export interface PlaneToPlan {
  readonly name: string;
  /** What a person's handle of it is kept under, where that is not its name. */
  readonly key?: string;
  readonly kind: PlaneKind;
  readonly measures: PlaneMeasures;
  /** Blurred linear RGB, 0..1, of the cells within the rim, interleaved. */
  readonly linear: Float32Array;
}

export interface PictureToPlan {
  /** Far to near. */
  readonly planes: readonly PlaneToPlan[];
  /** Colour of the photograph's own air; null where it was not measured or picked. */
  readonly air: LabColour | null;
}

function colourOfCells(linear: Float32Array, cells: Int32Array): Float32Array {
  const found = new Float32Array(cells.length * 3);
  for (let at = 0; at < cells.length; at++) {
    const from = (cells[at] as number) * 3;
    found[at * 3] = linear[from] as number;
    found[at * 3 + 1] = linear[from + 1] as number;
    found[at * 3 + 2] = linear[from + 2] as number;
  }
  return found;
}

/** @param planes as they were measured, far to near. */
export function pictureToPlan(
  prepared: Prepared,
  measured: PictureMeasures,
  planes: readonly { readonly name: string; readonly kind: PlaneKind; readonly key?: string }[],
): PictureToPlan {
  const cells = cellsByPlane(measured.kept, planes.length);
  return {
    air: measured.air,
    planes: planes.map(({ name, kind, key }, at) => ({
      name,
      ...(key === undefined ? {} : { key }),
      kind,
      measures: measured.planes[at] as PlaneMeasures,
      linear: colourOfCells(prepared.linear, cells[at] as Int32Array),
    })),
  };
}
