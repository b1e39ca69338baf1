/** Points of freehand strokes as they are kept. In the flow: pen -> [stroke-points] -> the marks room. Pure. */
import type { Mark } from '#server/core/live/marks.ts';

export type StrokePoint = Mark['points'][number];

/** Points nearer to the last kept one than this share of the picture add nothing to see. */
const NEAR = 0.0012;
/** Four figures after the point are a fifth of a pixel of the largest copy. */
const rounded = (share: number) => Math.round(share * 1e4) / 1e4;

/** A stroke without points that nobody could see apart, ends kept, at most 4000 of them. */
export function thinned(points: readonly StrokePoint[]): StrokePoint[] {
  const kept: StrokePoint[] = [];
  points.forEach((point, at) => {
    const last = kept.at(-1);
    const ends = at === points.length - 1;
    if (last && !ends && Math.hypot(point[0] - last[0], point[1] - last[1]) < NEAR) return;
    const [x, y, pressure] = point;
    kept.push(
      pressure === undefined ? [rounded(x), rounded(y)] : [rounded(x), rounded(y), rounded(pressure)],
    );
  });
  const every = Math.ceil(kept.length / 4000);
  return every <= 1 ? kept : kept.filter((_, at) => at % every === 0 || at === kept.length - 1);
}
