/** Planes of flat patches with the figures that planning needs, without a picture. */
import { labFromRgb, rgbFromLab } from '#server/core/colour/lab.ts';
import type { PlaneMeasures } from '#server/core/contract/measures.ts';
import type { LabColour, PlaneKind } from '#server/core/contract/setup.ts';
import { encodedRaster } from '#server/core/image/raster.ts';
import { measurePlanes } from '#server/core/measure/measure-planes.ts';
import { prepareMeasurable } from '#server/core/measure/prepare.ts';
import type { PictureToPlan, PlaneToPlan } from '#server/core/plan/ladder/picture-to-plan.ts';

export interface MadeUp {
  name: string;
  kind?: PlaneKind;
  /** Patches of the plane, in equal number; as they are seen. */
  colours: LabColour[];
}

const PATCHES = 60;

/** Measures a plane by the engine itself: a picture that is nothing but its patches. */
function measuresOf(colours: readonly LabColour[], kind: PlaneKind, air: LabColour | null): PlaneMeasures {
  const side = 200;
  const linear = colours.map(rgbFromLab);
  const samples = new Uint8Array(side * side * 3);
  for (let pixel = 0; pixel < side * side; pixel++) {
    const patch = Math.floor(((pixel % side) * colours.length) / side);
    (linear[patch] as readonly number[]).forEach((light, channel) => {
      const shown = Math.min(1, Math.max(0, light));
      samples[pixel * 3 + channel] = Math.round(
        255 * (shown <= 0.0031308 ? 12.92 * shown : 1.055 * shown ** (1 / 2.4) - 0.055),
      );
    });
  }
  const plane = {
    name: 'plane',
    kind,
    outline: [
      [0, 0],
      [1, 0],
      [1, 1],
      [0, 1],
    ] as [number, number][],
  };
  const measured = measurePlanes(
    prepareMeasurable({ raster: encodedRaster(side, side, samples) }),
    [plane],
    air,
  );
  return measured.planes[0] as PlaneMeasures;
}

export function madeUp(planes: readonly MadeUp[], air: LabColour | null): PictureToPlan {
  return {
    air,
    planes: planes.map(({ name, kind = 'land', colours }): PlaneToPlan => {
      const each = Array.from({ length: PATCHES }, (_, at) => colours[at % colours.length] as LabColour);
      return {
        name,
        kind,
        measures: { ...measuresOf(colours, kind, air), share: 1 / planes.length },
        linear: Float32Array.from(each.flatMap((colour) => [...rgbFromLab(colour)])),
      };
    }),
  };
}

/** A colour seen through air, written out: mixed in linear light. */
export function hazed(own: LabColour, air: LabColour, through: number): LabColour {
  const [thing, veil] = [rgbFromLab(own), rgbFromLab(air)];
  const mixed = [0, 1, 2].map(
    (channel) => (thing[channel] as number) * through + (veil[channel] as number) * (1 - through),
  );
  return labFromRgb(mixed as [number, number, number]);
}
