'use client';
/** A value plan drawn as it is, in its own greys. In the flow: value picture + cuts -> [value-canvas]. */
import { useEffect, useRef } from 'react';
import { drawnValues, type PlannedValues, type ValuePicture } from '#server/core/look/value-plan.ts';
import styles from './values.module.css';

interface ValueCanvasProps {
  picture: ValuePicture;
  plan: PlannedValues;
  /** What it is, for those who do not see it. */
  label: string;
}

export function ValueCanvas({ picture, plan, label }: ValueCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    const { widthPx, heightPx } = picture;
    if (context.canvas.width !== widthPx) context.canvas.width = widthPx;
    if (context.canvas.height !== heightPx) context.canvas.height = heightPx;
    context.putImageData(new ImageData(drawnValues(picture, plan), widthPx, heightPx), 0, 0);
  }, [picture, plan]);
  // Without words of its own the button it stands on says what it is.
  if (label === '') return <canvas ref={canvas} className={styles.canvas} />;
  return <canvas ref={canvas} className={styles.canvas} role="img" aria-label={label} />;
}
