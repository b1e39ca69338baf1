'use client';
/**
 * The plan of the chosen photograph as the server worked it out, fetched again when planes, air or conditions change.
 *
 * In the flow: setup room -> [plan-document] -> frames, weight, ladder. While the server is at work it is asked again,
 * gently, and the last plan stays on the screen. IO: HTTP.
 */
import { createContext, type ReactNode, useContext, useEffect, useState } from 'react';
import { fetchPlan, sentenceOf } from '#app/_api/client.ts';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PicturePlan } from '#server/core/plan/plan-picture.ts';
import { usePlanChoice } from './plan-choice.tsx';

export interface PlanShown {
  plan: PicturePlan | null;
  /** What the server says it is doing, or null. */
  pending: string | null;
  /** A refusal's sentence, or null. */
  trouble: string | null;
}

const NOTHING: PlanShown = { plan: null, pending: null, trouble: null };
/** Pauses between asking again, milliseconds; the last one repeats. */
const PAUSES_MS = [500, 800, 1200, 2000];
/** After a change this long is waited for the next one, milliseconds. */
const QUIET_MS = 500;

const Context = createContext<PlanShown | null>(null);

/** @throws Error outside a `PlanDocumentProvider`: a bug. */
export function usePlanDocument(): PlanShown {
  const shown = useContext(Context);
  if (!shown) throw new Error('The plan is used outside PlanDocumentProvider.');
  return shown;
}

function pause(durationMs: number, signal: AbortSignal): Promise<void> {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, durationMs);
    signal.addEventListener('abort', () => {
      clearTimeout(timer);
      resolve();
    });
  });
}

interface Place {
  boardId: string;
  pictureId: string;
}

async function follow(
  { boardId, pictureId }: Place,
  signal: AbortSignal,
  show: (answer: Partial<PlanShown>) => void,
): Promise<void> {
  for (let round = 0; !signal.aborted; round++) {
    try {
      const answer = await fetchPlan(boardId, pictureId, signal);
      if (!('pending' in answer)) return show({ plan: answer, pending: null, trouble: null });
      show({ pending: answer.pending, trouble: null });
    } catch (thrown) {
      if (!signal.aborted) show({ pending: null, trouble: sentenceOf(thrown) });
      return;
    }
    await pause(PAUSES_MS[Math.min(round, PAUSES_MS.length - 1)] ?? 2000, signal);
  }
}

export function PlanDocumentProvider({ children }: { children: ReactNode }) {
  const { board, planes, outlinesOf, conditions, air, ready } = useBoardLive();
  const { picture } = usePlanChoice();
  const pictureId = picture?.id ?? null;
  const [fetched, setFetched] = useState<{ pictureId: string | null; shown: PlanShown }>({
    pictureId: null,
    shown: NOTHING,
  });
  const outlines = pictureId ? outlinesOf(pictureId) : null;
  const airOfPicture = pictureId ? air.get(pictureId) : undefined;
  // biome-ignore lint/correctness/useExhaustiveDependencies: planes, outlines, conditions and air are why it is fetched again.
  useEffect(() => {
    if (!pictureId || !ready) return;
    const controller = new AbortController();
    const { signal } = controller;
    const show = (answer: Partial<PlanShown>) => {
      if (signal.aborted) return;
      setFetched((before) => ({
        pictureId,
        shown: { ...(before.pictureId === pictureId ? before.shown : NOTHING), ...answer },
      }));
    };
    const quiet = setTimeout(() => void follow({ boardId: board.id, pictureId }, signal, show), QUIET_MS);
    return () => {
      clearTimeout(quiet);
      controller.abort();
    };
  }, [board.id, pictureId, ready, planes, outlines, conditions, airOfPicture]);
  return <Context value={fetched.pictureId === pictureId ? fetched.shown : NOTHING}>{children}</Context>;
}
