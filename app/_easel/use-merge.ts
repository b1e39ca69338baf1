'use client';
/**
 * Makes one plane of two neighbours, on every picture where this person may draw.
 *
 * In the flow: bar under the pictures -> [use-merge] -> outline worker, picture by picture -> live planes and outlines, as
 * one step. Rooms of paintings that are not on the easel are opened for it.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import type { PlaneView } from '#app/_live/board-live-types.ts';
import { outlineHold } from '#app/_live/presence.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import type { Outline } from '#server/core/contract/setup.ts';
import { words } from '#words/easel.ts';
import { useEasel } from './easel-state.tsx';
import { troubleOf } from './outline-trouble.ts';

/** @returns Makes `gone` part of `kept`; what cannot be one is said, and both stay. */
export function useMerge() {
  const { board, planes, write, may, heldBy, paintingsOpen, outlinesOf } = useBoardLive();
  const { outlineLine, setSentence } = useEasel();
  const mayDraw = ({ id, kind }: PictureView) => kind === 'reference' || may.painting(id);
  const name = ({ id, kind, caption }: PictureView) => caption ?? words.outline.sides[kind] ?? id;

  return async (kept: PlaneView, gone: PlaneView): Promise<void> => {
    if (!may.setup) return setSentence(words.outline.partsNeedSetup);
    const holder = board.pictures
      .flatMap(({ id }) => [kept, gone].map((plane) => heldBy(outlineHold(id, plane.id))))
      .find((held) => held !== null);
    if (holder) return setSentence(words.outline.heldBy(holder));
    const drawable = board.pictures.filter(mayDraw);
    await paintingsOpen(drawable.filter(({ kind }) => kind === 'painting').map(({ id }) => id));
    const rings = new Map<string, Outline>();
    const [one, other] = [kept, gone].map((plane) => planes.findIndex(({ id }) => id === plane.id));
    for (const picture of drawable) {
      const outlines = outlinesOf(picture.id);
      if (!outlines.has(gone.id) || one === undefined || other === undefined) continue;
      const merged = await outlineLine
        .merge(
          picture,
          planes.map(({ id }) => outlines.get(id) ?? null),
          { one, other },
        )
        .catch(() => null);
      if (!merged) return setSentence(words.outline.notTouching(kept.name, gone.name, name(picture)));
      rings.set(picture.id, [...merged]);
    }
    const trouble = troubleOf(() => write.mergePlanes(kept.id, gone.id, rings));
    const left = board.pictures.length - drawable.length;
    setSentence(trouble ?? words.outline.joined(kept.name, gone.name, left));
  };
}
