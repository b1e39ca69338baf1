'use client';
/** The marking tool on one picture: its hand and the place of a new mark. In the flow: easel-picture, loaded late -> [mark-work] -> stage. */
import { type ToolHand, useGiveHand } from '#app/_easel/use-tool-hand.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { NewPlace } from './mark-words.tsx';
import { useMarkHand } from './use-mark-hand.ts';

export function MarkWork({ picture, give }: { picture: PictureView; give: ToolHand['give'] }) {
  useGiveHand(give, useMarkHand(picture));
  return <NewPlace />;
}
