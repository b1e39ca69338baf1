'use client';
/**
 * What the hand holds and what the eye is shown: state of this one screen, shared by easel, tray, ladder and talk.
 *
 * Nothing here is seen by other people (that lives in the live documents). The easel reads `tool`, `planeId`,
 * `markId`, `referenceId`, `paintingId`, `arrange` and `side`; its pictures are seen
 * without colour where the page says `data-grey`, which the workspace sets from `squint`. IO: remembers the surround in this browser.
 */
import { type ReactNode, useCallback, useEffect, useMemo, useState } from 'react';
import { LookProvider } from '#app/_look/look-state.tsx';
import { OwnHand } from '#app/_together/own-hand.ts';
import { useOwn } from '#app/_together/use-own.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { ToolsHere } from './tools-here.tsx';

/**
 * look = move about; outline = planes; mark = marks of every kind; photo = the photo's corners;
 * patch = take patches of colour; guess = guess the value of a spot; air, focus = point at the air colour, at the
 * focus; carry = place planes that are carried over (these three are taken in hand by buttons elsewhere).
 */
export const TOOLS = ['look', 'outline', 'mark', 'photo', 'patch', 'guess', 'air', 'focus', 'carry'] as const;
export type Tool = (typeof TOOLS)[number];

/** Grey round the pictures: mid is L* 55, dark L* 25, light L* 85. */
export const SURROUNDS = ['mid', 'dark', 'light'] as const;
export type Surround = (typeof SURROUNDS)[number];

/** off = as it is; blur = half-closed eyes; grey = value alone; both = both. */
export const SQUINTS = ['off', 'blur', 'grey', 'both'] as const;
export type Squint = (typeof SQUINTS)[number];

/** beside = the two pictures next to each other; over = one over the other with an edge to drag. */
export type Arrange = 'beside' | 'over';

/** What the hand does to an outline: draws or pulls its line, adds to the plane, takes away from it, splits it. */
export const OUTLININGS = ['line', 'add', 'away', 'split'] as const;
export type Outlining = (typeof OUTLININGS)[number];

export interface Tools {
  /** Told of every change of what is looked at: pictures, arrangement, squint, view. */
  hand: OwnHand;
  tool: Tool;
  setTool(tool: Tool): void;
  /** How often a tool was taken: taking the one in hand again brings back the leaf that goes with it. */
  taken: number;
  outlining: Outlining;
  setOutlining(outlining: Outlining): void;
  /** The plane being outlined or pointed at in the ladder; null = none. */
  planeId: string | null;
  setPlaneId(planeId: string | null): void;
  /** The mark opened on picture and in the talk at once; null = none. */
  markId: string | null;
  setMarkId(markId: string | null): void;
  /** Pictures on the easel; null = the board has none of that kind. */
  referenceId: string | null;
  setReferenceId(pictureId: string | null): void;
  paintingId: string | null;
  setPaintingId(pictureId: string | null): void;
  arrange: Arrange;
  setArrange(arrange: Arrange): void;
  /** Which of the two a narrow screen shows. */
  side: 'reference' | 'painting';
  setSide(side: 'reference' | 'painting'): void;
  surround: Surround;
  setSurround(surround: Surround): void;
  squint: Squint;
  setSquint(squint: Squint): void;
  /** Outlines and plane numbers drawn over the pictures. */
  linesShown: boolean;
  setLinesShown(shown: boolean): void;
  /** Pins and strokes drawn over the pictures. */
  marksShown: boolean;
  setMarksShown(shown: boolean): void;
  /** The ladder as a text table. */
  tableShown: boolean;
  setTableShown(shown: boolean): void;
}

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
