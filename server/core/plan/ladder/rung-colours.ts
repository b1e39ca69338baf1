/**
 * A planned plane's own colours at its darks, middle and lights, for drawing its bar. Pure.
 *
 * In the flow: colours of a planned plane -> [rung-colours] -> ladder. Like `measure/swatches.ts`, on CIELAB alone: after
 * a handle there is no other.
 */
import { hexFromLinear } from '../../colour/hex.ts';
import { rgbFromLab } from '../../colour/lab.ts';
import type { PlaneMeasures } from '../../contract/measures.ts';
import type { LabPlanes } from '../../image/light-tables.ts';

/** Half width in L* of the window of cells that a drawn colour is the mean of. */
const WINDOW = 1.5;

/** Mean a* and b* of the cells near a lightness, of the nearest one where none is near. */
function colourNear({ lightness, a, b }: LabPlanes, level: number): string {
  let [sumA, sumB, count, nearest, least] = [0, 0, 0, 0, Number.POSITIVE_INFINITY];
  for (let cell = 0; cell < lightness.length; cell++) {
    const away = Math.abs((lightness[cell] as number) - level);
    if (away < least) [nearest, least] = [cell, away];
    if (away > WINDOW) continue;
    sumA += a[cell] as number;
    sumB += b[cell] as number;
    count++;
  }
  const [meanA, meanB] =
    count > 0 ? [sumA / count, sumB / count] : [a[nearest] as number, b[nearest] as number];
  return hexFromLinear(...rgbFromLab({ L: level, a: meanA, b: meanB }));
}

/** @param levels L*. */
export function rungColours(
  colours: LabPlanes,
  levels: { dark: number; mid: number; light: number },
): NonNullable<PlaneMeasures['colours']> {
  return {
    dark: colourNear(colours, levels.dark),
    mid: colourNear(colours, levels.mid),
    light: colourNear(colours, levels.light),
  };
}
