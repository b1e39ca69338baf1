'use client';
/**
 * The wall as last fetched, and fetched again whenever the board changed or the names were shown or hidden.
 *
 * In the flow: page's own wall, live wall -> [use-wall] -> wall-page. Names come over HTTP alone, and are taken off the
 * screen as soon as the live wall hides them. IO: HTTP.
 */
import { useEffect, useState } from 'react';
import { Refused } from '#app/_api/client.ts';
import { fetchWall } from '#app/_api/wall.ts';
import type { WallView } from '#server/core/contract/wall.ts';
import type { WallLive } from './use-wall-live.ts';

/** Whoever shows the names is ahead of the server by the way there; it is asked again after these pauses, milliseconds. */
const PAUSES_MS = [150, 400, 1000, 2500];

export interface WallNow {
  wall: WallView;
  /** Rises with every fetch. */
  round: number;
  /** Why the board is no longer there for this person, or null. */
  gone: string | null;
}

export function useWall(first: WallView, { changed, named }: WallLive): WallNow {
  const [now, setNow] = useState<WallNow>({ wall: first, round: 0, gone: null });
  const { boardId } = first;
  const returned = useReturned();
  useEffect(() => {
    if (changed === 0 && returned === 0 && named === first.named) return;
    let wanted = true;
    const fetchAgain = async () => {
      for (const pause of [0, ...PAUSES_MS]) {
        await new Promise((resolve) => setTimeout(resolve, pause));
        if (!wanted) return;
        const wall = await fetchWall(boardId);
        if (!wanted) return;
        setNow((before) => ({ wall, round: before.round + 1, gone: null }));
        if (wall.named === named) return;
      }
    };
    fetchAgain().catch((thrown: unknown) => {
      // Without an answer the wall stays as it is; the line's own state says so.
      if (!(thrown instanceof Refused)) throw thrown;
      if (thrown.code !== 'no-answer') setNow((before) => ({ ...before, gone: thrown.message }));
    });
    return () => {
      wanted = false;
    };
  }, [boardId, changed, returned, named, first.named]);
  return named ? now : { ...now, wall: withoutNames(now.wall) };
}

/** How often somebody came back to this page from another: planes may have been outlined meanwhile. */
function useReturned(): number {
  const [returned, setReturned] = useState(0);
  useEffect(() => {
    const look = () => {
      if (document.visibilityState === 'visible') setReturned((before) => before + 1);
    };
    document.addEventListener('visibilitychange', look);
    return () => document.removeEventListener('visibilitychange', look);
  }, []);
  return returned;
}

function withoutNames(wall: WallView): WallView {
  return { ...wall, paintings: wall.paintings.map((painting) => ({ ...painting, painter: null })) };
}
