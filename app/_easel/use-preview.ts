'use client';
/**
 * The ladder at once while an outline is pulled: the server's own formulas on small copies in this browser.
 *
 * In the flow: moving outline -> [use-preview] -> `preview` of the live board, until the server's result is there.
 */
import { useEffect, useRef } from 'react';
import { useBoardLive, useSetPreview } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { Outline } from '#server/core/contract/setup.ts';
import { measurePrepared } from '#server/core/measure/measure-pair.ts';
import type { Prepared } from '#server/core/measure/prepare.ts';
import { isProblem } from '#server/core/problem.ts';
import { useEasel } from './easel-state.tsx';
import { WHOLE_PICTURE } from './outline-edit.ts';
import { type PreviewSource, previewSetup } from './preview-setup.ts';
import { smallCopy } from './small-copy.ts';

/** The server's result is waited for this long after the hand let go; then its last result counts again. */
const WAIT_MS = 6000;

/** The small copies of both pictures once the outline tool is taken; null until they are there. */
function useCopies(): { current: { reference: Prepared | null; painting: Prepared } | null } {
  const { board } = useBoardLive();
  const { tool, referenceId, paintingId } = useTools();
  const copies = useRef<{ reference: Prepared | null; painting: Prepared } | null>(null);
  useEffect(() => {
    copies.current = null;
    if (tool !== 'outline' || !paintingId) return;
    let wanted = true;
    const reference = referenceId ? smallCopy(board.id, referenceId) : Promise.resolve(null);
    Promise.all([reference, smallCopy(board.id, paintingId)]).then(
      ([there, here]) => {
        if (wanted) copies.current = { reference: there, painting: here };
        if (wanted) warmUp({ reference: there, painting: here });
      },
      () => undefined, // Without copies there is no preview; the server's result comes all the same.
    );
    return () => {
      wanted = false;
    };
  }, [tool, board.id, referenceId, paintingId]);
  return copies;
}

/** Measures once for nothing: the first run of fresh code takes ten times as long as those in a drag. */
function warmUp(copies: { reference: Prepared | null; painting: Prepared }): void {
  const outline: Outline = WHOLE_PICTURE;
  const plane: PlaneView = { id: 'x', name: 'x', kind: 'land', tilt: null, number: 1, unreliable: null };
  const everywhere = new Map([[plane.id, outline]]);
  measured(copies, {
    planes: [plane],
    onReference: copies.reference && everywhere,
    onPainting: everywhere,
    photo: {},
    moving: { kind: 'painting', planeId: plane.id, outline },
  });
}

export function usePreview(): void {
  const { planes, outlinesOf, photoOf, resultNumber } = useBoardLive();
  const { referenceId, paintingId } = useTools();
  const { moving } = useEasel();
  const setPreview = useSetPreview();
  const copies = useCopies();
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
      if (!copies.current || !source.current) return;
      const document = measured(copies.current, { ...source.current, moving: { ...moving, kind } });
      if (document) setPreview({ pictureId: paintingId, document });
    });
    return () => cancelAnimationFrame(frame);
  }, [moving, paintingId, copies, setPreview]);

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

/** The measures, or null while the outline cannot be one. */
function measured(copies: { reference: Prepared | null; painting: Prepared }, source: PreviewSource) {
  try {
    const setup = previewSetup(source);
    return setup && measurePrepared(copies.reference, copies.painting, setup);
  } catch (thrown) {
    if (isProblem(thrown)) return null;
    throw thrown;
  }
}
