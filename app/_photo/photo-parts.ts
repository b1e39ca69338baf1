/** The parts of a photo correction that the hand moves. In the flow: hand -> [photo-parts] -> live document. Pure. */
import type { Card, FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';

export type Corners = NonNullable<PhotoCorrection['corners']>;
type Box = Card['box'];

export interface PhotoParts {
  corners: Corners | null;
  /** Boxes of the cards, in order. */
  cards: readonly Box[];
}

export type PhotoPart =
  /** One of the four corners, clockwise from the top left. */
  | { kind: 'corner'; at: number }
  /** The whole box of a card. */
  | { kind: 'card'; at: number }
  /** Its lower right corner. */
  | { kind: 'card-edge'; at: number }
  /** A box being drawn from this point on. */
  | { kind: 'new'; from: FractionPoint };

/** Cards that a painter may set on one photo; the document would hold more. */
export const MOST_CARDS = 4;
/** Smallest side of a card's box, as a share of the photo. */
const SMALLEST = 0.015;
/** Sides of a box where a tap found no even patch, as a share of the photo. */
const USUAL = 0.06;

/** Where the four handles stand before anybody moved them: a little inside the photo. */
export const STARTING_CORNERS: Corners = [
  [0.06, 0.06],
  [0.94, 0.06],
  [0.94, 0.94],
  [0.06, 0.94],
];

const held = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
const inside = ([x, y]: readonly [number, number]): FractionPoint => [held(x, 0, 1), held(y, 0, 1)];

/** The corners of a painting that fills its photo. */
export const WHOLE_CORNERS: Corners = [
  [0, 0],
  [1, 0],
  [1, 1],
  [0, 1],
];

/** A box of usual size around a point, moved inside the photo where needed. */
export function usualBox([x, y]: FractionPoint): Box {
  const [left, top] = [held(x - USUAL / 2, 0, 1 - USUAL), held(y - USUAL / 2, 0, 1 - USUAL)];
  return [left, top, left + USUAL, top + USUAL];
}

/** The box between two points; null where it is too small to be meant. */
export function boxBetween(one: FractionPoint, other: FractionPoint): Box | null {
  const [[x0, y0], [x1, y1]] = [inside(one), inside(other)];
  const box: Box = [Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1)];
  return box[2] - box[0] >= SMALLEST && box[3] - box[1] >= SMALLEST ? box : null;
}

/** With one part moved by a share of the photo, held inside it. A box being drawn moves nothing. */
export function movedPhoto(parts: PhotoParts, part: PhotoPart, dx: number, dy: number): PhotoParts {
  if (part.kind === 'new') return parts;
  if (part.kind === 'corner') {
    const corner = parts.corners?.[part.at];
    if (!parts.corners || !corner) return parts;
    return {
      ...parts,
      corners: withCorner(parts.corners, part.at, inside([corner[0] + dx, corner[1] + dy])),
    };
  }
  const { kind, at } = part;
  return {
    ...parts,
    cards: parts.cards.map((box, index) => (index === at ? movedBox(box, kind, dx, dy) : box)),
  };
}

/** With corner `at` (0..3) in its new place and the others as they are. */
export function withCorner([a, b, c, d]: Corners, at: number, corner: FractionPoint): Corners {
  return [at === 0 ? corner : a, at === 1 ? corner : b, at === 2 ? corner : c, at === 3 ? corner : d];
}

function movedBox([x0, y0, x1, y1]: Box, kind: 'card' | 'card-edge', dx: number, dy: number): Box {
  if (kind === 'card-edge') return [x0, y0, held(x1 + dx, x0 + SMALLEST, 1), held(y1 + dy, y0 + SMALLEST, 1)];
  const [byX, byY] = [held(dx, -x0, 1 - x1), held(dy, -y0, 1 - y1)];
  return [x0 + byX, y0 + byY, x1 + byX, y1 + byY];
}

/** Where a part is: the corner, the middle of the card, its lower right corner, or where a new box began. */
export function placeOfPart({ corners, cards }: PhotoParts, part: PhotoPart): FractionPoint {
  if (part.kind === 'new') return part.from;
  if (part.kind === 'corner') return corners?.[part.at] ?? [0.5, 0.5];
  const card = cards[part.at];
  if (!card) return [0.5, 0.5];
  return part.kind === 'card-edge' ? [card[2], card[3]] : [(card[0] + card[2]) / 2, (card[1] + card[3]) / 2];
}

interface Reach {
  /** Distance of a place from the hand, in pixels of the screen. */
  away(place: FractionPoint): number;
  /** How near the hand must come, in the same pixels. */
  reachPx: number;
  point: FractionPoint;
}

/** The part under the hand, or null. Inside its box a card can be taken anywhere. */
export function partUnder(parts: PhotoParts, { away, reachPx, point: [x, y] }: Reach): PhotoPart | null {
  const corners = (parts.corners ?? []).map((_, at) => ({ kind: 'corner', at }) as const);
  const cards = parts.cards.flatMap((_, at) => [
    { kind: 'card-edge', at } as const,
    { kind: 'card', at } as const,
  ]);
  let [best, bestPx]: [PhotoPart | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const part of [...corners, ...cards]) {
    const box = part.kind === 'card' ? parts.cards[part.at] : undefined;
    const over = box && x >= box[0] && x <= box[2] && y >= box[1] && y <= box[3];
    const px = Math.min(away(placeOfPart(parts, part)), over ? reachPx * 0.8 : Number.POSITIVE_INFINITY);
    const reach = part.kind === 'card-edge' ? reachPx : reachPx * 1.4;
    if (px <= reach && px < bestPx) [best, bestPx] = [part, px];
  }
  return best;
}
