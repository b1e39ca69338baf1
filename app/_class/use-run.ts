'use client';
/** What who runs a class can do to it. In the flow: buttons -> [use-run] -> core/class -> class room. */
import { useMemo } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import {
  goOn,
  nextStep,
  nextTurn,
  openToAll,
  setPaused,
  skipTurn,
  startClass,
  stopClass,
  type Turn,
} from '#server/core/class/run.ts';
import type { Lengths } from '#server/core/class/steps.ts';

export interface RunClass {
  start(order: readonly Turn[], lengths: Lengths): void;
  goOn(): void;
  nextStep(): void;
  nextTurn(): void;
  skip(): void;
  hold(held: boolean): void;
  letIn(): void;
  stop(): void;
}

/** Null for who may not run classes here, and until the class room has come. */
export function useRun(): RunClass | null {
  const { runs, paintings } = useBoardLive().class;
  const doc = useRoomDocument('class');
  return useMemo(() => {
    if (!doc || !runs) return null;
    const painterOf = (pictureId: string) => paintings.find(({ id }) => id === pictureId)?.painter.id ?? null;
    return {
      start: (order, lengths) => startClass(doc, order, lengths),
      goOn: () => goOn(doc, painterOf),
      nextStep: () => nextStep(doc, painterOf),
      nextTurn: () => nextTurn(doc, painterOf),
      skip: () => skipTurn(doc, painterOf),
      hold: (held) => setPaused(doc, held),
      letIn: () => openToAll(doc),
      stop: () => stopClass(doc),
    };
  }, [doc, runs, paintings]);
}
