'use client';
/**
 * What the frame under the hand is judged by, from a worker; figures then follow the hand in the page itself.
 *
 * In the flow: planes of the photograph -> frame worker -> [use-crop-scene] -> frame figures. IO: a worker.
 */
import { useEffect, useMemo, useState } from 'react';
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { CropScene } from '#server/core/plan/crops/crop-scene.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import type { SceneQuestion } from './frame.worker.ts';

interface SceneShown {
  /** Null until it has come. */
  scene: CropScene | null;
  /** Whether the small copy could not be had. */
  failed: boolean;
}

const NOTHING: SceneShown = { scene: null, failed: false };

export function useCropScene(): SceneShown {
  const { board, planes, outlinesOf, ready } = useBoardLive();
  const { picture } = usePlanChoice();
  const [shown, setShown] = useState(NOTHING);
  const pictureId = picture?.id ?? null;
  const outlines = pictureId ? outlinesOf(pictureId) : null;
  const outlined = useMemo(
    () =>
      planes.flatMap(({ id, name, kind }) => {
        const outline = outlines?.get(id);
        return outline ? [{ name, kind, outline }] : [];
      }),
    [planes, outlines],
  );
  const [line] = useState(
    () =>
      new QuestionLine<SceneQuestion, CropScene>(
        () => new Worker(new URL('./frame.worker.ts', import.meta.url), { type: 'module' }),
      ),
  );
  useEffect(() => () => line.close(), [line]);
  useEffect(() => {
    if (!pictureId || !ready) return;
    let wanted = true;
    const address = new URL(losslessAddress(board.id, pictureId), location.href).href;
    line.ask({ address, planes: outlined }).then(
      (scene) => wanted && setShown({ scene, failed: false }),
      () => wanted && setShown({ scene: null, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, [line, board.id, pictureId, ready, outlined]);
  return shown;
}
