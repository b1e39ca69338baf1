'use client';
/** One state over the other with an edge that is dragged, or moved by the arrow keys. In the flow: stage -> [wipe]. */
import { type KeyboardEvent, type PointerEvent, useRef, useState } from 'react';
import { statesWords } from '#words/states.ts';
import { type Pair, stageRatio } from './pair.ts';
import styles from './states.module.css';

const { stage: words } = statesWords;
const STEP = 0.02;

export function Wipe({ pair: { before, after, ratio } }: { pair: Pair }) {
  const [edge, setEdge] = useState(0.5);
  return (
    <figure className={styles.figure} style={stageRatio(ratio)}>
      <div className={styles.over}>
        {/* biome-ignore lint/performance/noImgElement: made by our own server for this one look. */}
        <img src={before.src} alt={words.before(before.at)} />
        {/* biome-ignore lint/performance/noImgElement: as above. */}
        <img
          src={after.src}
          alt={words.after(after.at)}
          style={{ clipPath: `inset(0 0 0 ${edge * 100}%)` }}
        />
        <Edge edge={edge} setEdge={setEdge} />
      </div>
      <figcaption className={styles.sides}>
        <span>{words.before(before.at)}</span>
        <span>{words.before(after.at)}</span>
      </figcaption>
    </figure>
  );
}

/** @param edge 0..1 of the width, from the left. */
function Edge({ edge, setEdge }: { edge: number; setEdge(edge: number): void }) {
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
  const letGo = () => {
    pulling.current = false;
  };
  return (
    <div
      className={styles.edge}
      style={{ left: `${edge * 100}%` }}
      role="slider"
      tabIndex={0}
      aria-orientation="horizontal"
      aria-label={words.edge}
      aria-valuemin={0}
      aria-valuemax={100}
      aria-valuenow={Math.round(edge * 100)}
      onKeyDown={onKeyDown}
      onPointerDown={(event) => {
        pulling.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
      }}
      onPointerMove={move}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    />
  );
}
