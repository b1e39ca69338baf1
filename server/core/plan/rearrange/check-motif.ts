/**
 * Whether a motif can be lifted by its outline, and whether a step leaves it in the picture; one sentence where not.
 *
 * In the flow: a loop drawn on the stage -> [check-motif] -> live document. Pure. Sizes are those on the copy that is
 * worked on, whose long side has `COPY_PX`.
 */
import type { Motif } from '../../contract/rearranging.ts';
import type { FractionPoint } from '../../contract/setup.ts';
import { findSelfCrossing, signedArea } from '../../geometry/outline.ts';
import { Problem } from '../../problem.ts';
import { say } from '../../say/say.ts';

/** Long side of the copy that rearranging works on in the page, pixels. */
export const COPY_PX = 1280;
/** A motif narrower or lower than this on the copy is too small to be lifted. */
const LEAST_PX = 12;
/** Points may lie outside by this much: a hand's tremble at the very edge. */
const EDGE = 0.002;
/** At least this share of a motif's box stays in the picture. */
const LEAST_INSIDE = 0.1;

export interface PictureSize {
  readonly width: number;
  readonly height: number;
}

interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

function boxOf(points: readonly FractionPoint[]): Box {
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

function refuse(sentence: string): Problem {
  return new Problem('outline-invalid', sentence);
}

/** The sentence about the side that a box passes, or null. */
function sidePassed({ x0, y0, x1, y1 }: Box): string | null {
  if (x0 < -EDGE) return say`This loop leaves the picture on the left. Draw it inside the picture.`;
  if (x1 > 1 + EDGE) return say`This loop leaves the picture on the right. Draw it inside the picture.`;
  if (y0 < -EDGE) return say`This loop leaves the picture on the top. Draw it inside the picture.`;
  return y1 > 1 + EDGE ? say`This loop leaves the picture on the bottom. Draw it inside the picture.` : null;
}

/**
 * @param outline the loop, 0..1 of the photograph. @param size of the photograph in any unit.
 * @throws Problem `outline-invalid`: outside the picture, too small, crossing itself, without area.
 */
export function checkMotif(outline: readonly FractionPoint[], { width, height }: PictureSize): void {
  if (outline.length < 3 || !outline.every(([x, y]) => Number.isFinite(x) && Number.isFinite(y))) {
    throw refuse(say`This loop has ${outline.length} points and encloses nothing. Draw it around the motif.`);
  }
  const box = boxOf(outline);
  const passed = sidePassed(box);
  if (passed) throw refuse(passed);
  const scale = COPY_PX / Math.max(width, height);
  const [across, down] = [(box.x1 - box.x0) * width * scale, (box.y1 - box.y0) * height * scale];
  if (Math.min(across, down) < LEAST_PX) {
    throw refuse(
      say`This motif is ${Math.round(across)} by ${Math.round(down)} pixels; at least ${LEAST_PX} each way are needed. Draw a larger loop.`,
    );
  }
  if (findSelfCrossing(outline)) {
    throw refuse(say`This loop crosses itself. Draw it around the motif once, without crossing.`);
  }
  if (Math.abs(signedArea(outline)) * width * height * scale ** 2 < LEAST_PX ** 2 / 2) {
    throw refuse(say`This loop encloses almost nothing. Draw it around the motif.`);
  }
}

/** Where the foot of a motif stands: the middle of its lowest edge; it is enlarged and mirrored about this point. */
export function footOf(outline: readonly FractionPoint[]): FractionPoint {
  const { x0, x1, y1 } = boxOf(outline);
  return [(x0 + x1) / 2, y1];
}

/** @throws Problem `outline-invalid` where almost nothing of the motif would be left in the picture. */
export function checkPlaced({ outline, move, scale }: Pick<Motif, 'outline' | 'move' | 'scale'>): void {
  const [footX, footY] = footOf(outline);
  const { x0, y0, x1 } = boxOf(outline);
  const [halfWidth, height] = [((x1 - x0) / 2) * scale, (footY - y0) * scale];
  const [x, y] = [footX + move[0], footY + move[1]];
  const across = Math.min(1, x + halfWidth) - Math.max(0, x - halfWidth);
  const down = Math.min(1, y) - Math.max(0, y - height);
  if (across < LEAST_INSIDE * 2 * halfWidth || down < LEAST_INSIDE * height) {
    throw refuse(say`The motif would leave the picture. Keep at least a tenth of it inside.`);
  }
}
