'use client';
/**
 * The hand that squares a photo of a painting: four corners, and a box on a grey card.
 *
 * In the flow: gestures and keys -> [use-photo-hand] -> `photo` in the painting's room. Works on the picture as
 * photographed; what is pulled is held for the others and stored when let go.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { photoHold } from '#app/_live/presence.ts';
import { words } from '#app/_words/en-easel.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { checkCorners } from '#server/core/rectify/check-corners.ts';
import { useEasel } from './easel-state.tsx';
import { type Hand, type HandPoint, pixelsApart, reachPx } from './hand.ts';
import { troubleOf } from './outline-trouble.ts';
import { cardPlaces, movedPhoto, type PhotoPart, type PhotoParts, withCorner } from './photo-parts.ts';
import { useHeldDrag } from './use-held-drag.ts';

export interface PhotoHand {
  hand: Hand;
  /** Corners and card as they are shown now: stored, or under the hand. */
  parts: PhotoParts;
  pulled: { part: PhotoPart; place: FractionPoint } | null;
  /** Moves a part by key, in 0..1 of the photo. */
  nudge(part: PhotoPart, dx: number, dy: number): void;
}

export function usePhotoHand(picture: PictureView): PhotoHand {
  const { photoOf, may, write } = useBoardLive();
  const { setSentence } = useEasel();
  const photo = photoOf(picture.id);
  const stored: PhotoParts = { corners: photo.corners ?? null, card: photo.cards?.[0]?.box ?? null };
  const allowed = picture.kind === 'painting' && may.painting(picture.id);

  /** Stores what the hand moved and nothing else; other corners are taken as they stand now. */
  const keep = (part: PhotoPart, moved: PhotoParts) => {
    const trouble = troubleOf(() => {
      const corner = part.kind === 'corner' ? moved.corners?.[part.at] : undefined;
      if (part.kind === 'corner' && moved.corners && corner) {
        const corners = withCorner(photoOf(picture.id).corners ?? moved.corners, part.at, corner);
        checkCorners(corners);
        write.setCorners(picture.id, corners);
      }
      const [first, ...others] = photoOf(picture.id).cards ?? [];
      if (part.kind !== 'corner' && moved.card && first) {
        write.setCards(picture.id, [{ ...first, box: moved.card }, ...others]);
      }
    });
    setSentence(trouble);
  };
  const { held, drag } = useHeldDrag<{ part: PhotoPart; parts: PhotoParts }>({
    what: photoHold(picture.id),
    heldSentence: words.photo.heldBy,
    takes: (at) => allowed && partAt(stored, at) !== null,
    begin(at) {
      const part = partAt(stored, at);
      return part && { part, parts: stored };
    },
    moved({ part, parts }, from, to) {
      const [dx, dy] = [to.point[0] - from.point[0], to.point[1] - from.point[1]];
      return { part, parts: movedPhoto(parts, part, dx, dy) };
    },
    keep: ({ part, parts }) => keep(part, parts),
  });
  const refusal = picture.kind === 'painting' ? words.photo.onlyLook : words.photo.none;
  const look = { cursor: 'default', crosshair: false, keysHint: words.easel.lookKeys };
  return {
    hand: allowed ? { ...look, drag } : { ...look, tap: () => setSentence(refusal) },
    parts: held?.copy.parts ?? stored,
    pulled: held && { part: held.copy.part, place: cardPlaces(held.copy.parts, held.copy.part) },
    nudge: (part, dx, dy) => keep(part, movedPhoto(stored, part, dx, dy)),
  };
}

/** The part under the hand, or null. */
function partAt(parts: PhotoParts, at: HandPoint): PhotoPart | null {
  let [best, bestPx]: [PhotoPart | null, number] = [null, Number.POSITIVE_INFINITY];
  for (const { part, place, reach } of places(parts)) {
    const px = pixelsApart(place, at.point, at.pixel);
    if (px <= reachPx(at.touch) * reach && px < bestPx) [best, bestPx] = [part, px];
  }
  return best;
}

/** Every part that can be taken, where it is, and how much farther than usual it can be taken from. */
function places(parts: PhotoParts): { part: PhotoPart; place: FractionPoint; reach: number }[] {
  const corners = (parts.corners ?? []).map((place, at) => ({
    part: { kind: 'corner', at } as const,
    place,
    reach: 1.4,
  }));
  if (!parts.card) return corners;
  const [x0, y0, x1, y1] = parts.card;
  return [
    ...corners,
    { part: { kind: 'card-edge' }, place: [x1, y1], reach: 1 },
    { part: { kind: 'card' }, place: [(x0 + x1) / 2, (y0 + y1) / 2], reach: 1.4 },
  ];
}
