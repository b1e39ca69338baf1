/** The largest connected patch of what is no wall. Pure. */

export interface Thing {
  /** 1 where it is. */
  readonly map: Uint8Array;
  readonly count: number;
}

/** Everything connected to one pixel (4 neighbours); `seen` is marked. */
function patchFrom(start: number, wall: Uint8Array, seen: Uint8Array, columns: number): number[] {
  const pixels = [start];
  seen[start] = 1;
  const visit = (pixel: number): void => {
    if (seen[pixel] === 1 || wall[pixel] !== 0) return;
    seen[pixel] = 1;
    pixels.push(pixel);
  };
  for (const pixel of pixels) {
    const x = pixel % columns;
    if (x > 0) visit(pixel - 1);
    if (x < columns - 1) visit(pixel + 1);
    if (pixel >= columns) visit(pixel - columns);
    if (pixel + columns < wall.length) visit(pixel + columns);
  }
  return pixels;
}

/** Null when there is nothing but wall. */
export function largestThing(wall: Uint8Array, columns: number, rows: number): Thing | null {
  const seen = new Uint8Array(columns * rows);
  let largest: number[] = [];
  for (let start = 0; start < wall.length; start++) {
    if (wall[start] === 1 || seen[start] === 1) continue;
    const patch = patchFrom(start, wall, seen, columns);
    if (patch.length > largest.length) largest = patch;
  }
  if (largest.length === 0) return null;
  const map = new Uint8Array(wall.length);
  for (const pixel of largest) map[pixel] = 1;
  return { map, count: largest.length };
}
