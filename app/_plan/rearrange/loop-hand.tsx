'use client';
/**
 * Draws a loop on the photograph with mouse, pen or finger; letting go lifts what it holds.
 *
 * In the flow: pointer on the stage -> [loop-hand] -> lift. Escape leaves it. By key a whole plane is lifted instead.
 */
import { type PointerEvent, useEffect, useRef, useState } from 'react';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import { drawnLoop } from '#server/core/plan/rearrange/drawn-loop.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import styles from './rearrange.module.css';
import { useRearranging } from './rearranging.tsx';

function held(value: number): number {
  return Math.min(1, Math.max(0, value));
}

export function LoopHand() {
  const { fractionAt, widthPx, heightPx } = useStage();
  const { lift, setDrawing, steps } = useRearranging();
  const points = useRef<FractionPoint[]>([]);
  const [shown, setShown] = useState<readonly FractionPoint[]>([]);
  useEffect(() => {
    const leave = ({ key }: KeyboardEvent) => key === 'Escape' && setDrawing(false);
    window.addEventListener('keydown', leave);
    return () => window.removeEventListener('keydown', leave);
  }, [setDrawing]);
  const add = (event: PointerEvent) => {
    const [x, y] = fractionAt(event.clientX, event.clientY);
    points.current = [...points.current, [held(x), held(y)]];
    setShown(points.current);
  };
  const finish = () => {
    const loop = drawnLoop(points.current);
    points.current = [];
    setShown([]);
    const number = steps.filter(({ kind }) => kind === 'motif').length + 1;
    if (loop.length > 0 && lift(loop, null, words.motif(number))) setDrawing(false);
  };
  const path = shown.map(([x, y]) => `${x * widthPx},${y * heightPx}`).join(' ');
  return (
    <>
      <OnStage>
        <polyline className={styles.casing} points={path} />
        <polyline className={styles.core} points={path} />
      </OnStage>
      <OverPicture>
        <div
          className={styles.paper}
          data-testid="loop"
          onPointerDown={(event) => {
            if (event.button !== 0) return;
            event.currentTarget.setPointerCapture(event.pointerId);
            add(event);
          }}
          onPointerMove={(event) => points.current.length > 0 && add(event)}
          onPointerUp={finish}
          onPointerCancel={() => {
            points.current = [];
            setShown([]);
          }}
        />
      </OverPicture>
    </>
  );
}
