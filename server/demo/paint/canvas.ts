/**
 * The canvas: colour and thickness of the paint on it, and one brush stroke laid over what is there.
 *
 * A stroke is a bent band: `along` runs -1..1 from where the brush is put down to where it leaves, `across` -1..1
 * over its bristles. Each bristle holds its own mix of two colours, runs dry on its own and piles paint up at the
 * sides. Pure but for the canvas it is asked to paint on.
 */
import { type Field, smoothStep } from './field.ts';
import { STREAK_COUNT, STREAK_LENGTH } from './noise.ts';

export interface PaintColour {
  readonly L: number;
  readonly a: number;
  readonly b: number;
}

export interface Canvas {
  readonly width: number;
  readonly height: number;
  readonly L: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** Thickness of the paint, 0 (bare weave) to about 1. */
  readonly thickness: Float32Array;
}

export interface Stroke {
  readonly xPx: number;
  readonly yPx: number;
  /** Direction in which the brush moves. */
  readonly angleRad: number;
  readonly halfLengthPx: number;
  readonly halfWidthPx: number;
  /** Sideways bend at the ends, in pixels. */
  readonly bendPx: number;
  /** The two colours that are only half mixed on the brush. */
  readonly colour: PaintColour;
  readonly second: PaintColour;
  /** 0..1. */
  readonly opacity: number;
  /** 0 = loaded to the end, 1 = dry half-way. */
  readonly dryness: number;
  readonly thickness: number;
  /** Where in the streaks this stroke reads, so that no two are alike. */
  readonly streakAt: number;
}

/** What every stroke shares: the bristles, the weave, and where paint of this plane may lie (0..1 a pixel). */
export interface Surface {
  readonly streaks: Float32Array;
  readonly tooth: Field;
  readonly reach: Field;
}

/** A canvas covered with one thin tone. */
export function tonedCanvas(width: number, height: number, tone: PaintColour): Canvas {
  const count = width * height;
  return {
    width,
    height,
    L: new Float32Array(count).fill(tone.L),
    a: new Float32Array(count).fill(tone.a),
    b: new Float32Array(count).fill(tone.b),
    thickness: new Float32Array(count).fill(0.1),
  };
}

/** Lays one stroke over the canvas. Pixels where `surface.reach` is 0 are left alone. */
export function layStroke(canvas: Canvas, stroke: Stroke, surface: Surface): void {
  const cos = Math.cos(stroke.angleRad);
  const sin = Math.sin(stroke.angleRad);
  const long = stroke.halfLengthPx;
  const wide = stroke.halfWidthPx + Math.abs(stroke.bendPx);
  const reachX = Math.abs(cos) * long + Math.abs(sin) * wide;
  const reachY = Math.abs(sin) * long + Math.abs(cos) * wide;
  const x0 = Math.max(0, Math.ceil(stroke.xPx - reachX));
  const x1 = Math.min(canvas.width - 1, Math.floor(stroke.xPx + reachX));
  const y0 = Math.max(0, Math.ceil(stroke.yPx - reachY));
  const y1 = Math.min(canvas.height - 1, Math.floor(stroke.yPx + reachY));
  for (let y = y0; y <= y1; y++) {
    const dy = y - stroke.yPx;
    const [from, to] = rowRange(dy, cos, sin, long, wide);
    const last = Math.min(x1, Math.floor(stroke.xPx + to));
    for (let x = Math.max(x0, Math.ceil(stroke.xPx + from)); x <= last; x++) {
      const dx = x - stroke.xPx;
      const along = (dx * cos + dy * sin) / long;
      if (along < -1 || along > 1) continue;
      const across = (dy * cos - dx * sin - stroke.bendPx * (along * along - 0.33)) / stroke.halfWidthPx;
      if (across < -1 || across > 1) continue;
      touch(canvas, y * canvas.width + x, along, across, stroke, surface);
    }
  }
}

/** Where a row `dy` from the middle crosses a turned box, as a range of `dx`; empty when the first is larger. */
function rowRange(dy: number, cos: number, sin: number, long: number, wide: number): [number, number] {
  let [from, to] = [-long - wide, long + wide];
  if (Math.abs(cos) > 1e-6) {
    const [one, two] = [(-long - dy * sin) / cos, (long - dy * sin) / cos];
    from = Math.max(from, Math.min(one, two));
    to = Math.min(to, Math.max(one, two));
  }
  if (Math.abs(sin) > 1e-6) {
    const [one, two] = [(dy * cos - wide) / sin, (dy * cos + wide) / sin];
    from = Math.max(from, Math.min(one, two));
    to = Math.min(to, Math.max(one, two));
  }
  return [from, to];
}

/** Paint of one stroke on one pixel. */
function touch(
  canvas: Canvas,
  at: number,
  along: number,
  across: number,
  stroke: Stroke,
  surface: Surface,
): void {
  const reach = surface.reach.values[at] as number;
  if (reach <= 0.004) return;
  const bristle = streak(surface.streaks, stroke, along, across);
  const ragged = bristle - 0.5;
  const side = 1 - smoothStep(0.72, 1, Math.abs(across) + 0.2 * ragged);
  const ends = 1 - smoothStep(0.86, 1, Math.abs(along) + 0.3 * ragged);
  const spent = stroke.dryness * (along + 1) * 0.5;
  const held = 0.65 * bristle + 0.35 * (surface.tooth.values[at] as number);
  const contact = smoothStep(spent - 0.14, spent + 0.1, held);
  const cover = stroke.opacity * side * ends * contact * reach;
  if (cover <= 0.004) return;
  const mix = smoothStep(0.25, 0.85, 1 - bristle);
  const { colour, second } = stroke;
  const keep = 1 - cover;
  canvas.L[at] = (canvas.L[at] as number) * keep + cover * (colour.L + (second.L - colour.L) * mix);
  canvas.a[at] = (canvas.a[at] as number) * keep + cover * (colour.a + (second.a - colour.a) * mix);
  canvas.b[at] = (canvas.b[at] as number) * keep + cover * (colour.b + (second.b - colour.b) * mix);
  const ridge = 0.35 * smoothStep(0.55, 0.8, Math.abs(across));
  const pile = stroke.thickness * (0.3 + 0.7 * bristle + ridge);
  canvas.thickness[at] = (canvas.thickness[at] as number) * (1 - 0.85 * cover) + 0.85 * cover * pile;
}

/** Bristles stand wider apart in a big brush; between two of them the streak is interpolated. */
function streak(streaks: Float32Array, stroke: Stroke, along: number, across: number): number {
  const start = stroke.streakAt;
  const alongPx = along * stroke.halfLengthPx;
  const acrossPx = across * stroke.halfWidthPx;
  const perPx = 0.2 + 2 / (stroke.halfWidthPx + 2);
  const column = (start + Math.floor(alongPx * 0.8 + 4096)) & (STREAK_LENGTH - 1);
  const row = acrossPx * perPx + 4096;
  const low = Math.floor(row);
  const fraction = row - low;
  const first = (start + low) & (STREAK_COUNT - 1);
  const next = (first + 1) & (STREAK_COUNT - 1);
  return (
    (streaks[first * STREAK_LENGTH + column] as number) * (1 - fraction) +
    (streaks[next * STREAK_LENGTH + column] as number) * fraction
  );
}
