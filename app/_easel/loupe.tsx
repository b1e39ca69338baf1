'use client';
/**
 * What lies under the hand, three times as large, beside the finger that covers it.
 *
 * In the flow: a pulled point -> [loupe] -> screen. Reads the copy that the stage has loaded.
 */
import { useEffect, useRef } from 'react';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import styles from './layers.module.css';
import { useStage } from './stage-context.tsx';

const SIDE_PX = 132;
const TIMES = 3;

/** @param point 0..1 of the upright original. */
export function Loupe({ point }: { point: FractionPoint }) {
  const { image, pixel, frame } = useStage();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [x, y] = point;
  useEffect(() => {
    const [copy, context] = [image(), canvas.current?.getContext('2d')];
    if (!copy || !context || copy.naturalWidth === 0) return;
    const side = context.canvas.width;
    const seen = SIDE_PX / TIMES;
    const [w, h] = [seen * pixel().x * copy.naturalWidth, seen * pixel().y * copy.naturalHeight];
    context.clearRect(0, 0, side, side);
    context.drawImage(
      copy,
      ...[x * copy.naturalWidth - w / 2, y * copy.naturalHeight - h / 2, w, h],
      ...[0, 0, side, side],
    );
    drawCross(context, side);
  }, [x, y, image, pixel]);
  const [left, top] = frame.shown(point);
  const under = top < 0.25;
  return (
    <div
      className={styles.loupe}
      style={{ left: `${left * 100}%`, top: `${top * 100}%`, ...(under ? { marginTop: 44 } : {}) }}
      aria-hidden="true"
    >
      <canvas ref={canvas} width={SIDE_PX * 2} height={SIDE_PX * 2} />
    </div>
  );
}

/** A cross with an open middle: dark over light, so that it shows on anything. */
function drawCross(context: CanvasRenderingContext2D, side: number): void {
  const [middle, gap, arm] = [side / 2, side * 0.03, side * 0.12];
  for (const [style, width] of [
    ['rgb(0 0 0 / 0.8)', 5],
    ['#fff', 2],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.beginPath();
    for (const direction of [-1, 1]) {
      context.moveTo(middle + direction * gap, middle);
      context.lineTo(middle + direction * (gap + arm), middle);
      context.moveTo(middle, middle + direction * gap);
      context.lineTo(middle, middle + direction * (gap + arm));
    }
    context.stroke();
  }
}
