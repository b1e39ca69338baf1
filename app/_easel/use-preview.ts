'use client';
/**
 * The ladder at once while an outline is pulled: the server's own formulas on small copies in this browser.
 *
 * In the flow: moving outline -> [use-preview] -> `useShownPreview`, until the server's result is there.
 */
import { useEffect, useRef } from 'react';
import { useFrameOf } from '#app/_framed/use-frame-of.ts';
import { useBoardLive, useSetPreview } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import { useEasel } from './easel-state.tsx';
import { PreviewLine } from './preview-line.ts';

/** The server's result is waited for this long after the hand let go; then its last result counts again. */
const WAIT_MS = 6000;

/** The line to the measuring worker while the outline tool is in hand; null otherwise. */
function useLine(frame: Box | undefined): { current: PreviewLine | null } {
  const { board, photoOf } = useBoardLive();
  const { tool, referenceId, paintingId } = useTools();
  const setPreview = useSetPreview();
  const line = useRef<PreviewLine | null>(null);
  const photo = paintingId ? photoOf(paintingId) : null;
  // By what it says: the pictures are fetched and put right anew only when corners or cards changed.
  const corrected = JSON.stringify([photo?.corners, photo?.cards]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `corrected` stands for `photo`.
  useEffect(() => {
    if ((tool !== 'outline' && tool !== 'carry') || !paintingId || !photo) return;
    const opened = new PreviewLine((document) => setPreview({ pictureId: paintingId, document }));
    line.current = opened;
    // Without copies there is no preview; the server's result comes all the same.
    opened
      .take(board.id, { referenceId, paintingId, photo, ...(frame ? { frame } : {}) })
      .catch(() => opened.forget());
    return () => {
      line.current = null;
      opened.close();
    };
  }, [tool, board.id, referenceId, paintingId, corrected, frame, setPreview]);
  return line;
}

export function usePreview(): void {
  const { planes, outlinesOf, photoOf, resultNumber } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const { moving } = useEasel();
  const setPreview = useSetPreview();
  const { frame: kept } = useFrameOf(paintingId);
  const frame = kept?.pictureId === referenceId ? kept.box : undefined;
  const line = useLine(frame);
  const number = paintingId ? resultNumber(paintingId) : null;

  // biome-ignore lint/correctness/useExhaustiveDependencies: the rest is read as it is when the outline moves.
  useEffect(() => {
    if (!moving || !paintingId) return;
    line.current?.ask({
      planes,
      onReference: referenceId ? outlinesOf(referenceId) : null,
      onPainting: outlinesOf(paintingId),
      photo: photoOf(paintingId),
      frame,
      moving: {
        outlines: moving.outlines,
        kind: moving.pictureId === paintingId ? 'painting' : 'reference',
      },
    });
  }, [moving]);

  // A newer result takes the preview's place; none within a while, and the last one does.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `number` is what ends a preview.
  useEffect(() => {
    if (moving) return;
    line.current?.forget();
    setPreview(null);
  }, [number, paintingId, setPreview]);
  useEffect(() => {
    if (moving) return;
    const timer = setTimeout(() => setPreview(null), WAIT_MS);
    return () => clearTimeout(timer);
  }, [moving, setPreview]);
}
