/**
 * How a painter's drawing departs from the photograph: a little sway of the lines, a far motif a little taller.
 *
 * One formula moves both the pixels that are looked up and the outlines, so outlines on the painting are exact.
 * Nothing moves at the borders. Pure.
 */
import type { FractionPoint } from '../../core/contract/setup.ts';
import { emptyField, type LabFields, sample } from './field.ts';

export interface Drawing {
  /** Largest sideways departure, as a share of the side. */
  readonly sway: number;
  /** How much higher the ridge is drawn, as a share of the height; negative = lower. */
  readonly taller: number;
  /** Radians; another phase is another hand. */
  readonly phase: number;
}

/** Where in the photograph the painter looked for this point of the canvas; both in 0..1. */
export function lookedAt({ sway, taller, phase }: Drawing, [x, y]: FractionPoint): FractionPoint {
  const [insideX, insideY] = [4 * x * (1 - x), 4 * y * (1 - y)];
  const dx = sway * insideX * Math.sin(5.1 * y + 3.3 * x + phase);
  const dy =
    insideY * (taller * Math.exp(-(((y - 0.22) / 0.25) ** 2)) + 0.6 * sway * Math.sin(6.4 * x + 2 * phase));
  return [x + dx, y + dy];
}

/** Where on the canvas a point of the photograph was drawn: the inverse of `lookedAt`, to a millionth. */
export function drawnAt(drawing: Drawing, point: FractionPoint): FractionPoint {
  let [x, y] = point;
  for (let round = 0; round < 40; round++) {
    const [seenX, seenY] = lookedAt(drawing, [x, y]);
    x += point[0] - seenX;
    y += point[1] - seenY;
  }
  return [x, y];
}

/** The photograph as the painter drew it. */
export function redrawn(photo: LabFields, drawing: Drawing): LabFields {
  const { width, height } = photo.L;
  const [L, a, b] = [emptyField(width, height), emptyField(width, height), emptyField(width, height)];
  for (let row = 0; row < height; row++) {
    for (let column = 0; column < width; column++) {
      const [x, y] = lookedAt(drawing, [(column + 0.5) / width, (row + 0.5) / height]);
      const [atX, atY] = [x * width - 0.5, y * height - 0.5];
      const to = row * width + column;
      L.values[to] = sample(photo.L, atX, atY);
      a.values[to] = sample(photo.a, atX, atY);
      b.values[to] = sample(photo.b, atX, atY);
    }
  }
  return { L, a, b };
}
