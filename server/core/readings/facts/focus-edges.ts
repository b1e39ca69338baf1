/**
 * Hardness of every plane's edge, split into what lies near the painter's focus and what lies away from it.
 *
 * In the flow: prepared plate + boundaries + focus -> [focus edges] -> D2. The measuring code's own edge figure is
 * taken twice, from the points of the boundary within the focus and from the others. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { median } from '../../image/percentiles.ts';
import { hardnessAlong } from '../../measure/edge.ts';
import type { Prepared } from '../../measure/prepare.ts';
import type { EdgeFocusFacts } from '../picture-facts.ts';

/** Radius of the focus, as a share of the picture's width. */
const FOCUS_RADIUS = 0.2;

export interface Boundaries {
  /** Label map of the plate, one byte a pixel, before erosion. */
  readonly labels: Uint8Array;
  /** Pixels of each plane that touch a farther one, by label. */
  readonly boundaries: readonly (readonly number[])[];
}

/**
 * @param names by label, far to near.
 * @param focus 0..1 of the picture, or null: then nothing is told.
 */
export function focusEdgeFacts(
  prepared: Prepared,
  { labels, boundaries }: Boundaries,
  names: readonly string[],
  focus: FractionPoint | null,
): EdgeFocusFacts[] {
  if (!focus) return [];
  const { widthPx, heightPx } = prepared;
  const [x0, y0] = [focus[0] * widthPx, focus[1] * heightPx];
  const radiusPx = FOCUS_RADIUS * widthPx;
  const within = (pixel: number): boolean =>
    Math.hypot((pixel % widthPx) - x0, Math.floor(pixel / widthPx) - y0) <= radiusPx;
  return names.map((near, label) => {
    const pixels = boundaries[label] ?? [];
    const hardness = (some: readonly number[]) => median(hardnessAlong(prepared, labels, some, label));
    return {
      near,
      inside: hardness(pixels.filter(within)),
      outside: hardness(pixels.filter((pixel) => !within(pixel))),
    };
  });
}
