/**
 * Which part of the first picture a painting shows: found from both pictures, coarse to fine.
 *
 * In the flow: two pictures, planes of the first -> [find-placement] -> placement. Every size and place is tried on a
 * coarse grid; the best are then moved in ever smaller steps on finer ones. Pure.
 */
import type { Outline } from '../../contract/setup.ts';
import { drawLabelMap, NO_PLANE } from '../label-map.ts';
import { Agreement, type Known } from './agreement.ts';
import type { Placement } from './placement.ts';
import { coarser, type Sight } from './sight.ts';

/** Share of the first picture's width that the painting shows, least and most, and the step between tries. */
const WIDTHS = { least: 0.42, most: 1.75, step: 1.11 };
/** How much a painter may have stretched one way, tried. */
const STRETCHES = [0.9, 1, 1.11];
/** Long side of the grids, cells, and how many placements go on from each. */
const COARSE = { cells: 20, go: 24 };
const FINER = [
  { cells: 48, go: 8, step: 0.04 },
  { cells: 96, go: 3, step: 0.016 },
  { cells: 176, go: 1, step: 0.006 },
];
/** The painting's side is walked in this many steps when every place is tried. */
const PLACES = 14;
/** A strip of a picture would fit anywhere. */
const MOST_PLACES = 45;
/** What a doubled or halved size, or stretching by a tenth, costs: a painting mostly shows nearly the whole picture. */
const UNLIKELY = { size: 0.02, stretch: 0.03, aside: 0.02 };

interface Tried {
  readonly placement: Placement;
  readonly agreement: number;
}

export interface FoundPlacement {
  readonly placement: Placement;
  /** About 0 for pictures that have nothing in common, up to 2. */
  readonly agreement: number;
}

/** @param likeness ratio of both scales of a painting that was not stretched. */
function unlikely({ scaleX, scaleY, shiftX, shiftY }: Placement, likeness: number): number {
  const aside = Math.abs(shiftX + scaleX / 2 - 0.5) + Math.abs(shiftY + scaleY / 2 - 0.5);
  return (
    UNLIKELY.size * Math.abs(Math.log2(Math.sqrt(scaleX * scaleY))) +
    (UNLIKELY.stretch * Math.abs(Math.log(scaleX / scaleY / likeness))) / 0.1 +
    UNLIKELY.aside * aside
  );
}

/** The first picture at one coarseness. */
function knownAt(sight: Sight, outlines: readonly Outline[], longSide: number): Known {
  const coarse = coarser(sight, longSide);
  const labels = drawLabelMap(coarse.columns, coarse.rows, outlines);
  return { ...coarse, labels: labels.map((label) => (label === NO_PLANE ? outlines.length : label)) };
}

/** Every place for one size: the box that the painting shows stays mostly on the first picture, or holds it. */
function placesFor(width: number, height: number): Placement[] {
  const along = (side: number): number[] => {
    const slack = 0.2 * Math.min(1, side);
    const [low, high] = [Math.min(0, 1 - side) - slack, Math.max(0, 1 - side) + slack];
    const steps = Math.min(MOST_PLACES, Math.max(2, Math.round(((high - low) / side) * PLACES)));
    return Array.from({ length: steps + 1 }, (_, step) => low + ((high - low) * step) / steps);
  };
  return along(height).flatMap((top) =>
    along(width).map((left) => ({
      scaleX: 1 / width,
      scaleY: 1 / height,
      shiftX: -left / width,
      shiftY: -top / height,
    })),
  );
}

function everywhere(agreement: Agreement, likeness: number): Tried[] {
  const tried: Tried[] = [];
  for (let width: number = WIDTHS.least; width <= WIDTHS.most; width *= WIDTHS.step) {
    for (const stretch of STRETCHES) {
      let best: Tried[] = [];
      for (const placement of placesFor(width, width * likeness * stretch)) {
        best.push({ placement, agreement: agreement.at(placement) - unlikely(placement, likeness) });
      }
      best = best.sort((p, q) => q.agreement - p.agreement).slice(0, 3);
      tried.push(...best);
    }
  }
  return tried.sort((p, q) => q.agreement - p.agreement);
}

/** Small changes of a placement: moved, and made larger or smaller about the painting's middle. */
function neighbours({ scaleX, scaleY, shiftX, shiftY }: Placement, step: number): Placement[] {
  const scaled = (byX: number, byY: number): Placement => ({
    scaleX: scaleX * byX,
    scaleY: scaleY * byY,
    shiftX: 0.5 + (shiftX - 0.5) * byX,
    shiftY: 0.5 + (shiftY - 0.5) * byY,
  });
  const [more, less] = [1 + step, 1 / (1 + step)];
  return [
    { scaleX, scaleY, shiftX: shiftX + step, shiftY },
    { scaleX, scaleY, shiftX: shiftX - step, shiftY },
    { scaleX, scaleY, shiftX, shiftY: shiftY + step },
    { scaleX, scaleY, shiftX, shiftY: shiftY - step },
    scaled(more, more),
    scaled(less, less),
    scaled(more, 1),
    scaled(less, 1),
    scaled(1, more),
    scaled(1, less),
  ];
}

/** Moves in smaller and smaller steps as long as it agrees better. */
function climbed(worth: (placement: Placement) => number, from: Placement, firstStep: number): Tried {
  let best: Tried = { placement: from, agreement: worth(from) };
  for (let step = firstStep; step > firstStep / 5; step /= 2) {
    for (let round = 0; round < 12; round++) {
      let better = best;
      for (const placement of neighbours(best.placement, step)) {
        const value = worth(placement);
        if (value > better.agreement) better = { placement, agreement: value };
      }
      if (better === best) break;
      best = better;
    }
  }
  return best;
}

/**
 * @param known the picture whose planes are known. @param outlines far to near, 0..1 of it.
 */
export function findPlacement(known: Sight, outlines: readonly Outline[], painting: Sight): FoundPlacement {
  // Boxes of the painting's own shape: what is as wide is this much as high, in shares of the first picture.
  const likeness = ((painting.rows / painting.columns) * known.columns) / known.rows;
  const at = (cells: number): Agreement =>
    new Agreement(knownAt(known, outlines, cells * 1.4), coarser(painting, cells));
  let best = everywhere(at(COARSE.cells), likeness).slice(0, COARSE.go);
  for (const { cells, go, step } of FINER) {
    const agreement = at(cells);
    const worth = (placement: Placement): number => agreement.at(placement) - unlikely(placement, likeness);
    best = best
      .map(({ placement }) => climbed(worth, placement, step))
      .sort((p, q) => q.agreement - p.agreement)
      .slice(0, go);
  }
  const [found] = best;
  if (!found) throw new Error('Some placement is always tried.');
  return found;
}
