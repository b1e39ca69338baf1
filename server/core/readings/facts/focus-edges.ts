/**
 * Hardness of every plane's edge, split into what lies near the painter's focus and what lies away from it.
 *
 * In the flow: prepared plate + label map + focus -> [focus edges] -> D2. The measuring code's own edge figure is
 * taken twice, with the other part of the picture blanked out. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { median } from '../../image/percentiles.ts';
import { edgesOf } from '../../measure/edge.ts';
import type { Prepared } from '../../measure/prepare.ts';
import { NO_PLANE } from '../../planes/label-map.ts';
import type { EdgeFocusFacts } from '../picture-facts.ts';

/** Radius of the focus, as a share of the picture's width. */
const FOCUS_RADIUS = 0.2;

function only(labels: Uint8Array, widthPx: number, keep: (x: number, y: number) => boolean): Uint8Array {
  return labels.map((label, at) => (keep(at % widthPx, Math.floor(at / widthPx)) ? label : NO_PLANE));
}

/**
 * @param labels one byte a pixel of the plate, before erosion. @param names by label, far to near.
 * @param focus 0..1 of the picture, or null: then nothing is inside.
 */
export function focusEdgeFacts(
  prepared: Prepared,
  labels: Uint8Array,
  names: readonly string[],
  focus: FractionPoint | null,
): EdgeFocusFacts[] {
  if (!focus) return [];
  const { widthPx, heightPx } = prepared;
  const [x0, y0] = [focus[0] * widthPx, focus[1] * heightPx];
  const within = (x: number, y: number) => Math.hypot(x - x0, y - y0) <= FOCUS_RADIUS * widthPx;
  const inside = edgesOf(prepared, only(labels, widthPx, within), names.length);
  const outside = edgesOf(
    prepared,
    only(labels, widthPx, (x, y) => !within(x, y)),
    names.length,
  );
  return names.map((near, label) => ({
    near,
    inside: median(inside[label] ?? []),
    outside: median(outside[label] ?? []),
  }));
}
