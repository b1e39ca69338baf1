'use client';
/**
 * The ladder at once while an outline is pulled: the server's own formulas on small copies in this browser.
 *
 * In the flow: moving outline -> [use-preview] -> `preview` of the live board, until the server's result is there.
 */
import { useEffect, useRef } from 'react';
import { useBoardLive, useSetPreview } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools.tsx';
import { useEasel } from './easel-state.tsx';
import type { PreviewMeasuring } from './preview-measuring.ts';
import type { PreviewSource } from './preview-setup.ts';

/** The server's result is waited for this long after the hand let go; then its last result counts again. */
const WAIT_MS = 6000;

/** The small copies of both pictures, ready to be measured, once the outline tool is taken; null until then. */
function useMeasuring(): { current: PreviewMeasuring | null } {
  const { board } = useBoardLive();
  const { tool, referenceId, paintingId } = useTools();
  const measuring = useRef<PreviewMeasuring | null>(null);
  useEffect(() => {
    measuring.current = null;
    if (tool !== 'outline' || !paintingId) return;
    let wanted = true;
    // The formulas come with the tool, not with the page: who only looks need not wait for them.
    import('./preview-measuring.ts')
      .then(({ previewMeasuring }) => previewMeasuring(board.id, referenceId, paintingId))
      .then(
        (ready) => {
          if (wanted) measuring.current = ready;
        },
        () => undefined, // Without copies there is no preview; the server's result comes all the same.
      );
    return () => {
      wanted = false;
    };
  }, [tool, board.id, referenceId, paintingId]);
  return measuring;
}

export function usePreview(): void {
  const { planes, outlinesOf, photoOf, resultNumber } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const { moving } = useEasel();
  const setPreview = useSetPreview();
  const measuring = useMeasuring();
  const source = useRef<Omit<PreviewSource, 'moving'> | null>(null);
  source.current = paintingId
    ? {
        planes,
        onReference: referenceId ? outlinesOf(referenceId) : null,
        onPainting: outlinesOf(paintingId),
        photo: photoOf(paintingId),
      }
    : null;
  const number = paintingId ? resultNumber(paintingId) : null;

  useEffect(() => {
    if (!moving || !paintingId) return;
    const kind = moving.pictureId === paintingId ? 'painting' : 'reference';
    const frame = requestAnimationFrame(() => {
      if (!source.current) return;
      const document = measuring.current?.({ ...source.current, moving: { ...moving, kind } });
      if (document) setPreview({ pictureId: paintingId, document });
    });
    return () => cancelAnimationFrame(frame);
  }, [moving, paintingId, measuring, setPreview]);

  // A newer result takes the preview's place; none within a while, and the last one does.
  // biome-ignore lint/correctness/useExhaustiveDependencies: `number` is what ends a preview.
  useEffect(() => {
    if (!moving) setPreview(null);
  }, [number, paintingId, setPreview]);
  useEffect(() => {
    if (moving) return;
    const timer = setTimeout(() => setPreview(null), WAIT_MS);
    return () => clearTimeout(timer);
  }, [moving, setPreview]);
}
