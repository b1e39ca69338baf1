'use client';
/**
 * What came onto the board since this person last looked, which remarks they have not had in view, and telling the
 * server how far they looked.
 *
 * In the flow: /api/boards/…/since + live marks -> [SinceProvider] -> bar, signs at the remarks. How far somebody saw a
 * room is its state vector, so that marks made offline long ago and come just now are new all the same. IO: HTTP.
 */
import {
  createContext,
  type ReactNode,
  type RefObject,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import * as Y from 'yjs';
import { fetchNews, sayLooked } from '#app/_api/own-time.ts';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { BoardNews } from '#server/core/contract/own-time.ts';
import { MOST_UNSEEN, VECTOR_LIMIT } from '#server/core/contract/own-time-limits.ts';

/** Looking for less than this is passing by. */
const LOOKED_MS = 4000;
/** What comes into view within this long is told at once. */
const GATHER_MS = 3000;

interface Since {
  /** Null before it is known and for somebody who never looked here before. */
  news: BoardNews | null;
  /** Whether the quiet sign stands at a mark. */
  isFresh(markId: string): boolean;
  /** These marks have been in view. */
  seen(markIds: readonly string[]): void;
}

const SinceContext = createContext<Since>({ news: null, isFresh: () => false, seen: () => undefined });

export function useSince(): Since {
  return useContext(SinceContext);
}

export function SinceProvider({ children }: { children: ReactNode }) {
  const { board } = useBoardLive();
  const { news, known } = useNews(board.id);
  const unseen = useRef(new Set<string>());
  /** On a slow line a remark can have stood in view before it is known that it is new. */
  const stood = useRef(new Set<string>());
  const [fresh, setFresh] = useState<ReadonlySet<string>>(new Set());
  const remember = useRemember(board.id, known, unseen);
  useEffect(() => {
    const ids = (news?.remarks ?? []).map(({ id }) => id);
    for (const id of ids) if (!stood.current.has(id)) unseen.current.add(id);
    setFresh(new Set(ids));
  }, [news]);
  useArrivals(
    useCallback((ids) => {
      for (const id of ids) unseen.current.add(id);
      setFresh((before) => new Set([...before, ...ids]));
    }, []),
  );
  const seen = useCallback(
    (ids: readonly string[]) => {
      for (const id of ids) stood.current.add(id);
      const left = ids.filter((id) => unseen.current.delete(id));
      if (left.length > 0) remember(GATHER_MS);
    },
    [remember],
  );
  const since = useMemo<Since>(() => ({ news, isFresh: (id) => fresh.has(id), seen }), [news, fresh, seen]);
  return <SinceContext value={since}>{children}</SinceContext>;
}

/** Asked once a visit: what was new when the person came stays said while they are here. */
function useNews(boardId: string) {
  const [answer, setAnswer] = useState<{ news: BoardNews | null } | null>(null);
  useEffect(() => {
    let here = true;
    fetchNews(boardId).then(
      (news) => here && setAnswer({ news: news ?? null }),
      // Without an answer nothing is called new, and nothing is told to have been seen.
      () => undefined,
    );
    return () => {
      here = false;
    };
  }, [boardId]);
  return { news: answer?.news ?? null, known: answer !== null };
}

/** Marks of others that come while the board is open. */
function useArrivals(arrived: (ids: readonly string[]) => void) {
  const { marks, ready, board } = useBoardLive();
  const known = useRef<Set<string> | null>(null);
  useEffect(() => {
    if (!ready) return;
    const before = known.current;
    known.current = new Set(marks.map(({ id }) => id));
    if (!before) return;
    const ids = marks
      .filter(({ id, author }) => !before.has(id) && author !== board.me.id)
      .map(({ id }) => id);
    if (ids.length > 0) arrived(ids);
  }, [marks, ready, board.me.id, arrived]);
}

/** How far the rooms that were open in this visit were seen. */
function useVectors(): () => Record<string, string> {
  const { paintingId } = useTools();
  const rooms = useRef(new Map<string, Y.Doc>());
  const open = {
    setup: useRoomDocument('setup'),
    marks: useRoomDocument('marks'),
    [`painting/${paintingId}`]: useRoomDocument(paintingId ? `painting/${paintingId}` : null),
  };
  for (const [room, doc] of Object.entries(open)) if (doc) rooms.current.set(room, doc);
  return useCallback(() => {
    const vectors = [...rooms.current].map(
      ([room, doc]) => [room, base64(Y.encodeStateVector(doc))] as const,
    );
    // A room with a longer one is left to be read again.
    return Object.fromEntries(vectors.filter(([, vector]) => vector.length <= VECTOR_LIMIT));
  }, []);
}

function base64(bytes: Uint8Array): string {
  return btoa(String.fromCharCode(...bytes));
}

/**
 * Tells the server how far was looked: after a while, after `soon`, and when the page goes out of sight.
 *
 * @param known False until it is known what was new; before that nothing is told.
 */
function useRemember(boardId: string, known: boolean, unseen: RefObject<Set<string>>) {
  const { ready } = useBoardLive();
  const vectors = useVectors();
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const may = useRef(false);
  const tell = useCallback(() => {
    if (timer.current) clearTimeout(timer.current);
    timer.current = null;
    if (!may.current) return;
    const seen = { rooms: vectors(), unseen: [...unseen.current].slice(-MOST_UNSEEN) };
    // Where it does not arrive, the same is new once more at the next visit.
    sayLooked(boardId, seen).catch(() => undefined);
  }, [boardId, vectors, unseen]);
  const soon = useCallback(
    (ms: number) => {
      timer.current ??= setTimeout(tell, ms);
    },
    [tell],
  );
  useEffect(() => {
    if (!ready || !known) return;
    const looked = setTimeout(() => {
      may.current = true;
      if (document.visibilityState === 'visible') tell();
    }, LOOKED_MS);
    const leaving = () => {
      if (document.visibilityState === 'hidden') tell();
    };
    document.addEventListener('visibilitychange', leaving);
    return () => {
      clearTimeout(looked);
      document.removeEventListener('visibilitychange', leaving);
    };
  }, [ready, known, tell]);
  return soon;
}
