'use client';
/**
 * The marks that this screen shows on one picture: by the chosen people, plane and state, sketches or not.
 *
 * In the flow: live marks + filter -> [use-shown-marks] -> mark layer. The mark that is open in the talk is always shown.
 */
import { useMemo } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { MarkView } from '#app/_live/mark-types.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { markState } from '#server/core/live/remarks.ts';
import { useMarkDesk } from './mark-desk.tsx';
import { passes } from './mark-filter.ts';

/** Whether the hand draws just now, or looks for a colour, so that what lies on the picture must not stop it. */
export function useDrawsOver(): boolean {
  const { tool } = useTools();
  const { kind, taking } = useMarkDesk();
  return tool === 'mark' && (taking || (kind !== 'pin' && kind !== 'text' && kind !== 'patch'));
}

export function useShownMarks(pictureId: string): readonly MarkView[] {
  const { marks, answersOf } = useBoardLive();
  const { markId } = useTools();
  const { filter, sketchesShown } = useMarkDesk();
  const answers = answersOf(pictureId);
  return useMemo(() => {
    const here = marks.filter((mark) => mark.pictureId === pictureId && mark.kind !== 'reply');
    const byId = new Map(here.map((mark) => [mark.id, mark]));
    return here.filter((mark) => {
      if (mark.kind === 'sketch' && !sketchesShown) return false;
      // A later stroke of a sketch goes with the first one.
      const root = (mark.number === null && mark.parent !== null && byId.get(mark.parent)) || mark;
      return root.id === markId || passes(filter, root, markState(answers.get(root.id)));
    });
  }, [marks, pictureId, answers, filter, sketchesShown, markId]);
}
