'use client';
/**
 * The hand that puts a photo of a painting right: four corners, and boxes on grey or white cards.
 *
 * In the flow: gestures and keys -> [use-photo-hand] -> `photo` in the painting's room. Works on the picture as
 * photographed; what is pulled is held for the others and stored when let go.
 */
import { useEffect, useMemo } from 'react';
import { useEasel } from '#app/_easel/easel-state.tsx';
import { type Hand, type HandPoint, pixelsApart, reachPx } from '#app/_easel/hand.ts';
import { troubleOf } from '#app/_easel/outline-trouble.ts';
import { type Held, useHeldDrag } from '#app/_easel/use-held-drag.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { photoHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Card, FractionPoint } from '#server/core/contract/setup.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import { checkCorners } from '#server/core/rectify/check-corners.ts';
import { words } from '#words/photo.ts';
import { type PhotoDesk, usePhotoDesk } from './photo-desk.tsx';
import {
  boxBetween,
  MOST_CARDS,
  movedPhoto,
  type PhotoPart,
  type PhotoParts,
  partUnder,
  placeOfPart,
  usualBox,
  withCorner,
} from './photo-parts.ts';

/** Luminance factor of the usual grey card, which a new card is taken for. Common practice, no source. */
export const GREY = 0.18;

export interface PhotoHand {
  hand: Hand;
  /** Corners and cards as they are shown now: stored, or under the hand. */
  parts: PhotoParts;
  pulled: { part: PhotoPart; place: FractionPoint } | null;
  /** Moves a part by key, in 0..1 of the photo. */
  nudge(part: PhotoPart, dx: number, dy: number): void;
}

interface Pull {
  part: PhotoPart;
  parts: PhotoParts;
}

export function usePhotoHand(picture: PictureView): PhotoHand {
  const { photoOf, may } = useBoardLive();
  const { setSentence } = useEasel();
  const desk = usePhotoDesk();
  const photo = photoOf(picture.id);
  const stored = useMemo<PhotoParts>(
    () => ({ corners: photo.corners ?? null, cards: (photo.cards ?? []).map(({ box }) => box) }),
    [photo],
  );
  const allowed = picture.kind === 'painting' && may.painting(picture.id);
  const keep = useKeep(picture, stored);
  const { held, drag } = useHeldDrag<Pull>({
    what: photoHold(picture.id),
    heldSentence: words.heldBy,
    takes: (at) => allowed && (desk.adding || under(stored, at) !== null),
    begin(at) {
      const part: PhotoPart | null = desk.adding ? { kind: 'new', from: at.point } : under(stored, at);
      if (part?.kind === 'card' || part?.kind === 'card-edge') desk.chooseCard(part.at);
      return part && { part, parts: stored };
    },
    moved({ part, parts }, from, to) {
      if (part.kind !== 'new') {
        const [dx, dy] = [to.point[0] - from.point[0], to.point[1] - from.point[1]];
        return { part, parts: movedPhoto(parts, part, dx, dy) };
      }
      const box = boxBetween(part.from, to.point);
      return { part, parts: { ...stored, cards: box ? [...stored.cards, box] : stored.cards } };
    },
    keep: ({ part, parts }) => keep(part, parts),
  });
  useInHand(picture, photo, held);
  const parts = held?.copy.parts ?? stored;
  const refusal = picture.kind === 'painting' ? words.onlyLook : words.none;
  const look = { cursor: 'default', crosshair: false, keysHint: words.keys };
  const setting = useSetting(desk, keep, stored);
  const tap = (at: HandPoint) => {
    const part = under(stored, at);
    if (part?.kind === 'card') desk.chooseCard(part.at);
  };
  const hand = desk.adding ? { ...look, ...setting, drag } : { ...look, drag, tap };
  return {
    hand: allowed ? hand : { ...look, tap: () => setSentence(refusal) },
    parts,
    pulled: held && pulledAt(held, parts),
    nudge: (part, dx, dy) => keep(part, movedPhoto(stored, part, dx, dy)),
  };
}

function under(parts: PhotoParts, at: HandPoint): PhotoPart | null {
  const away = (place: FractionPoint) => pixelsApart(place, at.point, at.pixel);
  return partUnder(parts, { away, reachPx: reachPx(at.touch), point: at.point });
}

/** Where the loupe looks: at what is pulled, or under the hand where a box is drawn. */
function pulledAt({ copy: { part }, hand }: Held<Pull>, parts: PhotoParts): PhotoHand['pulled'] {
  return { part, place: part.kind === 'new' ? hand.point : placeOfPart(parts, part) };
}

/** Says to the desk how corners and cards stand under the hand, so that the picture put right follows. */
function useInHand(picture: PictureView, photo: LivePhoto, held: Held<Pull> | null): void {
  const { tool } = useTools();
  const { setInHand } = usePhotoDesk();
  const mine = picture.kind === 'painting' && tool === 'photo';
  const copy = held?.copy ?? null;
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is stored is read as it is when the hand moves.
  useEffect(() => {
    if (!mine) return;
    if (!copy) return setInHand(null);
    const { corners, cards } = copy.parts;
    setInHand({
      ...photo,
      ...(corners ? { corners } : {}),
      cards: cards.map((box, at) => ({ Y: photo.cards?.[at]?.Y ?? GREY, box })),
    });
  }, [copy, mine, setInHand]);
}

/** Stores what the hand moved and nothing else; other corners and cards are taken as they stand now. */
function useKeep(picture: PictureView, stored: PhotoParts) {
  const { photoOf, write } = useBoardLive();
  const { setSentence } = useEasel();
  const { chooseCard, setAdding } = usePhotoDesk();
  const keepCard = (at: number, box: Card['box'] | undefined) => {
    const cards = photoOf(picture.id).cards ?? [];
    const card = cards[at];
    if (!box || !card) return;
    write.setCards(picture.id, cards.with(at, { ...card, box }));
  };
  const addCard = (box: Card['box'] | undefined): string | null => {
    const cards = photoOf(picture.id).cards ?? [];
    if (!box) return words.cards.small;
    if (cards.length >= MOST_CARDS) return words.cards.full;
    write.setCards(picture.id, [...cards, { box, Y: GREY }]);
    chooseCard(cards.length);
    setAdding(false);
    return null;
  };
  const keepCorner = (at: number, moved: PhotoParts['corners']) => {
    const corner = moved?.[at];
    if (!moved || !corner) return;
    const corners = withCorner(photoOf(picture.id).corners ?? moved, at, corner);
    checkCorners(corners);
    write.setCorners(picture.id, corners);
  };
  return (part: PhotoPart, moved: PhotoParts) => {
    let refused: string | null = null;
    const trouble = troubleOf(() => {
      if (part.kind === 'corner') keepCorner(part.at, moved.corners);
      else if (part.kind === 'new') refused = addCard(moved.cards[stored.cards.length]);
      else keepCard(part.at, moved.cards[part.at]);
    });
    setSentence(trouble ?? refused);
  };
}

/** A new card: where the hand taps, the even patch around it becomes its box. */
function useSetting(
  { line, setAdding }: PhotoDesk,
  keep: (part: PhotoPart, moved: PhotoParts) => void,
  stored: PhotoParts,
): Pick<Hand, 'cursor' | 'crosshair' | 'keysHint' | 'tap' | 'key'> {
  const setAt = async (from: FractionPoint) => {
    // Without the picture's pixels the box has its usual size and is pulled by hand.
    const found = line && (await line.card(from).catch(() => null));
    const box = found ?? usualBox(from);
    keep({ kind: 'new', from }, { ...stored, cards: [...stored.cards, box] });
  };
  return {
    cursor: 'crosshair',
    crosshair: true,
    keysHint: words.addKeys,
    tap: ({ point }) => void setAt(point),
    key(key, crosshair) {
      if (key === ' ' || key === 'Enter') void setAt(crosshair);
      else if (key === 'Escape') setAdding(false);
      else return false;
      return true;
    },
  };
}
