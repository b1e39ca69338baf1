'use client';
/**
 * What the parts share that carry planes over: where they lie now, what the worker made of it, which plane is in hand.
 *
 * In the flow: carry button -> [carry-desk] -> layer, hand, controls -> live writers. Seen by nobody else until it is
 * taken; the others only see that somebody is placing planes. IO: a worker, through its line.
 */
import {
  createContext,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { useBoardLive, usePaintingRoom } from '#app/_live/board-live.tsx';
import { carryHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools.tsx';
import type { Outline } from '#server/core/contract/setup.ts';
import { type Carried, layPlanes } from '#server/core/planes/carry/lay-planes.ts';
import { isProblem } from '#server/core/problem.ts';
import type { CarryReply } from './carry.worker.ts';
import { CarryLine, carryCopy } from './carry-line.ts';
import type { CarrySource } from './carry-sources.ts';
import type { Laid } from './placing.ts';
import { type Doubt, doubtOf } from './unsure-places.ts';
import { type CarryWish, useCarryWish } from './use-carry-wish.ts';

/** What was carried over last, until something else is done. */
export interface CarryTaken {
  paintingId: string;
  count: number;
  doubts: readonly Doubt[];
}

export interface CarryDesk {
  /** Whether planes are being placed on the painting of the easel. */
  placing: boolean;
  /** Name of somebody else who is placing planes on it, or null. */
  heldBy: string | null;
  begin(): void;
  leave(): void;
  sources: readonly CarrySource[];
  sourceId: string | null;
  chooseSource(pictureId: string): void;
  /** Planes that are carried, and whether those already on the painting are among them. */
  missing: readonly string[];
  all: boolean;
  setAll(all: boolean): void;
  fit: boolean;
  setFit(fit: boolean): void;
  /** What the worker is at. */
  doing: 'looking' | 'fitting' | null;
  /** Where everything lies; null before the first answer. */
  laid: Laid | null;
  /** In 0..1 of the squared painting; of the planes that are to be taken. */
  carried: Carried | null;
  doubts: readonly Doubt[];
  /** Why the place was not found, or why nothing can be carried; a whole sentence, or null. */
  trouble: string | null;
  /** The pictures could not be fetched. */
  away: boolean;
  /** The plane in hand; null = everything. */
  inHand: string | null;
  take(planeId: string | null): void;
  /** Lays everything so; not fitted while the hand moves. */
  lay(laid: Laid, moving: boolean): void;
  /** Whether a hand has changed what was found. */
  moved: boolean;
  /** A hand is moving it just now. */
  moving: boolean;
  /** Looks for the place anew. */
  findAgain(): void;
  /** Stores what is shown, as one step. */
  accept(): void;
  /** In 0..1 of the upright photo, by plane. */
  outlines: ReadonlyMap<string, Outline>;
  taken: CarryTaken | null;
  forgetTaken(): void;
  wish: CarryWish | null;
}

const DeskContext = createContext<CarryDesk | null>(null);

/** @throws Error outside `CarryDeskProvider`: a bug. */
export function useCarryDesk(): CarryDesk {
  const desk = useContext(DeskContext);
  if (!desk) throw new Error('useCarryDesk is used outside CarryDeskProvider.');
  return desk;
}

/** What the worker made of the planes, and what is being done to them. */
interface Work {
  doing: CarryDesk['doing'];
  laid: Laid | null;
  carried: Carried | null;
  trouble: string | null;
  away: boolean;
  moved: boolean;
  moving: boolean;
}

const NOTHING: Work = {
  ...{ doing: null, laid: null, carried: null, trouble: null },
  ...{ away: false, moved: false, moving: false },
};

/** Asks the worker, and keeps its last answer. */
function useWork(wish: CarryWish | null, active: boolean, fit: boolean) {
  const { board } = useBoardLive();
  const [work, setWork] = useState<Work>(NOTHING);
  const line = useRef<CarryLine | null>(null);
  const newest = useRef({ wish, fit });
  newest.current = { wish, fit };
  /** Rises with whatever makes an answer that is still on its way out of date. */
  const number = useRef(0);
  const ask = useCallback(
    (laid: Laid | null) => {
      const { wish: wanted, fit: fits } = newest.current;
      if (!wanted || !line.current) return;
      const asked = ++number.current;
      setWork((before) => ({ ...before, doing: laid ? 'fitting' : 'looking', away: false }));
      const answered = (reply: CarryReply) => {
        if (number.current !== asked) return;
        if (typeof reply === 'string') return setWork({ ...NOTHING, trouble: reply });
        const { placement, moves, planes, notes, trouble } = reply;
        setWork((before) => ({
          ...{ doing: null, away: false, laid: { placement, moves }, carried: { planes, notes } },
          trouble,
          ...{ moved: laid !== null && before.moved, moving: false },
        }));
      };
      line.current.ask(
        {
          from: { address: carryCopy(board.id, wanted.fromId), photo: wanted.from },
          to: { address: carryCopy(board.id, wanted.toId), photo: wanted.to },
          ...{ planes: wanted.planes, laid, fit: fits },
        },
        answered,
        () => number.current === asked && setWork((before) => ({ ...before, doing: null, away: true })),
      );
    },
    [board.id],
  );
  const key = active ? (wish?.key ?? null) : null;
  const change = useCallback((next: (before: Work) => Work) => {
    number.current++;
    setWork(next);
  }, []);
  useEffect(() => {
    change(() => NOTHING);
    if (key === null) return;
    line.current ??= new CarryLine();
    ask(null);
  }, [key, ask, change]);
  useEffect(() => {
    if (active) return;
    line.current?.close();
    line.current = null;
  }, [active]);
  useEffect(() => () => line.current?.close(), []);
  return { work, change, ask };
}

/** Says to the others that planes are being placed, for as long as they are. */
function useHold(placing: boolean, paintingId: string | null): void {
  const { hold, letGo } = useBoardLive();
  const live = useRef({ hold, letGo });
  live.current = { hold, letGo };
  useEffect(() => {
    if (!placing || !paintingId) return;
    const what = carryHold(paintingId);
    live.current.hold(what);
    return () => live.current.letGo(what);
  }, [placing, paintingId]);
}

/** The room of the source, when it is a painting, and of every painting while one is chosen. */
function useSourceRoom(sourceId: string | null, placing: boolean): void {
  const { board } = useBoardLive();
  const isPainting = board.pictures.some(({ id, kind }) => id === sourceId && kind === 'painting');
  usePaintingRoom(placing && isPainting ? sourceId : null);
}

const NONE: ReadonlyMap<string, Outline> = new Map();

/** Stands inside the live board and the tools. */
export function CarryDeskProvider({ children }: { children: ReactNode }) {
  const { write, may, heldBy: heldByOther, outlinesOf } = useBoardLive();
  const { tool, setTool, paintingId, setSide } = useTools();
  const [wantedId, chooseSource] = useState<string | null>(null);
  const [all, setAll] = useState(false);
  const [fit, setFitted] = useState(true);
  const [inHand, take] = useState<string | null>(null);
  const [taken, setTaken] = useState<CarryTaken | null>(null);
  const mine = tool === 'carry' && paintingId !== null && may.painting(paintingId);
  const other = paintingId ? heldByOther(carryHold(paintingId)) : null;
  const placing = mine && other === null;
  const { sources, sourceId, wish, missing } = useCarryWish(wantedId);
  useSourceRoom(sourceId, mine);
  useHold(placing, paintingId);
  const { work, change, ask } = useWork(wish, placing, fit);
  const { laid } = work;
  const bare = paintingId !== null && outlinesOf(paintingId).size === 0;
  const whole = all || bare || missing.length === 0;
  const carried = useMemo<Carried | null>(() => {
    if (!work.carried || whole) return work.carried;
    const { planes: found, notes } = work.carried;
    return { planes: found.filter(({ id }) => missing.includes(id)), notes };
  }, [work.carried, whole, missing]);
  const outlines = useMemo(
    () =>
      carried && wish
        ? new Map(carried.planes.map(({ id, outline }) => [id, outline.map(wish.original)]))
        : NONE,
    [carried, wish],
  );
  const doubts = useMemo(
    () => (fit && carried ? carried.planes.flatMap((plane) => doubtOf(plane) ?? []) : []),
    [carried, fit],
  );
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new beginning drops what was chosen before.
  useEffect(() => {
    take(null);
    if (placing) setTaken(null);
  }, [placing, paintingId, sourceId]);
  const lay = useCallback(
    (next: Laid, moving: boolean) => {
      if (!wish) return;
      try {
        const now = layPlanes(wish.squared, next.placement, next.moves);
        const placed = { doing: null, laid: next, carried: now, trouble: null, moved: true, moving };
        change((before) => ({ ...before, ...placed }));
      } catch (thrown) {
        if (!isProblem(thrown)) throw thrown;
        change((before) => ({ ...before, doing: null, trouble: thrown.message }));
        return;
      }
      if (!moving) ask(next);
    },
    [wish, ask, change],
  );
  const setFit = useCallback(
    (next: boolean) => {
      setFitted(next);
      if (!laid) return;
      // The question is asked once the new choice is in place.
      queueMicrotask(() => ask(laid));
    },
    [laid, ask],
  );
  const accept = () => {
    if (!paintingId || outlines.size === 0 || work.doing) return;
    try {
      write.layOutlines(paintingId, outlines);
    } catch (thrown) {
      if (!isProblem(thrown)) throw thrown;
      return change((before) => ({ ...before, trouble: thrown.message }));
    }
    setTaken({ paintingId, count: outlines.size, doubts });
    setTool('look');
  };
  const desk: CarryDesk = {
    ...{ placing, heldBy: mine ? other : null, sources, sourceId, chooseSource, missing },
    ...{ all: whole, setAll, fit, setFit, doubts, inHand, take, lay, accept, outlines, taken, wish },
    ...{ doing: work.doing, laid, carried, trouble: work.trouble, away: work.away },
    ...{ moved: work.moved, moving: work.moving },
    begin() {
      chooseSource(null);
      setAll(missing.length === 0);
      setTool('carry');
      setSide('painting');
    },
    leave: () => setTool('look'),
    findAgain: () => ask(null),
    forgetTaken: () => setTaken(null),
  };
  return <DeskContext value={desk}>{children}</DeskContext>;
}

/** Whether a plane that was carried is still one of the board. */
export const namesOf = (doubts: readonly Doubt[], planes: readonly { id: string; name: string }[]) =>
  doubts.flatMap(({ planeId, where }) => {
    const name = planes.find(({ id }) => id === planeId)?.name;
    return name === undefined ? [] : [{ name, where }];
  });
