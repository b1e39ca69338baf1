'use client';
/**
 * A drag of something that several people may drag: held for the others while it lasts, stored when let go.
 *
 * In the flow: gestures -> [use-held-drag] -> outline hand, photo hand. What is dragged is a copy; the keeper puts
 * only what moved onto what is stored by then.
 */
import { useEffect, useRef, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useEasel } from './easel-state.tsx';
import type { Hand, HandPoint } from './hand.ts';

interface HeldDrag<T> {
  /** Name of the thing for the others, such as `outline/<pictureId>/<planeId>`. */
  what: string;
  /** What to say when that person has it already. */
  heldSentence(person: string): string;
  /** Whether a drag that begins here takes it. */
  takes(at: HandPoint): boolean;
  begin(at: HandPoint): T | null;
  /** The copy after the hand went from `from` to `to`. */
  moved(copy: T, from: HandPoint, to: HandPoint): T;
  /** Stores it; what takes a moment keeps the copy under the eye until then. */
  keep(copy: T): void | Promise<void>;
}

export interface Held<T> {
  copy: T;
  hand: HandPoint;
}

/** @returns What is under the hand, or null, and the drag for the hand. */
export function useHeldDrag<T>(use: HeldDrag<T>): { held: Held<T> | null; drag: NonNullable<Hand['drag']> } {
  const { heldBy, hold, whenFree } = useBoardLive();
  const { setSentence } = useEasel();
  const [held, setHeld] = useState<Held<T> | null>(null);
  const now = useRef<Held<T> | null>(null);
  /** The newest keeper: others may have changed what is stored while the hand was moving. */
  const latest = useRef(use);
  latest.current = use;
  // A tool that is laid down in the middle of a drag lets go.
  const letGoNow = useRef(hold);
  letGoNow.current = hold;
  useEffect(
    () => () => {
      if (now.current) letGoNow.current(null);
    },
    [],
  );
  const set = (next: Held<T> | null) => {
    now.current = next;
    setHeld(next);
  };
  const drag: NonNullable<Hand['drag']> = {
    takes: use.takes,
    start(at) {
      const holder = heldBy(use.what);
      if (holder) return setSentence(use.heldSentence(holder));
      const copy = use.begin(at);
      if (copy === null) return;
      hold(use.what);
      set({ copy, hand: at });
    },
    move(at) {
      const last = now.current;
      if (last) set({ copy: use.moved(last.copy, last.hand, at), hand: at });
    },
    end() {
      const last = now.current;
      if (!last) return;
      now.current = null;
      whenFree(use.what, () => {
        const kept = latest.current.keep(last.copy);
        const letGo = () => {
          // By then the hand may have taken hold again.
          if (now.current !== null) return;
          setHeld(null);
          hold(null);
        };
        if (kept) void kept.finally(letGo);
        else letGo();
      });
    },
    cancel() {
      set(null);
      hold(null);
    },
  };
  return { held, drag };
}
