/**
 * Places and shapes of marks: a point in words, an arrow's lines. Pure.
 */
import { BOX } from '#app/_easel/shape-path.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { markWords as words } from '#words/marks.ts';

const third = (share: number) => Math.min(2, Math.max(0, Math.floor(share * 3)));

/** For example `upper left`, by thirds of the picture. @param place 0..1 of what is shown. */
export function spotWords([x, y]: FractionPoint): string {
  return words.spot(words.down[third(y)] ?? '', words.across[third(x)] ?? '');
}

/** Length of the two lines of an arrow's head, in thousandths of the picture's width, and how far they open. */
const HEAD = 26;
const OPENING = 0.45;

/** An arrow as an SVG path in the box of `shape-path`. @param from, to 0..1 of what is shown. */
export function arrowPath(from: FractionPoint, to: FractionPoint, aspect: number): string {
  const place = ([x, y]: FractionPoint): [number, number] => [x * BOX, y * BOX * aspect];
  const [[x0, y0], [x1, y1]] = [place(from), place(to)];
  const along = Math.atan2(y0 - y1, x0 - x1);
  const length = Math.min(HEAD, Math.hypot(x0 - x1, y0 - y1) * 0.6);
  const wing = (turn: number): [number, number] => [
    x1 + length * Math.cos(along + turn),
    y1 + length * Math.sin(along + turn),
  ];
  const text = ([x, y]: [number, number]) => `${x.toFixed(1)} ${y.toFixed(1)}`;
  return `M${text([x0, y0])}L${text([x1, y1])}M${text(wing(OPENING))}L${text([x1, y1])}L${text(wing(-OPENING))}`;
}
