/**
 * Which plane lies where on a picture, on a coarse grid: for the numbers on the planes and for pins.
 *
 * In the flow: outlines -> core label map -> [plane-places] -> layers, sheet. A nearer plane covers a farther one. Pure.
 */
import type { FractionPoint, Outline } from '../contract/setup.ts';
import { drawLabelMap } from './label-map.ts';

const GRID = 72;

export interface PlanePlaces {
  /** The roomiest place of each plane that can be seen, by plane id. */
  badges: ReadonlyMap<string, FractionPoint>;
  /** The plane seen at a point, or null. */
  planeAt(point: FractionPoint): string | null;
}

/** @param outlines Far to near. */
export function planePlaces(outlines: readonly { planeId: string; outline: Outline }[]): PlanePlaces {
  const labels = drawLabelMap(
    GRID,
    GRID,
    outlines.map(({ outline }) => outline),
  );
  const room = roomAround(labels);
  const badges = new Map<string, FractionPoint>();
  outlines.forEach(({ planeId }, label) => {
    const at = roomiest(labels, room, label);
    if (at >= 0) badges.set(planeId, [((at % GRID) + 0.5) / GRID, (Math.floor(at / GRID) + 0.5) / GRID]);
  });
  const cell = (share: number) => Math.min(GRID - 1, Math.max(0, Math.floor(share * GRID)));
  return {
    badges,
    planeAt: ([x, y]) => outlines[labels[cell(y) * GRID + cell(x)] ?? -1]?.planeId ?? null,
  };
}

/** Steps from each cell to the nearest cell of another label or the picture's border (city-block distance). */
function roomAround(labels: Uint8Array): Uint16Array {
  const room = new Uint16Array(labels.length);
  const pass = (start: number, end: number, step: number) => {
    for (let at = start; at !== end; at += step) {
      const onBorder = at % GRID === 0 || at % GRID === GRID - 1 || at < GRID || at >= GRID * (GRID - 1);
      const [beside, above] = [at - step, at - step * GRID];
      const met =
        onBorder || labels[beside] !== labels[at] || labels[above] !== labels[at]
          ? 1
          : 1 + Math.min(room[beside] ?? 0, room[above] ?? 0);
      room[at] = step > 0 ? met : Math.min(room[at] ?? met, met);
    }
  };
  pass(0, labels.length, 1);
  pass(labels.length - 1, -1, -1);
  return room;
}

/** The cell of that label with most room, the one nearest to the middle among equals; −1 when none is seen. */
function roomiest(labels: Uint8Array, room: Uint16Array, label: number): number {
  let best = -1;
  const worth = (at: number) => (room[at] ?? 0) - Math.abs((at % GRID) - GRID / 2) / GRID;
  for (let at = 0; at < labels.length; at++) {
    if (labels[at] === label && (best < 0 || worth(at) > worth(best))) best = at;
  }
  return best;
}
