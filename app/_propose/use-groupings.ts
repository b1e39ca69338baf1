'use client';
/** The groupings of one picture, asked for as soon as it is known. In the flow: chooser -> [use-groupings] -> line. */
import { useCallback, useEffect, useState } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Groupings } from './groupings.ts';
import type { Doing } from './proposal-line.ts';
import { useProposeDesk } from './propose-desk.tsx';

export interface GroupingsOfPicture {
  /** What is being done; null once there is an answer, or none to be had. */
  doing: Doing | null;
  groupings: Groupings | null;
  /** What it failed at, or null. */
  failed: Doing | null;
  again(): void;
}

type State = Omit<GroupingsOfPicture, 'again'>;

const STARTING: State = { doing: 'fetch', groupings: null, failed: null };

export function useGroupings({ id, kind, width, height }: PictureView): GroupingsOfPicture {
  const { board, photoOf } = useBoardLive();
  const { line } = useProposeDesk();
  const [state, setState] = useState<State & { key: string }>({ ...STARTING, key: '' });
  const [tries, setTries] = useState(0);
  const { corners, size } = kind === 'painting' ? photoOf(id) : {};
  const photo = { ...(corners ? { corners } : {}), ...(size ? { size } : {}) };
  const key = JSON.stringify([id, photo, tries]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `key` is the picture and its correction by content.
  useEffect(() => {
    let wanted = true;
    let doing: Doing = 'fetch';
    const set = (next: State) => wanted && setState({ ...next, key });
    const wish = { boardId: board.id, pictureId: id, longSidePx: Math.max(width, height), photo };
    line
      .groupings(wish, (step) => {
        doing = step;
        set({ ...STARTING, doing });
      })
      .then(
        (groupings) => set({ doing: null, groupings, failed: null }),
        () => set({ doing: null, groupings: null, failed: doing }),
      );
    return () => {
      wanted = false;
    };
  }, [line, board.id, key]);
  const again = useCallback(() => setTries((before) => before + 1), []);
  const { doing, groupings, failed } = state.key === key ? state : STARTING;
  return { doing, groupings, failed, again };
}
