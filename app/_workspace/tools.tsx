'use client';
/**
 * What the hand holds and what the eye is shown: state of this one screen, shared by easel, tray, ladder and talk.
 *
 * Nothing here is seen by other people (that lives in the live documents). The easel reads `tool`, `planeId`,
 * `markId`, `referenceId`, `paintingId`, `arrange` and `side`; its pictures take `filter: var(--picture-filter)`,
 * which the workspace sets from `squint`. IO: remembers the surround in this browser.
 */
import { createContext, type ReactNode, useCallback, useContext, useEffect, useMemo, useState } from 'react';
import type { PictureView } from '#server/core/contract/responses.ts';

/** look = move about; outline = planes; mark = pins; draw = freehand strokes; photo = the photo's corners. */
export const TOOLS = ['look', 'outline', 'mark', 'draw', 'photo'] as const;
export type Tool = (typeof TOOLS)[number];

/** Grey round the pictures: mid is L* 55, dark L* 25, light L* 85. */
export const SURROUNDS = ['mid', 'dark', 'light'] as const;
export type Surround = (typeof SURROUNDS)[number];

/** off = as it is; blur = half-closed eyes; grey = value alone; both = both. */
export const SQUINTS = ['off', 'blur', 'grey', 'both'] as const;
export type Squint = (typeof SQUINTS)[number];

/** beside = the two pictures next to each other; over = one over the other with an edge to drag. */
export type Arrange = 'beside' | 'over';

export interface Tools {
  tool: Tool;
  setTool(tool: Tool): void;
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

const ToolsContext = createContext<Tools | null>(null);

/** @throws Error outside `ToolsProvider`: a bug. */
export function useTools(): Tools {
  const tools = useContext(ToolsContext);
  if (!tools) throw new Error('useTools is used outside ToolsProvider.');
  return tools;
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

/** The last posted picture of a kind; the first reference, the newest painting. */
function startingPicture(pictures: PictureView[], kind: PictureView['kind']): string | null {
  const those = pictures.filter((picture) => picture.kind === kind);
  return (kind === 'reference' ? those[0] : those.at(-1))?.id ?? null;
}

/** The wanted picture while it exists, else the one the board starts with. */
function shownPicture(wanted: string | null, pictures: PictureView[], kind: PictureView['kind']) {
  const exists = pictures.some((picture) => picture.kind === kind && picture.id === wanted);
  return exists ? wanted : startingPicture(pictures, kind);
}

/** @param pictures The board's pictures in the order they were posted; a chosen one that goes is replaced. */
export function ToolsProvider({ pictures, children }: { pictures: PictureView[]; children: ReactNode }) {
  const [tool, setTool] = useState<Tool>('look');
  const [planeId, setPlaneId] = useState<string | null>(null);
  const [markId, setMarkId] = useState<string | null>(null);
  const [wantedReference, setReferenceId] = useState<string | null>(null);
  const [wantedPainting, setPaintingId] = useState<string | null>(null);
  const [arrange, setArrange] = useState<Arrange>('beside');
  const [side, setSide] = useState<'reference' | 'painting'>('painting');
  const [surround, setSurround] = useRememberedSurround();
  const [squint, setSquint] = useState<Squint>('off');
  const [linesShown, setLinesShown] = useState(true);
  const [marksShown, setMarksShown] = useState(true);
  const [tableShown, setTableShown] = useState(false);
  const referenceId = shownPicture(wantedReference, pictures, 'reference');
  const paintingId = shownPicture(wantedPainting, pictures, 'painting');

  const tools = useMemo<Tools>(
    () => ({
      ...{ tool, setTool, planeId, setPlaneId, markId, setMarkId },
      ...{ referenceId, setReferenceId, paintingId, setPaintingId },
      ...{ arrange, setArrange, side, setSide, surround, setSurround, squint, setSquint },
      ...{ linesShown, setLinesShown, marksShown, setMarksShown, tableShown, setTableShown },
    }),
    [
      tool,
      planeId,
      markId,
      referenceId,
      paintingId,
      arrange,
      side,
      surround,
      setSurround,
      squint,
      linesShown,
      marksShown,
      tableShown,
    ],
  );
  return <ToolsContext value={tools}>{children}</ToolsContext>;
}
