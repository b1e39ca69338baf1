'use client';
/**
 * Lets a line follow the ridge: ahead of the hand while it hovers, and between two stops once they are set.
 *
 * In the flow: draft hand -> [use-follow] -> outline worker -> ahead of the hand, the draft.
 */
import { useEffect, useRef } from 'react';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import { Newest } from './newest.ts';

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

export function same(one: FractionPoint | undefined, other: FractionPoint | undefined): boolean {
  return one !== undefined && other !== undefined && one[0] === other[0] && one[1] === other[1];
}

export interface Follow {
  /** Shows the line from the last stop to the hand. @param finger Whether a fingertip covers the place. */
  show(from: FractionPoint | undefined, to: FractionPoint, straight: boolean, finger: boolean): void;
  hide(): void;
  /** The line that is shown, if it goes from the one place to the other. */
  shown(from: FractionPoint, to: FractionPoint): readonly FractionPoint[] | null;
  /** Bends the stretch between two points of the draft onto the edge, a moment after it was drawn. */
  bend(from: FractionPoint, to: FractionPoint): Promise<void>;
}

export function useFollow(pictureId: string): Follow {
  const { tool, outlining } = useTools();
  const { setDraft, following, outlineLine, ahead } = useEasel();
  const newest = useRef(new Newest());
  const on = tool === 'outline' && following;
  const draws = outlining === 'line' || outlining === 'split';
  useEffect(() => {
    // Without the picture the stretches simply stay straight.
    if (on && draws) outlineLine.prepare(pictureId).catch(() => undefined);
  }, [on, draws, outlineLine, pictureId]);
  const put = (line: readonly FractionPoint[], finger: boolean) =>
    ahead.set({ pictureId, line, shape: [], away: false, finger: finger ? (line.at(-1) ?? null) : null });
  return {
    show(from, to, straight, finger) {
      newest.current.forget();
      if (!from || straight || !on) return put(from ? [from, to] : [to], finger);
      newest.current.run(async () => put(await outlineLine.follow(pictureId, from, to), finger));
    },
    hide() {
      newest.current.forget();
      ahead.set(null);
    },
    shown(from, to) {
      const line = ahead.get()?.line;
      return line && same(line[0], from) && same(line.at(-1), to) ? line : null;
    },
    async bend(from, to) {
      if (!on) return;
      const line = await outlineLine.follow(pictureId, from, to).catch(() => null);
      if (line) setDraft((draft) => (draft?.pictureId === pictureId ? bent(draft, line) : draft));
    },
  };
}
