'use client';
/**
 * The painting put right, squared and in neutral light, as a picture.
 *
 * In the flow: photo desk -> [righted-copy] -> stage, place beside the photo. IO: draws on a canvas.
 */
import { useEffect, useRef } from 'react';
import type { PictureSize } from '#server/core/contract/picture-choices.ts';
import { usePhotoDesk } from './photo-desk.tsx';

/** @param className Where the canvas lies. @param label For those who do not see it; left out where another says it. */
export function RightedCanvas({ className, label }: { className?: string | undefined; label?: string }) {
  const { righted } = usePhotoDesk();
  const canvas = useRef<HTMLCanvasElement>(null);
  const bitmap = righted.picture?.bitmap ?? null;
  useEffect(() => {
    const context = canvas.current?.getContext('2d', { alpha: false });
    if (!bitmap || !context) return;
    Object.assign(context.canvas, { width: bitmap.width, height: bitmap.height });
    context.drawImage(bitmap, 0, 0);
  }, [bitmap]);
  if (!bitmap) return null;
  return (
    <canvas
      ref={canvas}
      className={className}
      {...(label ? { role: 'img', 'aria-label': label } : { 'aria-hidden': true })}
    />
  );
}

/** Over the photo on the stage; asks for a copy that is sharp enough there. */
export function RightedCopy({ className, copy }: { className?: string | undefined; copy: PictureSize }) {
  const { wantCopy } = usePhotoDesk();
  useEffect(() => wantCopy(copy), [wantCopy, copy]);
  return <RightedCanvas className={className} />;
}
