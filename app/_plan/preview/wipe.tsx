'use client';
/**
 * The edge between photograph and plan: drawn over the picture by mouse, touch or arrow keys.
 *
 * In the flow: hand or key -> [wipe] -> preview-on-stage.
 */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import styles from './preview.module.css';

const STEP = 0.02;
const FAR = 0.1;

interface WipeProps {
  /** Share of the width, 0..1. */
  edge: number;
  setEdge(edge: number): void;
}

function byKey(edge: number, { key, shiftKey }: KeyboardEvent): number | null {
  const by = shiftKey ? FAR : STEP;
  if (key === 'ArrowLeft' || key === 'ArrowDown') return edge - by;
  if (key === 'ArrowRight' || key === 'ArrowUp') return edge + by;
  if (key === 'Home') return 0;
  return key === 'End' ? 1 : null;
}

export function Wipe({ edge, setEdge }: WipeProps) {
  const { fractionAt, widthPx, heightPx } = useStage();
  const held = useRef(false);
  const put = (to: number) => setEdge(Math.min(1, Math.max(0, to)));
  const follow = (event: PointerEvent) => held.current && put(fractionAt(event.clientX, event.clientY)[0]);
  const percent = Math.round(edge * 100);
  const line = { x1: edge * widthPx, x2: edge * widthPx, y1: 0, y2: heightPx };
  return (
    <>
      <OnStage>
        <line className={styles.casing} {...line} />
        <line className={styles.core} {...line} />
      </OnStage>
      <OverPicture>
        <div
          role="slider"
          tabIndex={0}
          className={styles.edge}
          style={{ left: `${edge * 100}%` }}
          aria-label={words.edge}
          aria-orientation="horizontal"
          aria-valuemin={0}
          aria-valuemax={100}
          aria-valuenow={percent}
          aria-valuetext={words.edgeText(percent)}
          onPointerDown={(event) => {
            if (event.button !== 0) return;
            event.currentTarget.setPointerCapture(event.pointerId);
            held.current = true;
          }}
          onPointerMove={follow}
          onPointerUp={(event) => {
            follow(event);
            held.current = false;
          }}
          onPointerCancel={() => {
            held.current = false;
          }}
          onKeyDown={(event) => {
            const to = byKey(edge, event);
            if (to === null) return;
            event.preventDefault();
            put(to);
          }}
        />
      </OverPicture>
    </>
  );
}
