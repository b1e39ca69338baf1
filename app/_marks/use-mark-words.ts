'use client';
/**
 * Where a mark is and what it says, in words: for the talk and for those who listen.
 *
 * In the flow: live board -> [use-mark-words] -> mark layer, talk.
 */
import { useCallback } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import { markPlace } from '#server/core/live/mark-place.ts';
import { markState } from '#server/core/live/remarks.ts';
import { markWords as words } from '#words/marks.ts';
import { spotWords } from './mark-shape.ts';

/** For example `on the painting, Massif, upper left`. */
export function useWhereWords(): (mark: MarkView) => string {
  const { board, planes } = useBoardLive();
  return useCallback(
    (mark) => {
      const kind = board.pictures.find(({ id }) => id === mark.pictureId)?.kind;
      const plane = planes.find(({ id }) => id === mark.planeId)?.name ?? null;
      const place = markPlace(mark.kind, mark.points);
      return kind && place ? words.where(words.sides[kind], plane, spotWords(place)) : words.elsewhere;
    },
    [board.pictures, planes],
  );
}

/** What stands in a mark, or what it is where it has no words. */
export function saidIn({ kind, text }: MarkView): string {
  return text || (kind === 'reply' ? '' : words.wordless[kind]);
}

/** The whole of a mark on one picture in a sentence; the same function while nothing it says has changed. */
export function useMarkLabel(pictureId: string): (mark: MarkView) => string {
  const { answersOf } = useBoardLive();
  const where = useWhereWords();
  const answers = answersOf(pictureId);
  return useCallback(
    (mark) => {
      const state = markState(answers.get(mark.id));
      const called = words.called[mark.kind === 'reply' ? 'pin' : mark.kind];
      const said = state === 'open' ? null : words.states[state];
      return words.label(called, mark.number ?? 0, mark.authorName, where(mark), said, mark.text);
    },
    [where, answers],
  );
}
