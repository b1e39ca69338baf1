'use client';
/** A bitmap of the wall's worker on the page. In the flow: use-asked -> [drawn] -> screen. IO: draws on a canvas. */
import { useEffect, useRef } from 'react';

interface DrawnProps {
  bitmap: ImageBitmap | null;
  /** What it shows, for those who do not see it. */
  label: string;
  className?: string | undefined;
}

export function Drawn({ bitmap, label, className }: DrawnProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext('2d', { alpha: false });
    if (!bitmap || !context) return;
    Object.assign(context.canvas, { width: bitmap.width, height: bitmap.height });
    context.drawImage(bitmap, 0, 0);
  }, [bitmap]);
  if (!bitmap) return null;
  return <canvas ref={canvas} className={className} role="img" aria-label={label} data-drawn="" />;
}
