'use client';
/**
 * What all parts that put the painting's photo right share: the line to the worker, what is under the hand, the
 * picture put right, which card is chosen.
 *
 * In the flow: live photo -> [photo-desk] -> hand, bar, leaf and pictures. Nothing here is seen by others. IO: a worker.
 */
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { LivePhoto } from '#server/core/live/layout.ts';
import { photoShownWords as words } from '#words/photo-shown.ts';
import { PhotoLine } from './photo-line.ts';
import { type RightedShown, useRighted } from './use-righted.ts';

/** What the hand has chosen; dropped with another painting or tool. */
interface Choices {
  /** Corners, cards and size as they stand under the hand; null when nothing is pulled. */
  inHand: LivePhoto | null;
  setInHand(photo: LivePhoto | null): void;
  /** Squared, with the light as it came: before against after. */
  lightAsCame: boolean;
  setLightAsCame(as: boolean): void;
  /** Index of the card in hand. */
  cardAt: number;
  chooseCard(at: number): void;
  /** Whether the next tap or stroke on the photo sets a new card. */
  adding: boolean;
  setAdding(adding: boolean): void;
  /** Narrow: the photo put right is shown instead of the one with its handles. */
  instead: boolean;
  setInstead(instead: boolean): void;
}

export interface PhotoDesk extends Choices {
  /** The painting on the easel, or null. */
  painting: PictureView | null;
  /** Null when there is no painting. */
  line: PhotoLine | null;
  /** Corners, cards and size as they stand under the hand, or as stored. */
  photo: LivePhoto;
  righted: RightedShown;
  /** Asks for a copy sharp enough for this long side, pixels of the screen. */
  wantCopy(copy: PictureSize): void;
  /** Wide: the photo put right stands beside it, in the reference's place. */
  beside: boolean;
  setBeside(beside: boolean): void;
  /** Glare and clipping drawn over the painting. */
  overlayShown: boolean;
  setOverlayShown(shown: boolean): void;
  /** Rises each time somebody asks for the leaf that speaks of the photo. */
  asked: number;
  askLeaf(): void;
}

const DeskContext = createContext<PhotoDesk | null>(null);

/** @throws Error outside `PhotoDeskProvider`: a bug. */
export function usePhotoDesk(): PhotoDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('usePhotoDesk is used outside PhotoDeskProvider.');
  return desk;
}

/** Whether there is anything to put right. */
export const isCorrected = ({ corners, cards }: LivePhoto) =>
  corners !== undefined || (cards?.length ?? 0) > 0;

/** A line to the worker for one picture; the worker itself starts with the first question. */
function useLine(boardId: string, pictureId: string | null): PhotoLine | null {
  const [line, setLine] = useState<PhotoLine | null>(null);
  useEffect(() => {
    if (!pictureId) return setLine(null);
    const opened = new PhotoLine(boardId, pictureId);
    setLine(opened);
    return () => opened.close();
  }, [boardId, pictureId]);
  return line;
}

/** Small while the hand moves, so that the picture follows; then as sharp as the screen shows it. */
function copyOf(inHand: boolean, putting: boolean, wanted: PictureSize): PictureSize {
  if (inHand) return 640;
  return putting || wanted === 640 ? 1280 : wanted;
}

function useChoices(paintingId: string | null, tool: string): Choices {
  const [inHand, setInHand] = useState<LivePhoto | null>(null);
  const [cardAt, chooseCard] = useState(0);
  const [adding, setAdding] = useState(false);
  const [lightAsCame, setLightAsCame] = useState(false);
  const [instead, setInstead] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another painting or tool drops what was begun.
  useEffect(() => {
    setInHand(null);
    chooseCard(0);
    setAdding(false);
    setLightAsCame(false);
    setInstead(false);
  }, [paintingId, tool]);
  return useMemo(
    () => ({
      ...{ inHand, setInHand, cardAt, chooseCard, adding, setAdding },
      ...{ lightAsCame, setLightAsCame, instead, setInstead },
    }),
    [inHand, cardAt, adding, lightAsCame, instead],
  );
}

/** Stands inside the live board and the tools. */
export function PhotoDeskProvider({ children }: { children: ReactNode }) {
  const { board, photoOf } = useBoardLive();
  const { tool, paintingId } = useTools();
  const painting = board.pictures.find(({ id }) => id === paintingId) ?? null;
  const line = useLine(board.id, painting?.id ?? null);
  const choices = useChoices(paintingId, tool);
  const { inHand, lightAsCame } = choices;
  const [wanted, wantCopy] = useState<PictureSize>(1280);
  const [beside, setBeside] = useState(true);
  const [overlayShown, setOverlayShown] = useState(false);
  const [asked, setAsked] = useState(0);
  const askLeaf = useCallback(() => setAsked((before) => before + 1), []);
  const stored = painting ? photoOf(painting.id) : null;
  const photo = useMemo(() => inHand ?? stored ?? {}, [inHand, stored]);
  const wish = useMemo(
    () =>
      painting && isCorrected(photo)
        ? { photo, lightAsCame, fullSidePx: Math.max(painting.width, painting.height) }
        : null,
    [painting, photo, lightAsCame],
  );
  const righted = useRighted(line, wish, copyOf(inHand !== null, tool === 'photo', wanted), words.away);
  const desk = useMemo<PhotoDesk>(
    () => ({
      ...choices,
      ...{ painting, line, photo, righted, wantCopy, beside, setBeside },
      ...{ overlayShown, setOverlayShown, asked, askLeaf },
    }),
    [painting, line, photo, righted, choices, beside, overlayShown, asked, askLeaf],
  );
  return <DeskContext value={desk}>{children}</DeskContext>;
}
