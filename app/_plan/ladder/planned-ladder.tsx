'use client';
/**
 * The planned ladder of what is looked at: wishes and handles as they live with the board, what is being moved just now,
 * and the plan that comes of it.
 *
 * In the flow: setup room + hand -> [planned-ladder] -> plan worker -> chart with handles, panel, preview. Whoever may not
 * write the plan tries wishes out on this screen alone. IO: a worker; the `setup` room.
 */
import { createContext, type ReactNode, useContext, useEffect, useMemo, useState } from 'react';
import type * as Y from 'yjs';
import { losslessAddress } from '#app/_easel/picture-copies.tsx';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { PerDocument } from '#app/_live/read-board.ts';
import type { HandlePart, PlaneHandle } from '#server/core/contract/plan-wishes.ts';
import {
  type LiveWishes,
  NO_WISHES,
  readHandles,
  readWishes,
  replaceHandles,
  setHandle,
  setWishes,
} from '#server/core/live/plan/wishes.ts';
import { WHOLE } from '#server/core/plan/in-frame.ts';
import type { PlanGround, PlanWish } from '#server/core/plan/ladder/plan-ground.ts';
import { useKeptFrames } from '../kept-frames.ts';
import { usePlanChoice } from '../plan-choice.tsx';
import { PlanLine } from './plan-line.ts';
import type { PlannedView } from './planned-view.ts';

export type Wished = Pick<LiveWishes, 'count' | 'air' | 'strength'>;
type Handles = ReadonlyMap<string, PlaneHandle>;

/** A wish or a part of a handle under the hand. */
export type Moving = { wishes: Partial<Wished> } | { planeId: string; part: HandlePart; amount: number };

export interface PlannedLadder {
  /** Null until it has come, or where no plane is outlined. */
  view: PlannedView | null;
  /** False while `view` still shows what was asked before: not what is wished for now. */
  current: boolean;
  /** Why nothing can be planned, or null. */
  sentence: string | null;
  failed: boolean;
  wishes: Wished;
  handles: Handles;
  /** What is planned from; null where no plane is outlined on the photograph. */
  ground: PlanGround | null;
  wish: PlanWish;
  /** Shows what the hand does without writing it; null = the hand let go. */
  move(moving: Moving | null): void;
  /** One step of this person, for all; where they may not write, on this screen alone. */
  setWishes(change: Partial<Wished>): void;
  /** @param amount Null = as the air leaves it. */
  setHandle(planeId: string, part: HandlePart, amount: number | null): void;
  /** Everything by hand goes, of one plane or of all. */
  clearHandles(planeId?: string): void;
}

const Context = createContext<PlannedLadder | null>(null);

/** @throws Error outside a `PlannedLadderProvider`: a bug. */
export function usePlannedLadder(): PlannedLadder {
  const planned = useContext(Context);
  if (!planned) throw new Error('The planned ladder is used outside PlannedLadderProvider.');
  return planned;
}

const wishesIn = new PerDocument((doc) => readWishes(doc));
const handlesIn = new PerDocument((doc) => readHandles(doc));
const NO_HANDLES: Handles = new Map();

function withPart(handles: Handles, planeId: string, part: HandlePart, amount: number | null): Handles {
  const { [part]: _, ...rest } = handles.get(planeId) ?? {};
  const handle = amount === null ? rest : { ...rest, [part]: amount };
  return new Map([...handles, [planeId, handle]]);
}

/** @param planeId Left out = of all planes. */
function without(handles: Handles, planeId: string | undefined): Handles {
  return new Map([...handles].filter(([id]) => planeId !== undefined && id !== planeId));
}

/** What a ladder is planned from; null where nothing is outlined. */
function useGround(): PlanGround | null {
  const { planes, outlinesOf, air } = useBoardLive();
  const { picture } = usePlanChoice();
  const { chosen } = useKeptFrames();
  const outlines = picture ? outlinesOf(picture.id) : null;
  const picked = picture ? (air.get(picture.id) ?? null) : null;
  const box = chosen?.box ?? WHOLE;
  return useMemo(() => {
    const asked = planes.flatMap(({ id, name, kind }) => {
      const outline = outlines?.get(id);
      return outline ? [{ id, name, kind, outline }] : [];
    });
    return asked.length > 0 ? { planes: asked, air: picked, box } : null;
  }, [planes, outlines, picked, box]);
}

interface Answered {
  /** Of which photograph; another one's is not shown. */
  pictureId: string | null;
  view: PlannedView | null;
  sentence: string | null;
  failed: boolean;
  /** What it answers. */
  asked: { ground: PlanGround; wish: PlanWish } | null;
}

const NOT_YET: Answered = { pictureId: null, view: null, sentence: null, failed: false, asked: null };

/** The worker's answer to the newest question; the last one stays until it comes. */
function useAnswer(ground: PlanGround | null, wish: PlanWish): Answered {
  const { board, ready } = useBoardLive();
  const { picture } = usePlanChoice();
  const [answered, setAnswered] = useState(NOT_YET);
  const pictureId = picture?.id ?? null;
  const [line, setLine] = useState<PlanLine | null>(null);
  useEffect(() => {
    const opened = new PlanLine(
      (answer, question) => {
        const asked = question.ask === 'ladder' ? question : null;
        if ('planned' in answer) setAnswered({ ...NOT_YET, pictureId, asked, view: answer.planned });
        else if ('sentence' in answer) setAnswered({ ...NOT_YET, pictureId, sentence: answer.sentence });
      },
      () => setAnswered({ ...NOT_YET, pictureId, failed: true }),
    );
    setLine(opened);
    return () => opened.close();
  }, [pictureId]);
  useEffect(() => {
    if (!line || !ready || !pictureId || !ground) return;
    const address = new URL(losslessAddress(board.id, pictureId), location.href).href;
    line.ask({ ask: 'ladder', address, ground, wish });
  }, [line, ready, board.id, pictureId, ground, wish]);
  return ground && answered.pictureId === pictureId ? answered : NOT_YET;
}

/** What is tried out on this screen alone. */
interface Tried {
  wishes: Partial<Wished>;
  handles: Handles;
}

/** What may be written goes into the room, all else stays on this screen. */
function writersOf(
  doc: Y.Doc | null,
  mayWrite: boolean,
  setTried: (change: (before: Tried) => Tried) => void,
): Pick<PlannedLadder, 'setWishes' | 'setHandle' | 'clearHandles'> {
  if (doc && mayWrite) {
    return {
      setWishes: (change) => setWishes(doc, change),
      setHandle: (planeId, part, amount) => setHandle(doc, planeId, part, amount),
      clearHandles: (planeId) => replaceHandles(doc, without(readHandles(doc), planeId)),
    };
  }
  return {
    setWishes: (change) => setTried((before) => ({ ...before, wishes: { ...before.wishes, ...change } })),
    setHandle: (planeId, part, amount) =>
      setTried((before) => ({ ...before, handles: withPart(before.handles, planeId, part, amount) })),
    clearHandles: (planeId) =>
      setTried((before) => ({ ...before, handles: without(before.handles, planeId) })),
  };
}

/** Wishes and handles as written, as tried out here, and under the hand. */
function useWishes(doc: Y.Doc | null, mayWrite: boolean) {
  const [tried, setTried] = useState<Tried>({ wishes: {}, handles: NO_HANDLES });
  const [moving, move] = useState<Moving | null>(null);
  const written = doc ? wishesIn.of(doc) : NO_WISHES;
  const byHand = doc ? handlesIn.of(doc) : NO_HANDLES;
  const wishes = useMemo<Wished>(() => {
    const { count, air, strength } = written;
    const under = moving && 'wishes' in moving ? moving.wishes : {};
    return { ...{ count, air, strength }, ...(mayWrite ? {} : tried.wishes), ...under };
  }, [written, tried.wishes, moving, mayWrite]);
  const handles = useMemo<Handles>(() => {
    const own = mayWrite || tried.handles.size === 0 ? byHand : new Map([...byHand, ...tried.handles]);
    return moving && 'planeId' in moving ? withPart(own, moving.planeId, moving.part, moving.amount) : own;
  }, [byHand, tried.handles, moving, mayWrite]);
  const write = useMemo(() => writersOf(doc, mayWrite, setTried), [doc, mayWrite]);
  return { wishes, handles, move, write };
}

export function PlannedLadderProvider({ children }: { children: ReactNode }) {
  const { may, conditions } = useBoardLive();
  const doc = useRoomDocument('setup');
  const ground = useGround();
  const { wishes, handles, move, write } = useWishes(doc, may.setup);
  const wish = useMemo<PlanWish>(() => {
    const known = new Set(ground?.planes.map(({ id }) => id));
    const ofPlanes = [...handles].filter(([id, handle]) => known.has(id) && Object.keys(handle).length > 0);
    return { ...wishes, conditions, handles: Object.fromEntries(ofPlanes) };
  }, [wishes, conditions, handles, ground]);
  const { view, sentence, failed, asked } = useAnswer(ground, wish);
  const current = asked?.ground === ground && asked?.wish === wish;
  const planned = useMemo<PlannedLadder>(
    () => ({ view, current, sentence, failed, wishes, handles, ground, wish, move, ...write }),
    [view, current, sentence, failed, wishes, handles, ground, wish, move, write],
  );
  return <Context value={planned}>{children}</Context>;
}
