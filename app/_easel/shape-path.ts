/**
 * SVG paths of outlines and strokes, in a box 1000 wide and 1000 · aspect high. Pure.
 */
import { getStroke } from 'perfect-freehand';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';

export const BOX = 1000;
/** Width of a stroke at middle pressure, in thousandths of the picture's width. */
const STROKE_WIDTH = 7;

const spot = ([x, y]: FractionPoint, aspect: number) =>
  `${(x * BOX).toFixed(1)} ${(y * BOX * aspect).toFixed(1)}`;

/** The closed outline. */
export function closedPath(outline: Outline, aspect: number): string {
  return outline.length === 0 ? '' : `M${outline.map((point) => spot(point, aspect)).join('L')}Z`;
}

/** A line that stays open. */
export function openPath(points: readonly FractionPoint[], aspect: number): string {
  return points.length === 0 ? '' : `M${points.map((point) => spot(point, aspect)).join('L')}`;
}

/** The outline without the stretches that run along the picture's border. */
export function ridgePath(outline: Outline, aspect: number): string {
  let path = '';
  let drawing = false;
  outline.forEach((from, at) => {
    const to = outline[(at + 1) % outline.length] ?? from;
    if (alongBorder(from, to)) {
      drawing = false;
      return;
    }
    path += drawing ? `L${spot(to, aspect)}` : `M${spot(from, aspect)}L${spot(to, aspect)}`;
    drawing = true;
  });
  return path;
}

const BORDER = 1e-6;
function alongBorder(from: FractionPoint, to: FractionPoint): boolean {
  const both = (test: (point: FractionPoint) => boolean) => test(from) && test(to);
  return (
    both(([x]) => x <= BORDER) ||
    both(([x]) => x >= 1 - BORDER) ||
    both(([, y]) => y <= BORDER) ||
    both(([, y]) => y >= 1 - BORDER)
  );
}

/**
 * The inked shape of a freehand stroke. @param points 0..1 of what is shown, with pen pressure where known.
 * @param width At middle pressure, share of the picture's width.
 */
export function strokePath(
  points: readonly (readonly number[])[],
  aspect: number,
  width: number = STROKE_WIDTH / BOX,
): string {
  const inBox = points.map(([x = 0, y = 0, pressure = 0.5]) => [x * BOX, y * BOX * aspect, pressure]);
  const shape = getStroke(inBox, {
    size: width * BOX,
    thinning: 0.55,
    smoothing: 0.5,
    streamline: 0.35,
    simulatePressure: !points.some(([, , pressure]) => pressure !== undefined && pressure !== 0.5),
    last: true,
  });
  const [first, ...others] = shape;
  if (!first) return '';
  const place = ([x = 0, y = 0]: number[]) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  const curves = others.map((point, at) => {
    const next = others[at + 1] ?? first;
    const middle = [((point[0] ?? 0) + (next[0] ?? 0)) / 2, ((point[1] ?? 0) + (next[1] ?? 0)) / 2];
    return `Q${place(point)} ${place(middle)}`;
  });
  return `M${place(first)}${curves.join('')}Z`;
}
