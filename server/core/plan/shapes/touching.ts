/**
 * K3: contours that just touch, another one or the upper frame.
 *
 * In the flow: ridges -> [touching] -> suggestions. Two contours touch where they come within 1.2 % of the diagonal over
 * 2 to 8 % of it, run nearly parallel there, and part again at both ends; one that rises into the other by a hair still
 * touches, one that rises further overlaps. Source: common practice, no source (tangents). Pure.
 */
import { say } from '../../say/say.ts';
import { type RidgeLine, straightThrough } from './ridge-lines.ts';
import { pointsAlong, type ShapeScene } from './shape-scene.ts';
import { type Seen, severityOf } from './suggestion.ts';

/** Shares of the picture's diagonal. */
const NEAR = 0.012;
const STRETCH = { least: 0.02, most: 0.08 };
const HAIR = 0.005;
/** Degrees between the contours along the stretch. */
const PARALLEL_DEG = 15;
/** Share of the diagonal over which a hidden contour is carried on to see how far it is overlapped. */
const BRIDGED = 0.06;

/** Heights with short hidden stretches carried on straight. */
function bridged(heights: Float64Array, most: number): Float64Array {
  const whole = heights.slice();
  let last = -1;
  for (let x = 0; x < heights.length; x++) {
    if (Number.isNaN(heights[x])) continue;
    if (last >= 0 && x - last > 1 && x - last <= most) {
      const [from, to] = [heights[last] as number, heights[x] as number];
      for (let at = last + 1; at < x; at++) whole[at] = from + ((to - from) * (at - last)) / (x - last);
    }
    last = x;
  }
  return whole;
}

interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly least: number;
}

/** Stretches in which the gap stays within `near`, that begin and end by growing. */
function closeStretches(gaps: Float64Array, near: number): Stretch[] {
  const found: Stretch[] = [];
  for (let x = 0; x < gaps.length; x++) {
    if (!((gaps[x] as number) <= near)) continue;
    const from = x;
    let least = gaps[x] as number;
    while (x + 1 < gaps.length && (gaps[x + 1] as number) <= near)
      least = Math.min(least, gaps[++x] as number);
    const inside = from > 0 && x + 1 < gaps.length;
    if (inside && !Number.isNaN(gaps[from - 1]) && !Number.isNaN(gaps[x + 1]))
      found.push({ from, to: x, least });
  }
  return found;
}

function degreesBetween(one: Float64Array, two: Float64Array, { from, to }: Stretch): number {
  const xs = Array.from({ length: to - from + 1 }, (_, at) => from + at);
  const angle = (heights: Float64Array): number =>
    Math.atan(
      straightThrough(
        xs,
        xs.map((x) => heights[x] as number),
      ).slope,
    );
  return (Math.abs(angle(one) - angle(two)) * 180) / Math.PI;
}

function seen(
  scene: ShapeScene,
  near: RidgeLine,
  stretch: Stretch,
  other: string | null,
  closeness: number,
): Seen {
  const own = scene.label(near.plane);
  return {
    id: 'K3',
    kind: 'contours-touch',
    planes: [near.name],
    severity: severityOf(closeness),
    sentence:
      other === null
        ? say`Look at the ${own}: its contour just touches the upper edge of the picture. Try an overlap, or leave a gap.`
        : say`Look at the ${own}: its contour just touches the ${other}. Try an overlap, or leave a gap.`,
    why: say`Contours that kiss pull two distances into one; an overlap or a gap keeps them apart.`,
    source: say`common practice, no source`,
    at: pointsAlong(near, scene, stretch.from, stretch.to),
  };
}

function touchesOf(scene: ShapeScene, near: RidgeLine, far: RidgeLine | null, diagonal: number): Seen[] {
  const line = bridged(near.heights, BRIDGED * diagonal);
  const other = far ? bridged(far.heights, BRIDGED * diagonal) : new Float64Array(line.length);
  const gaps = line.map((y, x) => y - (other[x] as number));
  const reach = NEAR * diagonal;
  const fits = closeStretches(gaps, reach).find((stretch) => {
    const length = (stretch.to - stretch.from + 1) / diagonal;
    const overlap = far ? -stretch.least : overlapWithFrame(line, stretch);
    return (
      length >= STRETCH.least &&
      length <= STRETCH.most &&
      overlap <= HAIR * diagonal &&
      degreesBetween(line, other, stretch) < PARALLEL_DEG
    );
  });
  if (!fits) return [];
  const closeness = 1 - Math.max(0, fits.least) / reach;
  return [seen(scene, near, fits, far ? scene.label(far.plane) : null, closeness)];
}

/** How far a contour cut by the frame would go on beyond it: half the cut width, as if it went on at 45°. */
function overlapWithFrame(line: Float64Array, { from, to }: Stretch): number {
  let cut = 0;
  for (let x = from; x <= to; x++) if ((line[x] as number) < 1) cut++;
  return cut / 2;
}

/** K3, at most one for each pair of contours. */
export function touchingContours(scene: ShapeScene): Seen[] {
  const diagonal = Math.hypot(scene.columns, scene.rows);
  return scene.ridges.flatMap((near) => [
    ...touchesOf(scene, near, null, diagonal),
    ...scene.ridges
      .filter(({ plane }) => plane < near.plane)
      .flatMap((far) => touchesOf(scene, near, far, diagonal)),
  ]);
}
