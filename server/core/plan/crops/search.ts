/**
 * Finds the best few frames of one format, none nearly another.
 *
 * In the flow: formats + crop scene -> [search] -> propose-crops. Frames of falling size are laid all over the picture,
 * the best refined by small moves. Edges lie on whole pixels, so that shares can be counted. Pure.
 */
import { cropTrouble } from './check-crop.ts';
import type { Box, CropScene } from './crop-scene.ts';
import { type Judged, judge } from './judge.ts';

/** Each size is this much of the one before; none is smaller than this share of the largest that fits. */
const SMALLER = 0.92;
const SMALLEST = 0.36;
/** Places along one side at most, for each size. */
const PLACES = 13;
/** Overlap over union from which two frames of one format are nearly the same. */
const ALIKE = 0.7;
/** Refining: moves and sizes tried, as shares of the frame, halved each round. */
const FIRST_MOVE = 0.03;
const ROUNDS = 4;

/** Intersection over union of two boxes, 0..1. */
export function overlapOf(one: Box, two: Box): number {
  const across = Math.min(one[2], two[2]) - Math.max(one[0], two[0]);
  const down = Math.min(one[3], two[3]) - Math.max(one[1], two[1]);
  if (across <= 0 || down <= 0) return 0;
  const area = ([x0, y0, x1, y1]: Box): number => (x1 - x0) * (y1 - y0);
  return (across * down) / (area(one) + area(two) - across * down);
}

/** A frame of a format by its middle and width, pixels; moved inside and on whole pixels; null where it cannot be. */
function frameOf(
  { widthPx, heightPx }: CropScene,
  ratio: number,
  [middleX, middleY]: readonly [number, number],
  widthWanted: number,
): Box | null {
  const width = Math.round(Math.min(widthWanted, widthPx, heightPx * ratio));
  const height = Math.min(heightPx, Math.round(width / ratio));
  const left = Math.min(widthPx - width, Math.max(0, Math.round(middleX - width / 2)));
  const top = Math.min(heightPx - height, Math.max(0, Math.round(middleY - height / 2)));
  const box: Box = [left / widthPx, top / heightPx, (left + width) / widthPx, (top + height) / heightPx];
  return cropTrouble(box, widthPx, heightPx) === null ? box : null;
}

/** Middles of frames along one side, pixels. */
function placesAlong(frame: number, whole: number): number[] {
  const free = whole - frame;
  const count = Math.max(1, Math.min(PLACES, 1 + Math.ceil((free / frame) * 20)));
  return Array.from(
    { length: count },
    (_, at) => frame / 2 + (count > 1 ? (free * at) / (count - 1) : free / 2),
  );
}

function allFrames(scene: CropScene, ratio: number): Box[] {
  const { widthPx, heightPx } = scene;
  const largest = Math.min(widthPx, heightPx * ratio);
  const frames: Box[] = [];
  for (let width = largest; width >= SMALLEST * largest; width *= SMALLER) {
    for (const y of placesAlong(width / ratio, heightPx)) {
      for (const x of placesAlong(width, widthPx)) {
        const box = frameOf(scene, ratio, [x, y], width);
        if (box) frames.push(box);
      }
    }
  }
  return frames;
}

const MOVES: readonly (readonly [x: number, y: number, size: number])[] = [
  [1, 0, 0],
  [-1, 0, 0],
  [0, 1, 0],
  [0, -1, 0],
  [0, 0, 1],
  [0, 0, -1],
];

function refined(scene: CropScene, ratio: number, start: Judged): Judged {
  let best = start;
  let move = FIRST_MOVE;
  for (let round = 0; round < ROUNDS; ) {
    const [x0, y0, x1, y1] = best.box;
    const [wide, high] = [(x1 - x0) * scene.widthPx, (y1 - y0) * scene.heightPx];
    const [x, y] = [((x0 + x1) / 2) * scene.widthPx, ((y0 + y1) / 2) * scene.heightPx];
    const next = MOVES.map(([across, down, size]) =>
      frameOf(scene, ratio, [x + across * move * wide, y + down * move * high], wide * (1 + size * move)),
    )
      .filter((box) => box !== null)
      .map((box) => judge(scene, box))
      .reduce((one, two) => (two.score > one.score ? two : one), best);
    if (next === best) {
      move /= 2;
      round++;
    }
    best = next;
  }
  return best;
}

/** The best frames of one format, best first; none where the picture has too few pixels for it. @param ratio width / height. */
export function bestFrames(scene: CropScene, ratio: number, most: number): Judged[] {
  const judged = allFrames(scene, ratio)
    .map((box) => judge(scene, box))
    .sort((one, two) => two.score - one.score);
  const found: Judged[] = [];
  for (const candidate of judged) {
    if (found.length === most) break;
    if (found.some(({ box }) => overlapOf(box, candidate.box) > ALIKE)) continue;
    const better = refined(scene, ratio, candidate);
    if (!found.some(({ box }) => overlapOf(box, better.box) > ALIKE)) found.push(better);
  }
  return found.sort((one, two) => two.score - one.score);
}
