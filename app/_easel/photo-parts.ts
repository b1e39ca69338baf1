/** The parts of a photo correction that the hand moves. In the flow: hand -> [photo-parts] -> live document. Pure. */
import type { Card, FractionPoint, PhotoCorrection } from '#server/core/contract/setup.ts';
import { insidePicture } from './outline-edit.ts';

export type Corners = NonNullable<PhotoCorrection['corners']>;

export interface PhotoParts {
  corners: Corners | null;
  /** Box of the first card. */
  card: Card['box'] | null;
}

export type PhotoPart =
  | { kind: 'corner'; at: number }
  /** The whole box of the card. */
  | { kind: 'card' }
  /** Its lower right corner. */
  | { kind: 'card-edge' };

/** Smallest side of a card's box, as a share of the photo. */
const SMALLEST = 0.01;

/** Where the four handles stand before anybody moved them: a little inside the photo. */
export const STARTING_CORNERS: Corners = [
  [0.06, 0.06],
  [0.94, 0.06],
  [0.94, 0.94],
  [0.06, 0.94],
];

/** Where the box stands before anybody moved it. */
export const STARTING_CARD: Card['box'] = [0.44, 0.44, 0.56, 0.56];

/** With one part moved by a share of the photo, held inside it. */
export function movedPhoto(parts: PhotoParts, part: PhotoPart, dx: number, dy: number): PhotoParts {
  if (part.kind === 'corner') {
    const corner = parts.corners?.[part.at];
    if (!parts.corners || !corner) return parts;
    const moved = insidePicture([corner[0] + dx, corner[1] + dy]);
    return { ...parts, corners: withCorner(parts.corners, part.at, moved) };
  }
  return parts.card ? { ...parts, card: movedCard(parts.card, part.kind, dx, dy) } : parts;
}

/** With corner `at` (0..3) in its new place and the others as they are. */
export function withCorner([a, b, c, d]: Corners, at: number, corner: FractionPoint): Corners {
  return [at === 0 ? corner : a, at === 1 ? corner : b, at === 2 ? corner : c, at === 3 ? corner : d];
}

function movedCard(
  [x0, y0, x1, y1]: Card['box'],
  kind: 'card' | 'card-edge',
  dx: number,
  dy: number,
): Card['box'] {
  const held = (value: number, low: number, high: number) => Math.min(high, Math.max(low, value));
  if (kind === 'card-edge') return [x0, y0, held(x1 + dx, x0 + SMALLEST, 1), held(y1 + dy, y0 + SMALLEST, 1)];
  const [byX, byY] = [held(dx, -x0, 1 - x1), held(dy, -y0, 1 - y1)];
  return [x0 + byX, y0 + byY, x1 + byX, y1 + byY];
}

/** Where a part is: the corner, the middle of the card or its lower right corner. */
export function cardPlaces({ corners, card }: PhotoParts, part: PhotoPart): FractionPoint {
  if (part.kind === 'corner') return corners?.[part.at] ?? [0.5, 0.5];
  if (!card) return [0.5, 0.5];
  return part.kind === 'card-edge' ? [card[2], card[3]] : [(card[0] + card[2]) / 2, (card[1] + card[3]) / 2];
}
