/**
 * Where glare and clipping lie, as a small picture that a screen can lay over the painting.
 *
 * In the flow: prepared plate -> [overlay] -> document -> screen. Pure.
 */
import type { CaptureOverlay } from '../contract/measures.ts';
import type { Prepared } from '../measure/prepare.ts';

/** Longest side of the small picture, cells. */
const SIDE = 192;
/** Share of a small cell that must be marked. */
const ENOUGH = 0.25;
/** Values of the small picture. */
export const OVERLAY = { none: 0, blown: 1, crushed: 2, glare: 3 } as const;

/** One value a cell as pairs of value and length. */
function runsOf(values: Uint8Array): number[] {
  const runs: number[] = [];
  let began = 0;
  for (let at = 1; at <= values.length; at++) {
    if (at < values.length && values[at] === values[began]) continue;
    runs.push(values[began] as number, at - began);
    began = at;
  }
  return runs;
}

/** Whether anything is marked at all; on most photos nothing is. */
function isMarked({ clipped, glare }: Prepared): boolean {
  return glare !== null || clipped.some((value) => value !== OVERLAY.none);
}

/** Counts marks of each kind in every small cell; glare wins over clipping, for it is the cause. */
function countMarks(prepared: Prepared, columns: number, rows: number): Uint32Array {
  const { clipped, glare, columns: width } = prepared;
  const counts = new Uint32Array(columns * rows * 4);
  const across = Uint32Array.from({ length: width }, (_, x) => Math.floor((x * columns) / width) * 4);
  for (let y = 0, cell = 0; y < prepared.rows; y++) {
    const row = Math.floor((y * rows) / prepared.rows) * columns * 4;
    for (let x = 0; x < width; x++, cell++) {
      const mark = glare?.[cell] === 1 ? OVERLAY.glare : (clipped[cell] as number);
      const at = row + (across[x] as number) + mark;
      counts[at] = (counts[at] as number) + 1;
    }
  }
  return counts;
}

/** Null when there is nothing to show. */
export function overlayOf(prepared: Prepared): CaptureOverlay | null {
  if (!isMarked(prepared)) return null;
  const shrink = Math.min(1, SIDE / Math.max(prepared.columns, prepared.rows));
  const columns = Math.max(1, Math.round(prepared.columns * shrink));
  const rows = Math.max(1, Math.round(prepared.rows * shrink));
  const counts = countMarks(prepared, columns, rows);
  const values = new Uint8Array(columns * rows);
  for (let small = 0; small < values.length; small++) {
    const [none, blown, crushed, glare] = counts.subarray(small * 4, small * 4 + 4) as unknown as number[];
    const all = (none ?? 0) + (blown ?? 0) + (crushed ?? 0) + (glare ?? 0);
    const marks: [number, number][] = [
      [OVERLAY.glare, glare ?? 0],
      [OVERLAY.blown, blown ?? 0],
      [OVERLAY.crushed, crushed ?? 0],
    ];
    values[small] = marks.find(([, count]) => count >= ENOUGH * all && count > 0)?.[0] ?? OVERLAY.none;
  }
  return values.some((value) => value !== OVERLAY.none) ? { columns, rows, runs: runsOf(values) } : null;
}
