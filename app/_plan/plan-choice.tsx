'use client';
/**
 * What is looked at on the plan page: which photograph, which part, which kept frame of it.
 *
 * In the flow: plan-page -> [plan-choice] -> stage and parts. Of this screen alone; nothing of it is told to others.
 */
import { createContext, type ReactNode, useContext, useMemo, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';

export const PLAN_PARTS = ['frames', 'weight', 'values', 'rearrange', 'ladder'] as const;
export type PlanPart = (typeof PLAN_PARTS)[number];

export interface PlanChoice {
  /** The photographs of the board, as they were posted. */
  photographs: readonly PictureView[];
  /** The one that is planned from, or null when the board has none. */
  picture: PictureView | null;
  setPictureId(id: string): void;
  part: PlanPart;
  setPart(part: PlanPart): void;
  /** Id of the kept frame that is looked at; null = the whole photograph. */
  frameId: string | null;
  setFrameId(id: string | null): void;
}

const Context = createContext<PlanChoice | null>(null);

/** @throws Error outside a `PlanChoiceProvider`: a bug. */
export function usePlanChoice(): PlanChoice {
  const choice = useContext(Context);
  if (!choice) throw new Error('The plan is used outside PlanChoiceProvider.');
  return choice;
}

/** @param askedId The photograph that the address names; another one when it is not there. */
export function PlanChoiceProvider({ askedId, children }: { askedId: string | null; children: ReactNode }) {
  const { board } = useBoardLive();
  const [pictureId, setPicture] = useState(askedId);
  const [part, setPart] = useState<PlanPart>('frames');
  const [frameId, setFrameId] = useState<string | null>(null);
  const choice = useMemo<PlanChoice>(() => {
    const photographs = board.pictures.filter(({ kind }) => kind === 'reference');
    return {
      photographs,
      picture: photographs.find(({ id }) => id === pictureId) ?? photographs[0] ?? null,
      setPictureId: (id) => {
        setPicture(id);
        setFrameId(null);
      },
      ...{ part, setPart, frameId, setFrameId },
    };
  }, [board.pictures, pictureId, part, frameId]);
  return <Context value={choice}>{children}</Context>;
}
