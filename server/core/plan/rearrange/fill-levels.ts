/**
 * The surroundings of a hole as a pyramid: each level half as large, from the finest down to where the hole is a few pixels.
 *
 * In the flow: fill-hole -> [fill-levels] -> nearest patches. Pure.
 */

/** A window of a picture: encoded sRGB as floats, and which of its pixels are to be filled. */
export interface FillLevel {
  readonly columns: number;
  readonly rows: number;
  /** Interleaved, 0..255; what is in the hole is an estimate. */
  readonly colours: Float32Array;
  /** 1 = to be filled. */
  readonly hole: Uint8Array;
}

/** Places where a mask holds 1, in row order. */
export function placesOf(mask: Uint8Array): Int32Array {
  let count = 0;
  for (let at = 0; at < mask.length; at++) count += mask[at] as number;
  const places = new Int32Array(count);
  for (let at = 0, to = 0; at < mask.length; at++) if (mask[at]) places[to++] = at;
  return places;
}

function halved({ columns, rows, colours, hole }: FillLevel): FillLevel {
  const [halfColumns, halfRows] = [Math.ceil(columns / 2), Math.ceil(rows / 2)];
  const smaller: FillLevel = {
    columns: halfColumns,
    rows: halfRows,
    colours: new Float32Array(halfColumns * halfRows * 3),
    hole: new Uint8Array(halfColumns * halfRows),
  };
  for (let row = 0, to = 0; row < halfRows; row++) {
    for (let column = 0; column < halfColumns; column++, to++) {
      const [x, y] = [column * 2, row * 2];
      const [right, low] = [Math.min(columns - 1, x + 1), Math.min(rows - 1, y + 1)];
      const four = [y * columns + x, y * columns + right, low * columns + x, low * columns + right];
      for (const at of four) if (hole[at]) smaller.hole[to] = 1;
      for (let channel = 0; channel < 3; channel++) {
        const sum = four.reduce((total, at) => total + (colours[at * 3 + channel] as number), 0);
        smaller.colours[to * 3 + channel] = sum / 4;
      }
    }
  }
  return smaller;
}

function widthOfHole({ columns, hole }: FillLevel): number {
  let [left, right, top, bottom] = [columns, -1, Number.POSITIVE_INFINITY, -1];
  for (let at = 0; at < hole.length; at++) {
    if (!hole[at]) continue;
    const [x, y] = [at % columns, Math.floor(at / columns)];
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, y);
    bottom = Math.max(bottom, y);
  }
  return Math.min(right - left, bottom - top) + 1;
}

/** @param fewest the hole's narrower side on the coarsest level, pixels. @returns the finest first. */
export function fillLevels(finest: FillLevel, fewest: number): FillLevel[] {
  const levels = [finest];
  for (let last = finest; levels.length < 8; levels.push(last)) {
    if (widthOfHole(last) <= fewest || Math.min(last.columns, last.rows) < fewest * 5) break;
    last = halved(last);
  }
  return levels;
}
