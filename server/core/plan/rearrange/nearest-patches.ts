/**
 * For every pixel of a hole the place in its surroundings whose patch is most like the one around it.
 *
 * In the flow: fill level -> [nearest-patches] -> fill-hole. Pure.
 * Source: Barnes, Shechtman, Finkelstein & Goldman (2009), "PatchMatch", ACM Trans. Graph. 28(3): good matches are handed
 * on to neighbours, and each is tried against random places nearer and nearer to it.
 */
import { type FillLevel, placesOf } from './fill-levels.ts';

/** Patches are 7 × 7. */
export const RADIUS = 3;
/** Added to a patch's difference where it comes from a whole window higher or lower: land has its own at each height. */
const HEIGHT_COST = (2 * RADIUS + 1) ** 2 * 3 * 20 ** 2;

/** Where each pixel of the hole takes its patch from, and how much the two differ. */
export interface Matches {
  /** The hole's pixels, in row order. */
  readonly pixels: Int32Array;
  /** Place of a pixel in `pixels`, −1 outside the hole. */
  readonly place: Int32Array;
  /** Centre of the patch taken, by place. */
  readonly from: Int32Array;
  readonly cost: Float32Array;
}

/** 1 where a whole patch lies in the window and outside the hole. */
export function wholePatches({ columns, rows, hole }: FillLevel): Uint8Array {
  // Sums over rectangles tell at once whether a patch touches the hole.
  const sums = new Int32Array((columns + 1) * (rows + 1));
  for (let y = 0; y < rows; y++) {
    for (let x = 0, line = 0; x < columns; x++) {
      line += hole[y * columns + x] as number;
      sums[(y + 1) * (columns + 1) + x + 1] = (sums[y * (columns + 1) + x + 1] as number) + line;
    }
  }
  const whole = new Uint8Array(columns * rows);
  for (let y = RADIUS; y < rows - RADIUS; y++) {
    for (let x = RADIUS; x < columns - RADIUS; x++) {
      const [top, bottom] = [(y - RADIUS) * (columns + 1), (y + RADIUS + 1) * (columns + 1)];
      const [left, right] = [x - RADIUS, x + RADIUS + 1];
      const inside =
        (sums[bottom + right] as number) -
        (sums[bottom + left] as number) -
        (sums[top + right] as number) +
        (sums[top + left] as number);
      if (inside === 0) whole[y * columns + x] = 1;
    }
  }
  return whole;
}

/** Sum of squared differences of two patches, with the cost of height; stops where it passes `limit`. */
function difference(level: FillLevel, to: number, from: number, limit: number): number {
  const { columns, rows, colours } = level;
  const [x, y] = [to % columns, Math.floor(to / columns)];
  const away = (y - Math.floor(from / columns)) / rows;
  let sum = HEIGHT_COST * away * away;
  for (let dy = -RADIUS; dy <= RADIUS; dy++) {
    if (sum >= limit) return sum;
    const down = y + dy;
    if (down < 0 || down >= rows) continue;
    for (let dx = -RADIUS; dx <= RADIUS; dx++) {
      const across = x + dx;
      if (across < 0 || across >= columns) continue;
      const one = (down * columns + across) * 3;
      const other = (from + dy * columns + dx) * 3;
      const red = (colours[one] as number) - (colours[other] as number);
      const green = (colours[one + 1] as number) - (colours[other + 1] as number);
      const blue = (colours[one + 2] as number) - (colours[other + 2] as number);
      sum += red * red + green * green + blue * blue;
    }
  }
  return sum;
}

export interface Search {
  readonly level: FillLevel;
  readonly whole: Uint8Array;
  readonly random: (bound: number) => number;
}

/** @param start a centre by place; where it is no whole patch a random one is taken. */
export function startMatches({ level, whole, random }: Search, start: Int32Array | null): Matches {
  const [pixels, possible] = [placesOf(level.hole), placesOf(whole)];
  const place = new Int32Array(level.hole.length).fill(-1);
  pixels.forEach((pixel, at) => {
    place[pixel] = at;
  });
  const from = pixels.map((_, at) => {
    const wished = start?.[at] ?? -1;
    return whole[wished] ? wished : (possible[random(possible.length)] as number);
  });
  const matches = { pixels, place, from, cost: new Float32Array(pixels.length) };
  weighMatches(level, matches);
  return matches;
}

/** Works the differences out anew, after the estimate changed. */
export function weighMatches(level: FillLevel, { pixels, from, cost }: Matches): void {
  pixels.forEach((pixel, at) => {
    cost[at] = difference(level, pixel, from[at] as number, Number.POSITIVE_INFINITY);
  });
}

function tryFrom(
  { level, whole }: Search,
  { pixels, from, cost }: Matches,
  at: number,
  candidate: number,
): void {
  if (!whole[candidate] || candidate === from[at]) return;
  const found = difference(level, pixels[at] as number, candidate, cost[at] as number);
  if (found >= (cost[at] as number)) return;
  cost[at] = found;
  from[at] = candidate;
}

function tryRandom(search: Search, matches: Matches, at: number): void {
  const { columns, rows } = search.level;
  for (let reach = Math.max(columns, rows); reach >= 1; reach >>= 1) {
    const centre = matches.from[at] as number;
    const x = (centre % columns) + search.random(2 * reach + 1) - reach;
    const y = Math.floor(centre / columns) + search.random(2 * reach + 1) - reach;
    if (x >= 0 && x < columns && y >= 0 && y < rows) tryFrom(search, matches, at, y * columns + x);
  }
}

/** One pass over the hole, forwards or backwards. */
export function improveMatches(search: Search, matches: Matches, forwards: boolean): void {
  const { columns } = search.level;
  const { pixels, place, from } = matches;
  const step = forwards ? 1 : -1;
  for (let turn = 0; turn < pixels.length; turn++) {
    const at = forwards ? turn : pixels.length - 1 - turn;
    const pixel = pixels[at] as number;
    const beside = place[pixel - step] ?? -1;
    const above = place[pixel - step * columns] ?? -1;
    if (beside >= 0) tryFrom(search, matches, at, (from[beside] as number) + step);
    if (above >= 0) tryFrom(search, matches, at, (from[above] as number) + step * columns);
    tryRandom(search, matches, at);
  }
}
