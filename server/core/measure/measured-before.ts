/**
 * Remembers what was last measured on each picture: moving an outline on one of two leaves the other as it was.
 *
 * In the flow: measure-pair -> [measured-before] -> measure-planes. The memory belongs to whoever made it (the
 * pipeline's worker) and holds a picture's measures no longer than its pixels. Same figures as without it.
 */
import { measurePlanes, type PictureMeasures } from './measure-planes.ts';

/** What `measurePrepared` measures one picture with. */
export type MeasurePlanes = typeof measurePlanes;

/** @returns `measurePlanes`, which works a picture out anew only when its pixels, outlines, kinds or air changed. */
export function measuredBefore(): MeasurePlanes {
  // By its pixels, since a note about the paint makes another `Prepared` of the same plate.
  const kept = new WeakMap<Float32Array, { asked: string; measures: PictureMeasures }>();
  return (prepared, planes, pickedAir, options) => {
    const asked = JSON.stringify([planes, pickedAir, options ?? {}]);
    const known = kept.get(prepared.linear);
    if (known?.asked === asked) return known.measures;
    const measures = measurePlanes(prepared, planes, pickedAir, options);
    kept.set(prepared.linear, { asked, measures });
    return measures;
  };
}
