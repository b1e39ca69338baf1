/**
 * What a ladder is planned from, and its picture made ready: the photograph or a frame of it, with its planes.
 *
 * In the flow: live document + copy of the photograph -> [plan-ground] -> plan-ladder, in the page's workers and the
 * server's. Pure.
 */
import type { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { Condition, LabColour, Outline, PlaneKind } from '../../contract/setup.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import type { LiveWishes } from '../../live/plan/wishes.ts';
import { measurePlanes } from '../../measure/measure-planes.ts';
import { prepareMeasurable } from '../../measure/prepare.ts';
import type { Box } from '../crops/crop-scene.ts';
import { pointInFrame, rasterInFrame } from '../in-frame.ts';
import { type PictureToPlan, pictureToPlan } from './picture-to-plan.ts';

export interface PlaneAsked {
  id: string;
  name: string;
  kind: PlaneKind;
  /** 0..1 of the upright photograph. */
  outline: Outline;
}

/** What a ladder is planned from, but for the wishes: while this stays, nothing is measured again. */
export interface PlanGround {
  /** Far to near; at least one. */
  planes: readonly PlaneAsked[];
  /** Picked by a person for the photograph, or null. */
  air: LabColour | null;
  /** The frame that is planned from, 0..1 of the photograph. */
  box: Box;
}

export interface PlanWish extends Pick<LiveWishes, 'count' | 'air' | 'strength'> {
  conditions: readonly Condition[];
  /** By plane id. */
  handles: Readonly<Record<string, PlaneHandle>>;
}

/** @throws Problem `outline-invalid`. */
export function planGround(whole: EncodedRaster, { planes, air, box }: PlanGround): PictureToPlan {
  const raster = rasterInFrame(whole, box);
  const inside = planes.map(({ id, name, kind, outline }) => ({
    key: id,
    name,
    kind,
    outline: outline.map((point) => pointInFrame(point, box)),
  }));
  const prepared = prepareMeasurable({ raster });
  return pictureToPlan(prepared, measurePlanes(prepared, inside, air), inside);
}
