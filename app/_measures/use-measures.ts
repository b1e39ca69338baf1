'use client';
/**
 * The measures of the painting on the easel, fetched again whenever the server has a new result.
 *
 * In the flow: result number (live) -> [fetch] -> ladder. While the server is still measuring it asks again,
 * gently, and the last figures stay on the screen. IO: HTTP.
 */
import { useCallback, useEffect, useState } from 'react';
import { fetchMeasures, sentenceOf } from '#app/_api/client.ts';
import type { MeasureDocument } from '#server/core/contract/measures.ts';

export interface MeasuresShown {
  document: MeasureDocument | null;
  /** What the server says it is doing, or null. */
  pending: string | null;
  /** A refusal's sentence, or null. */
  trouble: string | null;
  again(): void;
}

export type Fetched = Omit<MeasuresShown, 'again'> & { pictureId: string | null };

/** Pauses between asking again while a measurement is under way, milliseconds; the last one repeats. */
const PAUSES_MS = [400, 700, 1200, 2000, 3000];

const NOTHING: Fetched = { pictureId: null, document: null, pending: null, trouble: null };

/** Resolves after a while, or at once when the signal is aborted. */
function pause(durationMs: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, durationMs);
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
      resolve();
    });
  });
}

/** Asks until there is a document or a refusal; `show` hears of every answer. */
export async function followMeasures(
  place: { boardId: string; pictureId: string },
  signal: AbortSignal,
  show: (answer: Partial<Fetched>) => void,
): Promise<void> {
  for (let round = 0; !signal.aborted; round += 1) {
    try {
      const answer = await fetchMeasures(place.boardId, place.pictureId, signal);
      if (!('pending' in answer)) {
        show({ document: answer, pending: null, trouble: null });
        return;
      }
      show({ pending: answer.pending, trouble: null });
    } catch (thrown) {
      if (signal.aborted) return;
      show({ pending: null, trouble: sentenceOf(thrown) });
      return;
    }
    await pause(PAUSES_MS[Math.min(round, PAUSES_MS.length - 1)] ?? 3000, signal);
  }
}

/**
 * @param pictureId The painting, or null when there is none.
 * @param resultNumber Rises with every result of that painting.
 * @param planeCount Planes on the board; without any there is nothing to ask for.
 */
export function useMeasures(
  boardId: string,
  pictureId: string | null,
  resultNumber: number | null,
  planeCount: number,
): MeasuresShown {
  const [fetched, setFetched] = useState<Fetched>(NOTHING);
  const [round, setRound] = useState(0);
  const hasPlanes = planeCount > 0;
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new result number or a wish to try again is the reason to fetch.
  useEffect(() => {
    if (!pictureId || !hasPlanes) return;
    const controller = new AbortController();
    void followMeasures({ boardId, pictureId }, controller.signal, (answer) => {
      if (controller.signal.aborted) return;
      setFetched((before) => ({
        ...(before.pictureId === pictureId ? before : NOTHING),
        ...answer,
        pictureId,
      }));
    });
    return () => controller.abort();
  }, [boardId, pictureId, resultNumber, hasPlanes, round]);

  const again = useCallback(() => setRound((before) => before + 1), []);
  const mine = fetched.pictureId === pictureId && hasPlanes ? fetched : NOTHING;
  return { document: mine.document, pending: mine.pending, trouble: mine.trouble, again };
}
