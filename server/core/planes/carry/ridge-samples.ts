/**
 * A ring as places close together along its ridges, each with the way out of the plane.
 *
 * In the flow: carried ring -> [ridge-samples] -> find-moves, fit-ridge. Sides along the borders of the wide box are
 * no ridges and stay. Coordinates are cells of the painting's grid. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { signedArea } from '../../geometry/outline.ts';
import { WIDE_BOX } from './carried-rings.ts';
import { liesOnBox, type RingPoint } from './ring.ts';

/** Distance between neighbouring samples, cells. */
export const SAMPLE_STEP = 2;
/** The way out is that of the line between the samples this far before and after: a tooth does not turn it. */
const TURN_OVER = 4;

export interface GridSize {
  readonly columns: number;
  readonly rows: number;
}

/** One unbroken ridge of a ring. */
export interface Stretch {
  /** Places, x and y by turns. */
  readonly at: Float64Array;
  /** Unit vectors out of the plane, x and y by turns. */
  readonly out: Float64Array;
  readonly length: number;
  /** Whether its end meets its beginning. */
  readonly closed: boolean;
}

/** A ring taken apart: ridges, and between them what lies on the box. */
export interface TakenApart {
  readonly stretches: readonly Stretch[];
  /** Points of the box that follow each stretch, 0..1 of the painting. */
  readonly between: readonly (readonly FractionPoint[])[];
}

/** Places every `SAMPLE_STEP` cells along a line, both ends kept. */
function walked(line: readonly FractionPoint[]): number[] {
  const [first] = line;
  if (!first) return [];
  const result = [first[0], first[1]];
  let left = SAMPLE_STEP;
  for (let index = 1; index < line.length; index++) {
    const [[x0, y0], [x1, y1]] = [line[index - 1] as FractionPoint, line[index] as FractionPoint];
    const side = Math.hypot(x1 - x0, y1 - y0);
    let at = left;
    for (; at <= side; at += SAMPLE_STEP) {
      result.push(x0 + ((x1 - x0) * at) / side, y0 + ((y1 - y0) * at) / side);
    }
    left = at - side;
  }
  const [x, y] = line.at(-1) as FractionPoint;
  if (left < SAMPLE_STEP * 0.75) result.push(x, y);
  return result;
}

/** @param turn 1 where the ring runs clockwise on the screen, else −1. */
function stretchOf(line: readonly FractionPoint[], closed: boolean, turn: number): Stretch {
  const at = Float64Array.from(walked(line));
  const length = at.length / 2;
  const out = new Float64Array(at.length);
  const index = (sample: number): number =>
    closed ? (sample + length * 2) % length : Math.min(length - 1, Math.max(0, sample));
  for (let sample = 0; sample < length; sample++) {
    const [before, after] = [index(sample - TURN_OVER), index(sample + TURN_OVER)];
    const dx = (at[after * 2] as number) - (at[before * 2] as number);
    const dy = (at[after * 2 + 1] as number) - (at[before * 2 + 1] as number);
    const side = Math.hypot(dx, dy) || 1;
    out[sample * 2] = (turn * dy) / side;
    out[sample * 2 + 1] = (-turn * dx) / side;
  }
  return { at, out, length, closed };
}

/** @param ring within the wide box, at least three points. */
export function takenApart(ring: readonly RingPoint[], { columns, rows }: GridSize): TakenApart {
  const cells = ring.map(({ at: [x, y] }): FractionPoint => [x * columns, y * rows]);
  const turn = Math.sign(signedArea(cells)) || 1;
  const onBox = ring.map(({ at }, index) =>
    liesOnBox(WIDE_BOX, at, (ring[(index + 1) % ring.length] as RingPoint).at),
  );
  const start = onBox.findIndex((on, index) => !on && onBox[(index + ring.length - 1) % ring.length]);
  if (start < 0) {
    if (onBox[0]) return { stretches: [], between: [ring.map(({ at }) => at)] };
    return { stretches: [stretchOf([...cells, cells[0] as FractionPoint], true, turn)], between: [[]] };
  }
  const stretches: Stretch[] = [];
  const between: FractionPoint[][] = [];
  for (let step = 0; step < ring.length; ) {
    const line: FractionPoint[] = [cells[(start + step) % ring.length] as FractionPoint];
    for (; step < ring.length && !onBox[(start + step) % ring.length]; step++) {
      line.push(cells[(start + step + 1) % ring.length] as FractionPoint);
    }
    stretches.push(stretchOf(line, false, turn));
    const fixed: FractionPoint[] = [];
    for (; step < ring.length && onBox[(start + step) % ring.length]; step++) {
      fixed.push((ring[(start + step + 1) % ring.length] as RingPoint).at);
    }
    // The last point of the box is where the next stretch begins, or the first began.
    between.push(fixed.slice(0, -1));
  }
  return { stretches, between };
}

/** The ring put together again from stretches that were moved. @param unsure by stretch and sample. */
export function putTogether(
  { between }: TakenApart,
  movedTo: readonly Float64Array[],
  unsure: readonly Uint8Array[],
  { columns, rows }: GridSize,
): RingPoint[] {
  const ring: RingPoint[] = [];
  between.forEach((fixed, index) => {
    const at = movedTo[index];
    const doubt = unsure[index];
    if (at && doubt) {
      for (let sample = 0; sample < at.length / 2; sample++) {
        ring.push({
          at: [(at[sample * 2] as number) / columns, (at[sample * 2 + 1] as number) / rows],
          unsure: doubt[sample] === 1,
        });
      }
    }
    for (const point of fixed) ring.push({ at: point, unsure: false });
  });
  return ring;
}
