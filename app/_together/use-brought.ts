'use client';
/**
 * Being brought to a view by who runs the class: once for each time it is asked, and never again after letting go.
 *
 * In the flow: class room -> [use-brought] -> together. IO: remembers in this window which asking was followed.
 */
import { useEffect } from 'react';
import { useBoardLive, useRoomDocument } from '#app/_live/board-live.tsx';
import { readClass } from '#server/core/class/state.ts';
import type { Following, Gathering } from './gathering.ts';

const PREFIX = 'veilstep-brought/';

function followedBefore(boardId: string, since: number): boolean {
  try {
    return sessionStorage.getItem(PREFIX + boardId) === String(since);
  } catch {
    return false;
  }
}

function remember(boardId: string, since: number): void {
  try {
    sessionStorage.setItem(PREFIX + boardId, String(since));
  } catch {
    // Then a page that is loaded again is brought once more.
  }
}

interface Brought {
  gathering: Gathering;
  following: Following | null;
  follow(next: Following): void;
  letGo(): void;
}

export function useBrought({ gathering, following, follow, letGo }: Brought): void {
  const { board } = useBoardLive();
  const doc = useRoomDocument('class');
  const look = doc && readClass(doc).look;
  const leader = look ? gathering.others.find(({ id }) => id === look.personId) : undefined;
  const [since, leaderId, name] = [look?.since ?? null, leader?.id ?? null, leader?.name ?? ''];
  useEffect(() => {
    if (since === null || leaderId === null || followedBefore(board.id, since)) return;
    remember(board.id, since);
    follow({ personId: leaderId, name, brought: true });
  }, [board.id, since, leaderId, name, follow]);
  // Everybody is let go again; who looks with somebody by their own choice stays.
  const brought = following?.brought ?? false;
  const over = doc !== null && look === null;
  useEffect(() => {
    if (over && brought) letGo();
  }, [over, brought, letGo]);
}
