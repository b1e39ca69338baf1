'use client';
/**
 * What the gaps of a phrase are filled with, from the plane that the words are about and its measured card.
 *
 * In the flow: planes + measures -> [use-slots] -> phrase list.
 */
import { useBoardLive } from '#app/_live/board-live.tsx';
import { useBoardMeasures } from '#app/_measures/board-measures.tsx';
import { useTools } from '#app/_workspace/tools-here.tsx';
import type { CardPart } from '#server/core/contract/critique.ts';
import type { SlotWords } from '#server/core/own-time/slots.ts';

/** What words are about: a plane of a picture, or no plane. */
export interface About {
  pictureId: string;
  planeId: string | null;
}

/** Parts that name something in the picture. */
const NAMED: Partial<Record<CardPart, string>> = {
  darks: 'darks',
  lights: 'lights',
  contrast: 'contrast',
  colour: 'colour',
  shadows: 'shadows',
  detail: 'detail',
  edge: 'edge',
  shapes: 'shapes',
  accent: 'accent',
};

/** The leading action of the card on that plane gives part and amount; at grade C there is no amount. */
export function useSlots({ pictureId, planeId }: About): SlotWords {
  const { planes, board } = useBoardLive();
  const { paintingId } = useTools();
  const { document, planeIds } = useBoardMeasures();
  const plane = planes.find(({ id }) => id === planeId);
  if (!plane) return {};
  const known: SlotWords = { plane: plane.name };
  const kind = board.pictures.find(({ id }) => id === pictureId)?.kind;
  const measured = pictureId === paintingId || kind === 'reference' ? document : null;
  const name = measured?.planes[planeIds.indexOf(plane.id)]?.name;
  const action = measured?.cards?.find((card) => card.plane !== null && card.plane === name)?.actions[0];
  const part = action && NAMED[action.part];
  if (part) known.part = part;
  if (action?.amount) known.amount = action.amount;
  return known;
}
