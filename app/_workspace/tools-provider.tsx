'use client';
/**
 * Keeps what the hand holds and what the eye is shown: state of this one screen, shared by easel, tray, ladder and talk.
 * IO: remembers the surround in this browser.
 */
import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { LookProvider } from '#app/_look/look-state.tsx';
import { OwnHand } from '#app/_together/own-hand.ts';
import { useOwn } from '#app/_together/use-own.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import {
  type Arrange,
  type Outlining,
  type Squint,
  SURROUNDS,
  type Surround,
  type Tool,
  type Tools,
} from './tools.ts';
import { ToolsHere } from './tools-here.tsx';

const SURROUND_KEY = 'veilstep-surround';

/** The chosen grey, remembered for this browser; a browser that keeps nothing just starts at mid. */
function useRememberedSurround(): [Surround, (surround: Surround) => void] {
  const [surround, setSurround] = useState<Surround>('mid');
  useEffect(() => {
    try {
      const kept = SURROUNDS.find((name) => name === localStorage.getItem(SURROUND_KEY));
      if (kept) setSurround(kept);
    } catch {
      // Storage may be switched off; the choice then lasts as long as the page.
    }
  }, []);
  const choose = useCallback((next: Surround) => {
    setSurround(next);
    try {
      localStorage.setItem(SURROUND_KEY, next);
    } catch {
      // As above.
    }
  }, []);
  return [surround, choose];
}

/** The first reference; of the paintings one's own newest, else the newest. */
function startingPicture(pictures: PictureView[], kind: PictureView['kind'], me: string): string | null {
  const those = pictures.filter((picture) => picture.kind === kind);
  if (kind === 'reference') return those[0]?.id ?? null;
  const own = those.filter(({ painter }) => painter.id === me);
  return (own.at(-1) ?? those.at(-1))?.id ?? null;
}

/**
 * Which picture of a kind is on the easel. It stays when others post newer ones; only when it goes itself does
 * another take its place. A picture just posted may be wished for before the board has it.
 */
function useShownPicture(pictures: PictureView[], kind: PictureView['kind'], me: string) {
  const start = startingPicture(pictures, kind, me);
  const [wanted, setWanted] = useState(start);
  useEffect(() => {
    if (wanted === null && start !== null) setWanted(start);
  }, [wanted, start]);
  const exists = pictures.some((picture) => picture.kind === kind && picture.id === wanted);
  return [exists ? wanted : start, setWanted] as const;
}

interface ToolsProviderProps {
  /** The board's pictures in the order they were posted. */
  pictures: PictureView[];
  /** Id of the person at this screen. */
  me: string;
  children: ReactNode;
}

/** What is looked at, as others may look with this person: every change of it is told to the hand. */
function useLookedAt({ pictures, me }: Omit<ToolsProviderProps, 'children'>, hand: OwnHand) {
  const [referenceId, wantReference] = useShownPicture(pictures, 'reference', me);
  const [paintingId, wantPainting] = useShownPicture(pictures, 'painting', me);
  const [arrange, wantArrange] = useState<Arrange>('beside');
  const [wantedSide, wantSide] = useState<'reference' | 'painting'>('painting');
  const [squint, wantSquint] = useState<Squint>('off');
  // With one picture only, that one is shown whatever side was wanted.
  const side = paintingId === null ? 'reference' : referenceId === null ? 'painting' : wantedSide;
  return {
    ...{ referenceId, setReferenceId: useOwn(hand, wantReference) },
    ...{ paintingId, setPaintingId: useOwn(hand, wantPainting) },
    ...{ arrange, setArrange: useOwn(hand, wantArrange), side, setSide: useOwn(hand, wantSide) },
    ...{ squint, setSquint: useOwn(hand, wantSquint) },
  } as const;
}

export function ToolsProvider({ pictures, me, children }: ToolsProviderProps) {
  const [hand] = useState(() => new OwnHand());
  const lookedAt = useLookedAt({ pictures, me }, hand);
  const [tool, wantTool] = useState<Tool>('look');
  const [taken, setTaken] = useState(0);
  const setTool = useCallback((next: Tool) => {
    wantTool(next);
    setTaken((before) => before + 1);
  }, []);
  const [outlining, setOutlining] = useState<Outlining>('line');
  const [planeId, setPlaneId] = useState<string | null>(null);
  const [markId, setMarkId] = useState<string | null>(null);
  const [surround, setSurround] = useRememberedSurround();
  const [linesShown, setLinesShown] = useState(true);
  const [marksShown, setMarksShown] = useState(true);
  const [tableShown, setTableShown] = useState(false);

  // biome-ignore lint/correctness/useExhaustiveDependencies: what is looked at is spread, by its members.
  const tools = useMemo<Tools>(
    () => ({
      ...{ hand, tool, setTool, taken, outlining, setOutlining, planeId, setPlaneId, markId, setMarkId },
      ...lookedAt,
      ...{ surround, setSurround, linesShown, setLinesShown, marksShown, setMarksShown },
      ...{ tableShown, setTableShown },
    }),
    [
      ...Object.values(lookedAt),
      ...[hand, tool, taken, outlining, planeId, markId, surround, linesShown, marksShown, tableShown],
      ...[setSurround, setTool],
    ],
  );
  return (
    <ToolsHere tools={tools}>
      <LookProvider hand={hand}>{children}</LookProvider>
    </ToolsHere>
  );
}
