/** From the runs of a capture overlay to shapes that can be drawn. In the flow: document -> [overlay-shapes] -> SVG. Pure. */
import type { CaptureOverlay } from '#server/core/contract/measures.ts';

export type OverlayKind = 'glare' | 'blown' | 'crushed';

export interface OverlayShape {
  /** SVG path in cells of the overlay; empty when there is none of this kind. */
  path: string;
  /** Cells of this kind / all cells. */
  share: number;
}

const KIND_OF: Record<number, OverlayKind> = { 1: 'blown', 2: 'crushed', 3: 'glare' };

/** Each run becomes one rectangle a row. */
export function overlayShapes({ columns, rows, runs }: CaptureOverlay): Record<OverlayKind, OverlayShape> {
  const paths: Record<OverlayKind, string[]> = { glare: [], blown: [], crushed: [] };
  const counts: Record<OverlayKind, number> = { glare: 0, blown: 0, crushed: 0 };
  let cell = 0;
  for (let at = 0; at + 1 < runs.length; at += 2) {
    const [kind, length] = [KIND_OF[runs[at] ?? 0], runs[at + 1] ?? 0];
    if (kind) {
      counts[kind] += length;
      paths[kind].push(...rectangles(cell, length, columns));
    }
    cell += length;
  }
  const shape = (kind: OverlayKind): OverlayShape => ({
    path: paths[kind].join(''),
    share: counts[kind] / (columns * rows),
  });
  return { glare: shape('glare'), blown: shape('blown'), crushed: shape('crushed') };
}

/** A run of cells from `start` on, cut where rows end. */
function rectangles(start: number, length: number, columns: number): string[] {
  const found: string[] = [];
  for (let cell = start; cell < start + length; ) {
    const [x, y] = [cell % columns, Math.floor(cell / columns)];
    const wide = Math.min(columns - x, start + length - cell);
    found.push(`M${x} ${y}h${wide}v1h${-wide}z`);
    cell += wide;
  }
  return found;
}
