'use client';
/**
 * A quantity to be moved: its name, what it stands at in words, and a slider. Moving shows, letting go writes.
 *
 * In the flow: planned ladder -> [slide] -> wishes of the plan.
 */
import { type ReactNode, useId, useRef } from 'react';
import styles from './planned.module.css';

interface SlideProps {
  label: ReactNode;
  /** What it stands at, with its unit. */
  text: string;
  amount: number;
  /** Least, most, step. */
  range: readonly [number, number, number];
  onMove(amount: number): void;
  onSet(amount: number): void;
}

export function Slide({ label, text, amount, range: [min, max, step], onMove, onSet }: SlideProps) {
  const id = useId();
  const moved = useRef(false);
  const letGo = ({ currentTarget }: { currentTarget: HTMLInputElement }) => {
    if (!moved.current) return;
    moved.current = false;
    onSet(Number(currentTarget.value));
  };
  return (
    <div className={styles.slide}>
      <label htmlFor={id}>{label}</label>
      <output htmlFor={id}>{text}</output>
      <input
        id={id}
        type="range"
        {...{ min, max, step }}
        value={amount}
        aria-valuetext={text}
        onChange={({ target }) => {
          moved.current = true;
          onMove(Number(target.value));
        }}
        onPointerUp={letGo}
        onKeyUp={letGo}
        onBlur={letGo}
      />
    </div>
  );
}
