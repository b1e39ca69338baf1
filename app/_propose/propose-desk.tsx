'use client';
/**
 * What the parts that find planes share: whether groupings are being chosen, which one is shown on the easel, what was
 * found so far. Nothing here is seen by others.
 *
 * In the flow: easel bar, keys, plane list -> [propose-desk] -> chooser, easel. IO: a worker, through its line.
 */
import { createContext, type ReactNode, useCallback, useContext, useMemo, useState } from 'react';
import type { Grouping } from './groupings.ts';
import { ProposalLine } from './proposal-line.ts';

/** A grouping laid over a picture to look at. */
export interface Shown {
  pictureId: string;
  grouping: Grouping;
}

export interface ProposeDesk {
  line: ProposalLine;
  /** Asked for on a board that has planes; a bare board is always offered them. */
  open: boolean;
  close(): void;
  /** Whether groupings are on the screen, or on their way. */
  choosing: boolean;
  setChoosing(choosing: boolean): void;
  /** Rises each time somebody asks for the planes: the leaf turns, the groupings take the keys. */
  asked: number;
  ask(): void;
  shown: Shown | null;
  show(shown: Shown | null): void;
}

const DeskContext = createContext<ProposeDesk | null>(null);

/** @throws Error outside `ProposeDeskProvider`: a bug. */
export function useProposeDesk(): ProposeDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useProposeDesk is used outside ProposeDeskProvider.');
  return desk;
}

export function ProposeDeskProvider({ children }: { children: ReactNode }) {
  const [line] = useState(() => new ProposalLine());
  const [open, setOpen] = useState(false);
  const [choosing, setChoosing] = useState(false);
  const [asked, setAsked] = useState(0);
  const [shown, show] = useState<Shown | null>(null);
  const close = useCallback(() => setOpen(false), []);
  const ask = useCallback(() => {
    setOpen(true);
    setAsked((before) => before + 1);
  }, []);
  const desk = useMemo<ProposeDesk>(
    () => ({ line, open, close, choosing, setChoosing, asked, ask, shown, show }),
    [line, open, close, choosing, asked, ask, shown],
  );
  return <DeskContext value={desk}>{children}</DeskContext>;
}
