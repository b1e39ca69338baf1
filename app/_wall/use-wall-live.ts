'use client';
/**
 * What of a board's wall is live: whether names are shown, the question, and what a class keeps back.
 *
 * In the flow: rooms `setup` and `class` -> [use-wall-live] -> wall. No painting's room is opened, and not the marks: they
 * tell who is there. IO: live rooms.
 */
import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { BoardStore } from '#app/_live/board-store.ts';
import { liveAddress } from '#app/_live/live-address.ts';
import { isVeiledOnScreen, readClass } from '#server/core/class/state.ts';
import type { WallView } from '#server/core/contract/wall.ts';
import { askOfTheDay, readWall, showNames } from '#server/core/live/wall.ts';

export interface WallLive {
  named: boolean;
  question: string;
  /** A class keeps figures and references back. */
  veiled: boolean;
  /** Rises whenever the server says that pictures or people changed. */
  changed: number;
  /** Why the board is shut for this person, or null. */
  closed: string | null;
  offline: boolean;
  refusals: BoardStore['refusals'];
  dismiss(id: string): void;
  showNames(shown: boolean): void;
  ask(question: string): void;
}

const ROOMS = ['class', 'setup'] as const;
const noVersion = () => 0;

/** @param first As the page brought it: shown until the rooms are there. */
export function useWallLive(first: WallView): WallLive {
  const { boardId, meId, role } = first;
  const [store] = useState(
    () => new BoardStore(liveAddress(boardId), boardId, { id: meId, name: '', role, self: true }),
  );
  useEffect(() => {
    const letGo = ROOMS.map((name) => store.look(name));
    return () => {
      for (const each of letGo) each();
    };
  }, [store]);
  const version = useSyncExternalStore(store.subscribe, store.version, noVersion);
  // biome-ignore lint/correctness/useExhaustiveDependencies: `version` rises with every change of the documents.
  const live = useMemo((): WallLive => {
    const setup = store.loaded('setup') ? store.doc('setup') : null;
    const inClass = store.loaded('class') ? store.doc('class') : null;
    const state = inClass && readClass(inClass);
    const veiled = state ? isVeiledOnScreen(state) : first.veiled;
    return {
      ...(setup ? readWall(setup) : { named: first.named, question: first.question }),
      veiled,
      changed: store.boardChanged,
      closed: store.closedSentence(),
      offline: store.connection() === 'offline',
      refusals: store.refusals,
      dismiss: (id) => store.dismissRefusal(id),
      showNames: (shown) => {
        if (setup) showNames(setup, shown);
      },
      ask: (question) => {
        if (setup) askOfTheDay(setup, question);
      },
    };
  }, [store, version, first]);
  useEffect(() => {
    if (!live.veiled) store.unveil();
  }, [store, live.veiled]);
  return live;
}
