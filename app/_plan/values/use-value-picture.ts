'use client';
/**
 * The values of the chosen photograph or frame, worked out in a worker when they are first wanted.
 *
 * In the flow: plan choice -> values worker -> [use-value-picture] -> thumbnails, stage. IO: a worker.
 */
import { useEffect, useState } from 'react';
import { pictureAddress } from '#app/_api/client.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { QuestionLine } from '#app/_workers/question-line.ts';
import type { ValuePicture } from '#server/core/look/value-plan.ts';
import type { Box } from '#server/core/plan/crops/crop-scene.ts';
import type { ValuesQuestion } from './values.worker.ts';

export interface ValuesShown {
  /** Null until they are there. */
  picture: ValuePicture | null;
  failed: boolean;
}

const NOTHING: ValuesShown = { picture: null, failed: false };

/** @param squint Sigma of the softening, share of the frame's long side. */
export function useValuePicture(pictureId: string, box: Box, squint: number): ValuesShown {
  const { board } = useBoardLive();
  const [shown, setShown] = useState(NOTHING);
  const [line] = useState(
    () =>
      new QuestionLine<ValuesQuestion, ValuePicture>(
        () => new Worker(new URL('./values.worker.ts', import.meta.url), { type: 'module' }),
      ),
  );
  useEffect(() => () => line.close(), [line]);
  useEffect(() => {
    let wanted = true;
    const address = new URL(pictureAddress(board.id, pictureId, 1280), location.href).href;
    line.ask({ address, box, squint }).then(
      (picture) => wanted && setShown({ picture, failed: false }),
      () => wanted && setShown({ picture: null, failed: true }),
    );
    return () => {
      wanted = false;
    };
  }, [line, board.id, pictureId, box, squint]);
  return shown;
}
