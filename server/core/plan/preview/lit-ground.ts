/**
 * The picture a preview is made of, kept between two movements of a hand: planes, rearranging, soft edges, plan.
 *
 * In the flow: preview worker, the server's worker -> [lit-ground] -> WebGL painter, relight. Each stage is kept under what it
 * was made from, so that a dragged handle finds only new lights, and a dragged motif closes no hole again. Without IO.
 */
import type { Rearranging } from '../../contract/rearranging.ts';
import type { EncodedRaster } from '../../image/raster.ts';
import { drawLabelMap } from '../../planes/label-map.ts';
import { WHOLE } from '../in-frame.ts';
import type { PictureToPlan } from '../ladder/picture-to-plan.ts';
import { type PlanGround, type PlanWish, planGround } from '../ladder/plan-ground.ts';
import { planLadder } from '../ladder/plan-ladder.ts';
import { arrange, type Cleared, cleared, liftKey, type RearrangedPicture } from '../rearrange/rearrange.ts';
import type { PlaneMap } from '../rearrange/soft-mask.ts';
import type { PlaneLight } from './plane-light.ts';
import { type PreviewGround, previewGround, previewLights } from './preview-ground.ts';
import { wantedLights } from './wanted-lights.ts';

/** One thing, made again when its key changes. */
class Kept<T> {
  #key = '';
  #value: T | null = null;

  of(key: string, make: () => T): T {
    if (this.#value !== null && this.#key === key) return this.#value;
    this.#value = make();
    this.#key = key;
    return this.#value;
  }
}

export interface Copies {
  /** The copy that is shown, and the lossless small one that is measured. */
  readonly shown: EncodedRaster;
  readonly small: EncodedRaster;
}

export class LitGround {
  readonly #map = new Kept<PlaneMap>();
  readonly #cleared = new Kept<Cleared>();
  readonly #arranged = new Kept<RearrangedPicture>();
  readonly #ground = new Kept<PreviewGround>();
  readonly #picture = new Kept<PictureToPlan>();

  /** The picture as it is rearranged, and which plane each pixel belongs to. */
  arranged(
    { shown }: Copies,
    planes: PlanGround['planes'],
    { motifs, bends }: Rearranging,
  ): RearrangedPicture {
    const map = this.#mapOf(shown, planes);
    if (motifs.length + bends.length === 0) return { raster: shown, labels: map.labels };
    const under = JSON.stringify([planes, motifs.map(liftKey)]);
    const ground = this.#cleared.of(under, () => cleared(shown, map, motifs));
    return this.#arranged.of(JSON.stringify([under, motifs, bends]), () => arrange(ground, motifs, bends));
  }

  ground(copies: Copies, plan: PlanGround, steps: Rearranging): PreviewGround {
    const key = groundKey(plan, steps);
    return this.#ground.of(key, () => {
      const { raster, labels } = this.arranged(copies, plan.planes, steps);
      return previewGround(raster, labels, plan.planes.length);
    });
  }

  /** @throws Problem of planning. */
  lights(copies: Copies, plan: PlanGround, steps: Rearranging, wish: PlanWish): (PlaneLight | null)[] {
    const picture = this.#picture.of(JSON.stringify(plan), () => planGround(copies.small, plan));
    const isWhole = JSON.stringify(plan.box) === JSON.stringify(WHOLE);
    const unchanged = isWhole && steps.motifs.length + steps.bends.length === 0;
    const wanted = wantedLights(picture, planLadder(picture, wish), unchanged);
    return previewLights(this.ground(copies, plan, steps), wanted);
  }

  #mapOf({ widthPx, heightPx }: EncodedRaster, planes: PlanGround['planes']): PlaneMap {
    return this.#map.of(JSON.stringify(planes), () => ({
      labels: drawLabelMap(
        widthPx,
        heightPx,
        planes.map(({ outline }) => outline),
      ),
      planeIds: planes.map(({ id }) => id),
    }));
  }
}

/** Of everything that the ground of a preview is made from, but for the picture itself. */
export function groundKey({ planes }: PlanGround, steps: Rearranging): string {
  return JSON.stringify([planes, steps]);
}
