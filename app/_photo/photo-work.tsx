'use client';
/** The tool that puts a photo right, on one picture: its hand and handles. In the flow: easel-picture, loaded late -> [photo-work] -> stage. */
import { type ToolHand, useGiveHand } from '#app/_easel/use-tool-hand.ts';
import type { PictureView } from '#server/core/contract/responses.ts';
import { PhotoLayer } from './photo-layer.tsx';
import { usePhotoHand } from './use-photo-hand.ts';

export function PhotoWork({ picture, give }: { picture: PictureView; give: ToolHand['give'] }) {
  const photo = usePhotoHand(picture);
  useGiveHand(give, photo.hand);
  return picture.kind === 'painting' ? <PhotoLayer {...photo} /> : null;
}
