'use client';
/**
 * The remarks that this screen lists: by picture, person, plane and state, open ones first.
 *
 * In the flow: live marks + filter -> [use-threads] -> remarks.
 */
import { useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import { useMarkDesk } from '#app/_marks/mark-desk.tsx';
import { byState, passes } from '#app/_marks/mark-filter.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { MarkState } from '#server/core/live/layout.ts';
import { threadsOf } from '#server/core/live/marks.ts';
import { markState } from '#server/core/live/remarks.ts';

export interface ThreadView {
  mark: MarkView;
  replies: readonly MarkView[];
  state: MarkState;
}

export interface Threads {
  shown: readonly ThreadView[];
  /** Everybody who marked the pictures that are listed, by name. */
  authors: readonly { id: string; name: string }[];
  /** Remarks on pictures that are not on the easel. */
  elsewhere: boolean;
}

export function useThreads(): Threads {
  const { marks, answersOf } = useBoardLive();
  const { referenceId, paintingId, markId } = useTools();
  const { filter } = useMarkDesk();
  const all = useMemo(() => {
    const views = new Map(marks.map((mark) => [mark.id, mark]));
    const viewsOf = (list: readonly { id: string }[]) =>
      list.flatMap(({ id }) => {
        const view = views.get(id);
        return view ? [view] : [];
      });
    return threadsOf(marks).flatMap(({ mark, replies }) =>
      viewsOf([mark]).map((view) => ({ mark: view, replies: viewsOf(replies) })),
    );
  }, [marks]);
  const here = all.filter(
    ({ mark }) =>
      filter.pictures === 'all' || mark.pictureId === referenceId || mark.pictureId === paintingId,
  );
  const threads = here.map((thread) => {
    return { ...thread, state: markState(answersOf(thread.mark.pictureId).get(thread.mark.id)) };
  });
  const passing = threads.filter(({ mark, state }) => mark.id === markId || passes(filter, mark, state));
  const people = new Map(here.map(({ mark }) => [mark.author, mark.authorName]));
  const authors = [...people].map(([id, name]) => ({ id, name }));
  return {
    shown: byState(passing, ({ state }) => state),
    authors: authors.sort((one, two) => one.name.localeCompare(two.name) || (one.id < two.id ? -1 : 1)),
    elsewhere: here.length < all.length,
  };
}
