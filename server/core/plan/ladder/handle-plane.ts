/**
 * What a person does to one planned plane by hand, after the air.
 *
 * In the flow: colours of a planned plane + handle -> [handle-plane] -> figures. Pure. Order: darks and lights, then the
 * whole plane's lightness, then chroma, then warm and cool; the result is what a screen can show of it.
 */
import { labFromRgb, rgbFromLab } from '../../colour/lab.ts';
import { warmCoolKernel } from '../../colour/temperature.ts';
import type { PlaneHandle } from '../../contract/plan-wishes.ts';
import type { Triple } from '../../geometry/matrix3.ts';
import type { LabPlanes } from '../../image/light-tables.ts';
import { COLOUR_RANGE, LIGHTNESS_RANGE, percentiles } from '../../image/percentiles.ts';

/** Hue of the warmest colours, as in the warm–cool kernel. */
const WARMEST_RAD = (50 * Math.PI) / 180;
/** No colour on a screen lies farther along the axis. */
const FARTHEST = 150;
/** A plane with less between its middle and its darks, or lights, is flat there: they can't be moved apart from it. */
const FLAT = 1e-3;

function median(values: Float32Array): number {
  return percentiles(values, [0.5], COLOUR_RANGE)[0] as number;
}

/** How much what lies on one side of the middle is stretched, so that its end comes to `wish` after the shift. */
function stretchOf(end: number, mid: number, wish: number | undefined, shift: number): number {
  if (wish === undefined || Math.abs(end - mid) <= FLAT) return 1;
  return Math.max(0, (wish - shift - mid) / (end - mid));
}

/** Stretches what lies under and above the middle, so that darks and lights come to their wish, then shifts everything. */
function lightnessBy(lightness: Float32Array, { dark, light, mid: shift = 0 }: PlaneHandle): Float32Array {
  const [lowest, mid, highest] = percentiles(lightness, [0.05, 0.5, 0.95], LIGHTNESS_RANGE) as [
    number,
    number,
    number,
  ];
  const [under, above] = [stretchOf(lowest, mid, dark, shift), stretchOf(highest, mid, light, shift)];
  return lightness.map((value) => {
    const placed = mid + (value - mid) * (value < mid ? under : above);
    return Math.min(100, Math.max(0, placed + shift));
  });
}

/** How far along the warm–cool axis a colour moves so that its kernel changes by `by`. */
export function alongWarmth(a: number, b: number, by: number): number {
  const wanted = warmCoolKernel(a, b) + by;
  let [low, high] = [-FARTHEST, FARTHEST];
  for (let turn = 0; turn < 40; turn++) {
    const middle = (low + high) / 2;
    const there = warmCoolKernel(a + middle * Math.cos(WARMEST_RAD), b + middle * Math.sin(WARMEST_RAD));
    if (there < wanted) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

function clipped(channel: number): number {
  return Math.min(1, Math.max(0, channel));
}

function asShown({ lightness, a, b }: LabPlanes): LabPlanes {
  for (let cell = 0; cell < lightness.length; cell++) {
    const lab = { L: lightness[cell] as number, a: a[cell] as number, b: b[cell] as number };
    const rgb = rgbFromLab(lab);
    if (rgb.every((channel) => channel >= 0 && channel <= 1)) continue;
    const shown: Triple = [clipped(rgb[0]), clipped(rgb[1]), clipped(rgb[2])];
    const found = labFromRgb(shown);
    lightness[cell] = found.L;
    a[cell] = found.a;
    b[cell] = found.b;
  }
  return { lightness, a, b };
}

export function handled(colours: LabPlanes, handle: PlaneHandle): LabPlanes {
  const lightness = lightnessBy(colours.lightness, handle);
  const factor = Math.max(0, handle.chroma ?? 1);
  const a = colours.a.map((value) => value * factor);
  const b = colours.b.map((value) => value * factor);
  if (handle.warmCool) {
    const along = alongWarmth(median(a), median(b), handle.warmCool);
    for (let cell = 0; cell < a.length; cell++) {
      a[cell] = (a[cell] as number) + along * Math.cos(WARMEST_RAD);
      b[cell] = (b[cell] as number) + along * Math.sin(WARMEST_RAD);
    }
  }
  return asShown({ lightness, a, b });
}
