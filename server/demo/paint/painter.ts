/**
 * The painter: plane after plane from far to near, in each plane big brushes first.
 *
 * In the flow: study + manner + shifts -> [painter] -> finish. Pure and seeded: the same row of random numbers
 * gives the same painting.
 */
import { type Canvas, layStroke, type PaintColour, type Surface, tonedCanvas } from './canvas.ts';
import { emptyField, type Field, type LabFields, sample } from './field.ts';
import type { Layer, Manner } from './manner.ts';
import { bristleStreaks } from './noise.ts';
import { shuffled } from './random.ts';
import { reachOf } from './reach.ts';
import { type Grain, grainOf, type PlaneStudy } from './study.ts';

/** How one plane's colours are shifted on the way to the canvas, in CIELAB. */
export interface PlaneShift {
  readonly L: number;
  readonly a: number;
  readonly b: number;
  /** Spread of lightness and of a*, b* about the plane's mean; 1 = as in the photograph. */
  readonly span: number;
  readonly colour: number;
}

export interface Work {
  readonly widthPx: number;
  readonly heightPx: number;
  /** The tone that the canvas was covered with before the first stroke. */
  readonly tone: PaintColour;
  readonly photo: LabFields;
  readonly planes: readonly PlaneStudy[];
  readonly manners: readonly Manner[];
  readonly shifts: readonly PlaneShift[];
  readonly random: () => number;
}

/** The weave of the canvas, 0..1 a pixel. */
export function weave(width: number, height: number, random: () => number): Field {
  const field = emptyField(width, height);
  for (let at = 0; at < field.values.length; at++) {
    const x = at % width;
    const y = Math.floor(at / width);
    const threads = 0.5 + 0.25 * Math.sin(x * 1.83) + 0.25 * Math.sin(y * 1.71);
    field.values[at] = Math.min(Math.max(threads + (random() - 0.5) * 0.4, 0), 1);
  }
  return field;
}

/** Paints all planes and gives the canvas. */
export function paint(work: Work): { canvas: Canvas; tooth: Field } {
  const { widthPx, heightPx, random } = work;
  const canvas = tonedCanvas(widthPx, heightPx, work.tone);
  const streaks = bristleStreaks(random);
  const tooth = weave(widthPx, heightPx, random);
  const grain = grainOf(work.photo.L, 4);
  work.planes.forEach((plane, index) => {
    const manner = work.manners[index];
    const shift = work.shifts[index];
    if (!manner || !shift) throw new Error(`Plane ${index} has no manner or no shift.`);
    const surface = { streaks, tooth, reach: reachOf(plane.upToHere, manner, canvas, random) };
    for (const layer of manner.layers)
      paintLayer({ work, canvas, plane, manner, layer, shift, grain, surface });
  });
  return { canvas, tooth };
}

interface LayerWork {
  work: Work;
  canvas: Canvas;
  plane: PlaneStudy;
  manner: Manner;
  layer: Layer;
  shift: PlaneShift;
  grain: Grain;
  surface: Surface;
}

/** One brush over one plane. */
function paintLayer(job: LayerWork): void {
  const { work, plane, manner, layer } = job;
  const study = plane.upToHere;
  const scale = study.width / work.widthPx;
  const colours = plane.coloursAt(Math.max(0.7, Math.round(layer.halfWidthPx * scale * 5) / 10));
  const [top, foot] = verticalExtent(plane.seen, scale);
  const smallest = Math.min(manner.scaleFar, manner.scaleNear);
  const pitch = layer.halfWidthPx * layer.spacing * smallest;
  const places: { x: number; y: number }[] = [];
  for (let y = top - pitch; y < foot + pitch; y += pitch) {
    for (let x = 0; x < work.widthPx + pitch; x += pitch) {
      places.push({ x: x + (work.random() - 0.5) * pitch, y: y + (work.random() - 0.5) * pitch });
    }
  }
  for (const { x, y } of shuffled(places, work.random)) {
    const chance = work.random();
    if (sample(study, x * scale, y * scale) < 0.35 || sample(plane.seen, x * scale, y * scale) < 0.08)
      continue;
    const depth = Math.min(Math.max((y - top) / (foot - top), 0), 1);
    const size = manner.scaleFar + (manner.scaleNear - manner.scaleFar) * depth;
    if (chance > (smallest / size) ** 2) continue;
    brushDown(job, colours, x, y, size);
  }
}

/** One stroke, unless what lies there is good enough. */
function brushDown(job: LayerWork, colours: LabFields, x: number, y: number, size: number): void {
  const { work, canvas, layer, shift, plane, surface } = job;
  const { random } = work;
  const scale = plane.upToHere.width / work.widthPx;
  const wanted = (px: number, py: number) => shifted(colours, px * scale, py * scale, plane.mean, shift);
  const colour = wanted(x, y);
  const half = layer.halfWidthPx * size * (0.75 + 0.5 * random());
  if (layer.threshold > 0 && distanceOnCanvas(canvas, x, y, half, colour) < layer.threshold) return;
  const long = half * layer.elongation * (0.75 + 0.6 * random());
  const turn = ((random() + random() - 1) * layer.jitterDeg * Math.PI) / 180;
  const angle = directionAt(job, x, y) + turn;
  const ahead = directionAt(job, x + Math.cos(angle) * long, y + Math.sin(angle) * long);
  const bend = Math.sin(2 * (ahead - angle + turn)) * 0.12 * long;
  const stray = () => (random() + random() - 1) * layer.strayAb;
  const lift = (random() + random() - 1) * layer.strayL;
  const own = { L: colour.L + lift, a: colour.a + stray(), b: colour.b + stray() };
  const far = wanted(x + Math.cos(angle) * long * 0.7, y + Math.sin(angle) * long * 0.7);
  layStroke(
    canvas,
    {
      xPx: x,
      yPx: y,
      angleRad: random() < 0.25 ? angle + Math.PI : angle,
      halfLengthPx: long,
      halfWidthPx: half,
      bendPx: bend,
      colour: own,
      second: {
        L: (far.L + colour.L) / 2 - lift,
        a: far.a - (own.a - colour.a),
        b: far.b - (own.b - colour.b),
      },
      opacity: layer.opacity,
      dryness: layer.dryness * (0.6 + 0.8 * random()),
      thickness: layer.thickness * (0.7 + 0.6 * random()),
      streakAt: Math.floor(random() * 65536),
    },
    surface,
  );
}

/** Direction of the brush: the plane's habit, turned along the forms where they are definite. */
function directionAt({ grain, layer, plane, work }: LayerWork, x: number, y: number): number {
  const scale = plane.upToHere.width / work.widthPx;
  const habit = (layer.directionDeg * Math.PI) / 180;
  const cos2 = sample(grain.cos2, x * scale, y * scale) * layer.alongForms * 2;
  const sin2 = sample(grain.sin2, x * scale, y * scale) * layer.alongForms * 2;
  const weight = 1 - 0.6 * layer.alongForms;
  const angle = 0.5 * Math.atan2(sin2 + weight * Math.sin(2 * habit), cos2 + weight * Math.cos(2 * habit));
  return Math.cos(angle - habit) < 0 ? angle + Math.PI : angle;
}

/** The photograph's colour of the plane, shifted as the painter (mis)judges it. */
function shifted(
  colours: LabFields,
  x: number,
  y: number,
  mean: PaintColour,
  shift: PlaneShift,
): PaintColour {
  return {
    L: Math.min(Math.max(mean.L + shift.L + (sample(colours.L, x, y) - mean.L) * shift.span, 2), 98.5),
    a: mean.a + shift.a + (sample(colours.a, x, y) - mean.a) * shift.colour,
    b: mean.b + shift.b + (sample(colours.b, x, y) - mean.b) * shift.colour,
  };
}

/** dE*ab between what lies on the canvas (five points under the brush) and the wanted colour. */
function distanceOnCanvas(canvas: Canvas, x: number, y: number, half: number, wanted: PaintColour): number {
  const step = half * 0.5;
  let [L, a, b] = [0, 0, 0];
  for (const [dx, dy] of [
    [0, 0],
    [step, 0],
    [-step, 0],
    [0, step],
    [0, -step],
  ] as const) {
    const px = Math.min(Math.max(Math.round(x + dx), 0), canvas.width - 1);
    const py = Math.min(Math.max(Math.round(y + dy), 0), canvas.height - 1);
    const at = py * canvas.width + px;
    L += (canvas.L[at] as number) / 5;
    a += (canvas.a[at] as number) / 5;
    b += (canvas.b[at] as number) / 5;
  }
  return Math.hypot(L - wanted.L, a - wanted.a, b - wanted.b);
}

/** First and last row in which the plane is seen, in canvas pixels. */
function verticalExtent(seen: Field, scale: number): [number, number] {
  let top = seen.height;
  let foot = 0;
  for (let at = 0; at < seen.values.length; at++) {
    if ((seen.values[at] as number) < 0.5) continue;
    const y = Math.floor(at / seen.width);
    top = Math.min(top, y);
    foot = Math.max(foot, y);
  }
  return [top / scale, (foot + 1) / scale];
}
