'use client';
/**
 * Carrying planes over, while it is done: where they lie now, what the worker made of it, which plane is in hand.
 *
 * In the flow: carry-desk, loaded late -> [carry-work] -> carry-desk -> layer, hand, controls. IO: a worker, through its line.
 */
import { memo, useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState } from 'react';
import { useBoardLive, usePaintingRoom } from '#app/_live/board-live.tsx';
import { carryHold } from '#app/_live/presence.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { Outline } from '#server/core/contract/setup.ts';
import { type Carried, layPlanes } from '#server/core/planes/carry/lay-planes.ts';
import { isProblem } from '#server/core/problem.ts';
import type { CarryReply } from './carry.worker.ts';
import type { CarryDesk, CarryTaken } from './carry-desk-types.ts';
import { CarryLine, carryCopy } from './carry-line.ts';
import type { Laid } from './placing.ts';
import { doubtOf } from './unsure-places.ts';
import { type CarryWish, useCarryWish } from './use-carry-wish.ts';

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

interface CarryWorkProps {
  /** Ridges are fitted to the painting's edges; remembered from one carrying to the next. */
  fit: boolean;
  setFit(fit: boolean): void;
  setTaken(taken: CarryTaken | null): void;
  /** Told of everything as it stands; of null once nothing is carried any more. */
  tell(desk: CarryDesk | null): void;
}

/** Stands while planes are carried, so that each carrying begins afresh. Shows nothing itself. */
export const CarryWork = memo(function CarryWork({ fit, setFit: setFitted, setTaken, tell }: CarryWorkProps) {
  const { write, may, heldBy: heldByOther, outlinesOf } = useBoardLive();
  const { setTool, paintingId } = useTools();
  const [wantedId, chooseSource] = useState<string | null>(null);
  const [inHand, take] = useState<string | null>(null);
  const mine = paintingId !== null && may.painting(paintingId);
  const other = paintingId ? heldByOther(carryHold(paintingId)) : null;
  const placing = mine && other === null;
  const { sources, sourceId, wish, missing } = useCarryWish(wantedId);
  const [all, setAll] = useState(missing.length === 0);
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
    [laid, ask, setFitted],
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
    ...{ all: whole, setAll, fit, setFit, doubts, inHand, take, lay, accept, outlines, wish },
    ...{ doing: work.doing, laid, carried, trouble: work.trouble, away: work.away },
    ...{ moved: work.moved, moving: work.moving },
    leave: () => setTool('look'),
    findAgain: () => ask(null),
  };
  useLayoutEffect(() => tell(desk));
  useLayoutEffect(() => () => tell(null), [tell]);
  return null;
});
