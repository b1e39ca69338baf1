'use client';
/**
 * What lies under the hand, several times as large, beside the finger that covers it.
 *
 * In the flow: a pulled point -> [loupe] -> screen. Reads the copy that the stage has loaded, or a sharper one.
 */
import { type CSSProperties, useEffect, useRef } from 'react';
import { OVER_CASING, OVER_LIGHT } from '#app/_ui/greys.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import styles from './layers.module.css';
import { useStage } from './stage-context.tsx';

const SIDE_PX = 132;
/** From the place to the nearer edge of the loupe, pixels. */
const CLEAR_PX = 44;

interface LoupeProps {
  /** 0..1 of the upright original. */
  point: FractionPoint;
  /** How much larger than on the screen. */
  times?: number;
  /** A sharper copy than the stage has, once it is there. */
  source?: HTMLImageElement | null;
  /** Lines to draw over it, in 0..1 of the upright original. */
  lines?: readonly (readonly FractionPoint[])[];
}

const NO_LINES: readonly FractionPoint[][] = [];

export function Loupe({ point, times = 3, source = null, lines = NO_LINES }: LoupeProps) {
  const { image, pixel, frame } = useStage();
  const canvas = useRef<HTMLCanvasElement>(null);
  const [x, y] = point;
  useEffect(() => {
    const [copy, context] = [source ?? image(), canvas.current?.getContext('2d')];
    if (!copy || !context || copy.naturalWidth === 0) return;
    const side = context.canvas.width;
    const seen = SIDE_PX / times;
    const [w, h] = [seen * pixel().x, seen * pixel().y];
    context.clearRect(0, 0, side, side);
    context.drawImage(
      copy,
      ...[(x - w / 2) * copy.naturalWidth, (y - h / 2) * copy.naturalHeight],
      ...[w * copy.naturalWidth, h * copy.naturalHeight],
      ...[0, 0, side, side],
    );
    for (const line of lines) {
      drawLine(
        context,
        line.map(([px, py]) => [((px - x) / w + 0.5) * side, ((py - y) / h + 0.5) * side]),
      );
    }
    drawCross(context, side);
  }, [x, y, image, pixel, source, times, lines]);
  return (
    <div className={styles.loupe} style={placeBeside(frame.shown(point), pixel())} aria-hidden="true">
      <canvas ref={canvas} width={SIDE_PX * 2} height={SIDE_PX * 2} />
    </div>
  );
}

/** Above the place where there is room, else under it, else at its side; never off the picture's left or right. */
function placeBeside([x, y]: FractionPoint, pixel: { x: number; y: number }): CSSProperties {
  const [width, height] = [1 / pixel.x, 1 / pixel.y];
  const needed = SIDE_PX + CLEAR_PX;
  const left = `clamp(${SIDE_PX / 2 + 4}px, ${x * 100}%, calc(100% - ${SIDE_PX / 2 + 4}px))`;
  const top = `${y * 100}%`;
  if (y * height >= needed) return { left, top };
  if ((1 - y) * height >= needed) return { left, top, marginTop: CLEAR_PX };
  const aside = x * width < width / 2 ? CLEAR_PX : -needed;
  return {
    left: `${x * 100}%`,
    top: `clamp(0px, ${y * 100}%, calc(100% - ${SIDE_PX}px))`,
    marginTop: 0,
    marginLeft: aside,
  };
}

/** A thin line, dark under light, so that it shows on anything. */
function drawLine(context: CanvasRenderingContext2D, points: readonly (readonly number[])[]): void {
  for (const [style, width] of [
    [OVER_CASING, 4],
    [OVER_LIGHT, 1.5],
  ] as const) {
    context.strokeStyle = style;
    context.lineWidth = width;
    context.beginPath();
    for (const [px = 0, py = 0] of points) context.lineTo(px, py);
    context.stroke();
  }
}

/** A cross with an open middle: dark over light, so that it shows on anything. */
function drawCross(context: CanvasRenderingContext2D, side: number): void {
  const [middle, gap, arm] = [side / 2, side * 0.03, side * 0.12];
  for (const [style, width] of [
    [OVER_CASING, 5],
    [OVER_LIGHT, 2],
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
