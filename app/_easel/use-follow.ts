'use client';
/**
 * Lets a new outline follow the ridge between two clicks, while the outline tool is in hand.
 *
 * In the flow: draft hand -> [use-follow] -> follow worker -> the draft, whose last stretch bends onto the edge.
 */
import { useEffect, useRef } from 'react';
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useTools } from '#app/_workspace/tools.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import { FollowLine } from './follow-line.ts';
import { simplified } from './outline-edit.ts';

/** A followed line is kept within this share of the picture's width. */
const TIDY = 0.0015;

/** With the points of `line` between two neighbouring points of a draft; unchanged where they no longer stand so. */
export function bent(draft: OutlineDraft, line: readonly FractionPoint[]): OutlineDraft {
  const [from, to] = [line[0], line.at(-1)];
  const at = draft.points.findIndex((point, index) => same(point, from) && same(draft.points[index + 1], to));
  if (at < 0) return draft;
  const points = [...draft.points.slice(0, at + 1), ...line.slice(1, -1), ...draft.points.slice(at + 1)];
  return { ...draft, points };
}

/** Without its last click and what was followed on the way to it. */
export function withoutLastStop(draft: OutlineDraft): OutlineDraft | null {
  const stops = draft.stops.slice(0, -1);
  const last = stops.at(-1);
  if (!last) return null;
  const at = draft.points.findLastIndex((point) => same(point, last));
  return { ...draft, stops, points: draft.points.slice(0, at + 1) };
}

function same(one: FractionPoint | undefined, other: FractionPoint | undefined): boolean {
  return one !== undefined && other !== undefined && one[0] === other[0] && one[1] === other[1];
}

/** Bends the stretch between two points of the draft on a picture onto the edge, a moment after it was drawn. */
export function useFollow(pictureId: string, aspect: number) {
  const { board } = useBoardLive();
  const { tool } = useTools();
  const { setDraft, following } = useEasel();
  const line = useRef<FollowLine | null>(null);
  const on = tool === 'outline' && following;
  useEffect(() => {
    if (!on) return;
    const opened = new FollowLine();
    line.current = opened;
    // Without the picture the stretches simply stay straight.
    opened.take(board.id, pictureId).catch(() => opened.close());
    return () => {
      line.current = null;
      opened.close();
    };
  }, [on, board.id, pictureId]);
  return async (from: FractionPoint, to: FractionPoint): Promise<void> => {
    const way = await line.current?.follow(pictureId, from, to);
    if (!way) return;
    const tidy = simplified(way, TIDY, aspect);
    setDraft((draft) => (draft?.pictureId === pictureId ? bent(draft, tidy) : draft));
  };
}
