'use client';
/** The edge between two pictures that lie over each other: dragged, or moved by the arrow keys. */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { words } from '#words/easel.ts';
import styles from './easel.module.css';

const STEP = 0.02;

/** @param edge 0..1 of the width, from the left. */
export function WipeEdge({ edge, setEdge }: { edge: number; setEdge(edge: number): void }) {
  const pulling = useRef(false);
  const set = (next: number) => setEdge(Math.min(1, Math.max(0, next)));
  const move = (event: PointerEvent<HTMLElement>) => {
    if (!pulling.current) return;
    const box = event.currentTarget.parentElement?.getBoundingClientRect();
    if (box) set((event.clientX - box.left) / box.width);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const to = { ArrowLeft: edge - STEP, ArrowRight: edge + STEP, Home: 0, End: 1 }[event.key];
    if (to === undefined) return;
    event.preventDefault();
    set(to);
  };
  return (
    <div
      className={styles.edge}
      style={{ left: `${edge * 100}%` }}
      role="slider"
      tabIndex={0}
      aria-orientation="horizontal"
      aria-label={words.easel.edge}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(edge * 100)}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        pulling.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={move}
      onPointerUp={() => {
        pulling.current = false;
      }}
      onPointerCancel={() => {
        pulling.current = false;
      }}
    />
  );
}
