/**
 * A first guess for a hole: colours flow in from its rim until they are even (Laplace's equation, by relaxation).
 *
 * In the flow: fill-hole -> [smoothly-closed]. Pure apart from the level given, whose hole is filled in place.
 */
import { type FillLevel, placesOf } from './fill-levels.ts';

const SWEEPS = 80;

/** Pixels of the hole from the rim inwards, ring by ring. */
function ringsOf({ columns, rows, hole }: FillLevel): number[] {
  const seen = hole.slice();
  const order: number[] = [];
  let ring = [...placesOf(hole)].filter((at) => around(at, columns, rows).some((other) => !hole[other]));
  while (ring.length > 0) {
    for (const at of ring) seen[at] = 0;
    order.push(...ring);
    const next = ring.flatMap((at) => around(at, columns, rows).filter((other) => seen[other]));
    ring = [...new Set(next)];
  }
  return order;
}

function around(at: number, columns: number, rows: number): number[] {
  const x = at % columns;
  const found: number[] = [];
  if (x > 0) found.push(at - 1);
  if (x < columns - 1) found.push(at + 1);
  if (at >= columns) found.push(at - columns);
  if (at < columns * (rows - 1)) found.push(at + columns);
  return found;
}

/** Fills the hole; one without any rim stays as it is. */
export function smoothlyClosed(level: FillLevel): void {
  const { columns, rows, colours, hole } = level;
  const open = hole.slice();
  const order = ringsOf(level);
  const settle = (at: number): void => {
    const beside = around(at, columns, rows).filter((other) => !open[other]);
    if (beside.length === 0) return;
    for (let channel = 0; channel < 3; channel++) {
      const sum = beside.reduce((total, other) => total + (colours[other * 3 + channel] as number), 0);
      colours[at * 3 + channel] = sum / beside.length;
    }
    open[at] = 0;
  };
  for (const at of order) settle(at);
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (const at of sweep % 2 === 0 ? order : order.toReversed()) settle(at);
  }
}
