'use client';
/**
 * The scale from black to white, even in lightness, with handles that are pulled or moved by keys.
 *
 * In the flow: values panel, guess panel -> [grey scale]. The pattern for sliders with several handles of the ARIA
 * Authoring Practices: each handle is a slider of its own, held between its neighbours.
 */
import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from 'react';
import styles from './grey-scale.module.css';

export interface ScaleHandle {
  /** L*. */
  at: number;
  label: string;
  text: string;
  /** L* between which it can be moved. */
  least: number;
  most: number;
}

interface GreyScaleProps {
  handles: readonly ScaleHandle[];
  /** L* that one arrow key moves. */
  step: number;
  onMove(index: number, lightness: number): void;
  children?: ReactNode;
}

/** Arrow keys and the like, in L*; null for any other key. */
function keyed(key: string, { at, least, most }: ScaleHandle, step: number): number | null {
  const to: Record<string, number> = {
    ArrowLeft: at - step,
    ArrowDown: at - step,
    ArrowRight: at + step,
    ArrowUp: at + step,
    PageDown: at - 5 * step,
    PageUp: at + 5 * step,
    Home: least,
    End: most,
  };
  return to[key] ?? null;
}

export function GreyScale({ handles, step, onMove, children }: GreyScaleProps) {
  const scale = useRef<HTMLDivElement>(null);
  const pulled = useRef<number | null>(null);
  const lightnessAt = (clientX: number) => {
    const box = scale.current?.getBoundingClientRect();
    return box ? ((clientX - box.left) / box.width) * 100 : 0;
  };
  /** A press on the scale takes the nearest handle. */
  const press = (event: PointerEvent<HTMLElement>) => {
    if (event.button !== 0) return;
    const at = lightnessAt(event.clientX);
    const distances = handles.map((handle) => Math.abs(handle.at - at));
    const nearest = distances.indexOf(Math.min(...distances));
    if (nearest < 0) return;
    pulled.current = nearest;
    event.currentTarget.setPointerCapture(event.pointerId);
    onMove(nearest, at);
    const sliders = scale.current?.querySelectorAll<HTMLElement>('[role="slider"]');
    sliders?.[nearest]?.focus({ preventScroll: true });
    event.preventDefault();
  };
  const letGo = () => {
    pulled.current = null;
  };
  const onKeyDown = (event: KeyboardEvent, index: number, handle: ScaleHandle) => {
    const to = keyed(event.key, handle, step);
    if (to === null) return;
    event.preventDefault();
    onMove(index, to);
  };
  return (
    <div
      ref={scale}
      className={styles.scale}
      onPointerDown={press}
      onPointerMove={(event) => pulled.current !== null && onMove(pulled.current, lightnessAt(event.clientX))}
      onPointerUp={letGo}
      onPointerCancel={letGo}
    >
      {children}
      {handles.map((handle, index) => (
        <div
          // biome-ignore lint/suspicious/noArrayIndexKey: handles keep their order, and move.
          key={index}
          className={styles.handle}
          style={{ left: `${handle.at}%` }}
          role="slider"
          tabIndex={0}
          aria-orientation="horizontal"
          aria-label={handle.label}
          aria-valuemin={handle.least / 10}
          aria-valuemax={handle.most / 10}
          aria-valuenow={handle.at / 10}
          aria-valuetext={handle.text}
          onKeyDown={(event) => onKeyDown(event, index, handle)}
        />
      ))}
    </div>
  );
}
