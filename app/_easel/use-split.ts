'use client';
/**
 * Splits a plane by the line that was drawn across it, and makes one plane of two neighbours.
 *
 * In the flow: draft, bar under the pictures -> [use-split] -> outline worker -> live planes and outlines, as one step.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { useTools } from '#app/_workspace/tools-here.tsx';
import { words } from '#words/easel.ts';
import { type OutlineDraft, useEasel } from './easel-state.tsx';
import { troubleOf } from './outline-trouble.ts';

/** Longest name of a plane, characters. */
const LONGEST_NAME = 80;

/** @returns Splits; what cannot be split is said, and the line stays. */
export function useSplit() {
  const { board, planes, outlinesOf, write, may } = useBoardLive();
  const { setOutlining } = useTools();
  const { outlineLine, setDraft, setSentence } = useEasel();
  return async (plane: PlaneView, drawn: OutlineDraft) => {
    const picture = board.pictures.find(({ id }) => id === drawn.pictureId);
    const at = planes.findIndex(({ id }) => id === plane.id);
    if (!picture || at < 0) return;
    if (!may.setup) return setSentence(words.outline.partsNeedSetup);
    const rings = planes.map(({ id }) => outlinesOf(picture.id).get(id) ?? null);
    const cut = { plane: at, kind: plane.kind, line: drawn.points };
    const split = await outlineLine.split(picture, rings, cut).catch(() => null);
    if (!split) return setSentence(words.outline.notAcross(plane.name));
    const name = words.outline.partName(plane.name, split.part).slice(0, LONGEST_NAME);
    const trouble = troubleOf(() => write.splitPlane(picture.id, plane.id, name, [...split.ring]));
    setSentence(trouble ?? words.outline.splitDone(plane.name, name));
    if (trouble !== null) return;
    setDraft(null);
    setOutlining('line');
  };
}
