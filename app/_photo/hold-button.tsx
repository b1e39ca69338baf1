'use client';
/**
 * Held down, it shows the one; let go, the other. A short press or a key leaves it on until the next.
 *
 * In the flow: finger, mouse or key -> [hold-button] -> photo desk.
 */
import { type ReactNode, useRef } from 'react';
import styles from './beside.module.css';

/** A press longer than this was a hold, milliseconds. */
const HOLD_MS = 350;

interface HoldButtonProps {
  pressed: boolean;
  setPressed(pressed: boolean): void;
  children: ReactNode;
}

export function HoldButton({ pressed, setPressed, children }: HoldButtonProps) {
  const down = useRef<{ atMs: number; before: boolean } | null>(null);
  const letGo = (atMs: number) => {
    const began = down.current;
    down.current = null;
    if (began) setPressed(atMs - began.atMs > HOLD_MS ? false : !began.before);
  };
  return (
    <button
      type="button"
      className={styles.hold}
      aria-pressed={pressed}
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        down.current = { atMs: event.timeStamp, before: pressed };
        setPressed(true);
      }}
      onPointerUp={(event) => letGo(event.timeStamp)}
      onPointerCancel={(event) => letGo(event.timeStamp + HOLD_MS)}
      onContextMenu={(event) => event.preventDefault()}
      onClick={(event) => {
        // A key comes without a pointer; a pointer has been heard above.
        if (event.detail === 0) setPressed(!pressed);
      }}
    >
      {children}
    </button>
  );
}
