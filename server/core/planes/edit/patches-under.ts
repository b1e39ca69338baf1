/**
 * Which patches lie under the hand, and their shape to show.
 *
 * In the flow: the hand's way over a picture -> [patches-under] -> highlight, regions. Pure.
 */
import type { FractionPoint, Outline } from '../../contract/setup.ts';
import { contourOf } from './contour.ts';
import { piecesOf } from './grid.ts';
import { ringOf } from './keep-stretches.ts';
import type { Patches } from './patches.ts';

/** Numbers of the patches that a line runs over. @param trail in 0..1 of the picture; outside it is left out. */
export function patchesUnder({ grid, labels }: Patches, trail: readonly FractionPoint[]): Set<number> {
  const { columns, rows } = grid;
  const numbers = new Set<number>();
  trail.forEach((point, at) => {
    const [x0, y0] = trail[Math.max(0, at - 1)] ?? point;
    const [x1, y1] = point;
    const steps = Math.max(1, Math.ceil(Math.max(Math.abs(x1 - x0) * columns, Math.abs(y1 - y0) * rows)));
    for (let step = 1; step <= steps; step++) {
      const [x, y] = [x0 + ((x1 - x0) * step) / steps, y0 + ((y1 - y0) * step) / steps];
      if (x < 0 || y < 0 || x >= 1 || y >= 1) continue;
      numbers.add(labels[Math.floor(y * rows) * columns + Math.floor(x * columns)] as number);
    }
  });
  return numbers;
}

/** The shapes of some patches as they hang together, in 0..1 of the picture; what they shut in is not left out. */
export function shapeOf({ grid, labels }: Patches, numbers: ReadonlySet<number>): Outline[] {
  if (numbers.size === 0) return [];
  const picked = new Uint8Array(1 + Math.max(...numbers, 0));
  for (const number of numbers) picked[number] = 1;
  const mask = new Uint8Array(labels.length);
  for (let cell = 0; cell < mask.length; cell++) mask[cell] = picked[labels[cell] as number] ?? 0;
  const { numbers: pieces, sizes } = piecesOf(mask, grid);
  return sizes.slice(1).map((_, at) => {
    const piece = new Uint8Array(mask.length);
    for (let cell = 0; cell < piece.length; cell++) piece[cell] = pieces[cell] === at + 1 ? 1 : 0;
    return ringOf(contourOf(piece, grid), grid, [], { reach: 2, tolerance: 0.5, keeps: false });
  });
}
