'use client';
/**
 * Begins, feeds, ends and drops the line that is being drawn: a new outline, or one that splits a plane.
 *
 * In the flow: draft hand, bar under the pictures -> [use-draft] -> the draft in easel-state -> live document.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint, Outline } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import { closedRidge } from './outline-edit.ts';
import { outlineTrouble } from './outline-trouble.ts';
import { withoutLastStop } from './use-follow.ts';
import { useSplit } from './use-split.ts';

export function useDraft() {
  const { planeId, outlining } = useTools();
  const { planes, write, outlinesOf } = useBoardLive();
  const { draft, setDraft, way, setSentence, ahead } = useEasel();
  const split = useSplit();
  const plane = planes.find(({ id }) => id === (draft?.planeId ?? planeId));

  const outlineOf = (drawn: OutlineDraft): Outline =>
    drawn.way === 'ridge' ? closedRidge(drawn.points, plane?.kind ?? 'land') : drawn.points;
  return {
    draft,
    plane,
    /** The draft on this picture with these points; begins one where there is none. @param stops Set by the hand. */
    put(pictureId: string, points: FractionPoint[], stops: FractionPoint[]): OutlineDraft | null {
      if (!plane) return null;
      const splits = outlining === 'split' && outlinesOf(pictureId).has(plane.id);
      const begun =
        draft?.pictureId === pictureId
          ? draft
          : { pictureId, planeId: plane.id, way: splits ? ('split' as const) : way };
      const next = { ...begun, points, stops };
      setDraft(next);
      setSentence(null);
      return next;
    },
    takeBack() {
      ahead.set(null);
      if (draft) setDraft(withoutLastStop(draft));
    },
    giveUp() {
      ahead.set(null);
      setDraft(null);
      setSentence(null);
    },
    /** Stores the outline, or says why it cannot be one; the points then stay. */
    finish(drawn: OutlineDraft | null = draft) {
      if (!drawn || !plane) return;
      ahead.set(null);
      if (drawn.way !== 'round' && drawn.points.length < 2) return setSentence(words.outline.short);
      if (drawn.way === 'split') return void split(plane, drawn);
      const outline = outlineOf(drawn);
      const trouble = outlineTrouble(plane.name, outline);
      setSentence(trouble);
      if (trouble !== null) return setDraft(drawn);
      write.setOutline(drawn.pictureId, drawn.planeId, outline);
      setDraft(null);
    },
  };
}
