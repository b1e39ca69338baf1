'use client';
/**
 * The hand that squares a photo of a painting: four corners, and a box on a grey card.
 *
 * In the flow: gestures and keys -> [use-photo-hand] -> `photo` in the painting's room. Works on the picture as
 * photographed; what is pulled is held for the others and stored when let go.
 */
import { useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { photoHold } from '#app/_live/presence.ts';
import { words } from '#app/_words/en-easel.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { useEasel } from './easel-state.tsx';
import { type Hand, type HandPoint, pixelsApart, reachPx } from './hand.ts';
import { cardPlaces, movedPhoto, type PhotoPart, type PhotoParts, withCorner } from './photo-parts.ts';

export interface PhotoHand {
  hand: Hand;
  /** Corners and card as they are shown now: stored, or under the hand. */
  parts: PhotoParts;
  pulled: { part: PhotoPart; place: FractionPoint } | null;
  /** Moves a part by key, in 0..1 of the photo. */
  nudge(part: PhotoPart, dx: number, dy: number): void;
}

export function usePhotoHand(picture: PictureView): PhotoHand {
  const { photoOf, may, heldBy, hold, whenFree, write } = useBoardLive();
  const { setSentence } = useEasel();
  const [pulled, setPulled] = useState<{ part: PhotoPart; parts: PhotoParts; place: FractionPoint } | null>(
    null,
  );
  const pulledNow = useRef(pulled);
  const photo = photoOf(picture.id);
  const stored: PhotoParts = { corners: photo.corners ?? null, card: photo.cards?.[0]?.box ?? null };
  const parts = pulled?.parts ?? stored;
  const allowed = picture.kind === 'painting' && may.painting(picture.id);

  const pull = (next: typeof pulled) => {
    pulledNow.current = next;
    setPulled(next);
  };
  /** Stores what the hand moved and nothing else; other corners are taken as they stand now. */
  const keep = (part: PhotoPart, moved: PhotoParts) => {
    const corner = part.kind === 'corner' ? moved.corners?.[part.at] : undefined;
    if (part.kind === 'corner' && moved.corners && corner) {
      write.setCorners(picture.id, withCorner(photoOf(picture.id).corners ?? moved.corners, part.at, corner));
    }
    if (part.kind !== 'corner' && moved.card) {
      const [first, ...others] = photoOf(picture.id).cards ?? [];
      if (first) write.setCards(picture.id, [{ ...first, box: moved.card }, ...others]);
    }
  };
  const keepNow = useRef(keep);
  keepNow.current = keep;
  const partAt = (at: HandPoint): PhotoPart | null => {
    let best: { part: PhotoPart; px: number } | null = null;
    for (const { part, place, reach } of places(stored)) {
      const px = pixelsApart(place, at.point, at.pixel);
      if (px <= reachPx(at.touch) * reach && (!best || px < best.px)) best = { part, px };
    }
    return best ? best.part : null;
  };
  const hand: Hand = {
    cursor: 'default',
    crosshair: false,
    keysHint: words.easel.lookKeys,
    ...(allowed
      ? {}
      : { tap: () => setSentence(picture.kind === 'painting' ? words.photo.onlyLook : words.photo.none) }),
    drag: {
      takes: (at) => allowed && partAt(at) !== null,
      start(at) {
        const holder = heldBy(photoHold(picture.id));
        const part = partAt(at);
        if (holder) return setSentence(words.photo.heldBy(holder));
        if (!part) return;
        hold(photoHold(picture.id));
        pull({ part, parts: stored, place: at.point });
      },
      move(at) {
        const last = pulledNow.current;
        if (!last) return;
        const [dx, dy] = [at.point[0] - last.place[0], at.point[1] - last.place[1]];
        pull({ ...last, parts: movedPhoto(last.parts, last.part, dx, dy), place: at.point });
      },
      end() {
        const last = pulledNow.current;
        if (!last) return;
        pulledNow.current = null;
        whenFree(photoHold(picture.id), () => {
          keepNow.current(last.part, last.parts);
          setPulled(null);
          hold(null);
        });
      },
      cancel() {
        pull(null);
        hold(null);
      },
    },
  };
  return {
    hand,
    parts,
    pulled: pulled && { part: pulled.part, place: cardPlaces(pulled.parts, pulled.part) },
    nudge: (part, dx, dy) => keep(part, movedPhoto(stored, part, dx, dy)),
  };
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
