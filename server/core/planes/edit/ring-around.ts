/**
 * One valid ring round the main piece of a mask.
 *
 * In the flow: relabel, split, merge -> [ring-around]. The calm drawing first; should it cross itself, a closer one, and
 * last the sides of the cells themselves, which never do. Pure.
 */
import type { FractionPoint } from '../../contract/setup.ts';
import { findSelfCrossing, signedArea } from '../../geometry/outline.ts';
import { type Contour, contourOf } from './contour.ts';
import { type Grid, type Mask, piecesOf } from './grid.ts';
import { type Drawing, ringOf, type Source } from './keep-stretches.ts';

const DRAWINGS: readonly Drawing[] = [
  { reach: 2, tolerance: 0.7, keeps: true },
  { reach: 0, tolerance: 0.6, keeps: true },
  { reach: 2, tolerance: 0.7, keeps: false },
  { reach: 0, tolerance: 0.3, keeps: false },
];

/** Most points an outline may have. */
const MOST_POINTS = 4000;

/** The piece of a mask with most cells that are seen as `plane`, then with most cells at all; null when it is empty. */
export function mainPiece(mask: Mask, seen: Uint8Array, plane: number, grid: Grid): Mask | null {
  const { numbers, sizes } = piecesOf(mask, grid);
  if (sizes.length === 1) return null;
  if (sizes.length === 2) return mask;
  const shown = new Array<number>(sizes.length).fill(0);
  for (let cell = 0; cell < mask.length; cell++) {
    const number = numbers[cell] as number;
    if (number > 0 && seen[cell] === plane) shown[number] = (shown[number] as number) + 1;
  }
  let best = 1;
  for (let number = 2; number < sizes.length; number++) {
    const more = (shown[number] as number) - (shown[best] as number);
    if (more > 0 || (more === 0 && (sizes[number] as number) > (sizes[best] as number))) best = number;
  }
  const piece = new Uint8Array(mask.length);
  for (let cell = 0; cell < piece.length; cell++) piece[cell] = numbers[cell] === best ? 1 : 0;
  return piece;
}

const isValid = (ring: readonly FractionPoint[]) =>
  ring.length >= 3 && ring.length <= MOST_POINTS && findSelfCrossing(ring) === null && signedArea(ring) > 0;

/**
 * The ring round the main piece, holes filled. @param sources outlines whose stretches come back where nothing changed.
 * @returns null when the mask is empty.
 */
export function ringAround(
  mask: Mask,
  seen: Uint8Array,
  plane: number,
  grid: Grid,
  sources: readonly Source[],
): FractionPoint[] | null {
  const piece = mainPiece(mask, seen, plane, grid);
  return piece && ringOfContour(contourOf(piece, grid), grid, sources);
}

function ringOfContour(contour: Contour, grid: Grid, sources: readonly Source[]): FractionPoint[] {
  for (const drawing of DRAWINGS) {
    const ring = ringOf(contour, grid, sources, drawing);
    if (isValid(ring)) return ring;
  }
  const exact = { reach: 0, tolerance: 1e-9, keeps: false };
  return ringOf(contour, grid, [], exact);
}
