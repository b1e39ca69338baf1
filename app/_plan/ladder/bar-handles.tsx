'use client';
/**
 * Lights, middle and darks of each planned bar, to be dragged on the value scale or moved by key.
 *
 * In the flow: ladder geometry + planned ladder -> [bar-handles] -> wishes of the plan. A handle is a slider to those who
 * listen; each letting go and each key is one step that can be undone.
 */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { figure } from '#app/_words/figures.ts';
import type { PlaneMeasures } from '#server/core/contract/measures.ts';
import type { LadderBar } from '#server/core/ladder/geometry.ts';
import { planLadderWords as words } from '#words/plan-ladder.ts';
import styles from './planned.module.css';
import { usePlannedLadder } from './planned-ladder.tsx';

type LightPart = 'light' | 'mid' | 'dark';
const PARTS: readonly LightPart[] = ['light', 'mid', 'dark'];
/** A tenth of a step, and half a step, L*. */
const SMALL = 1;
const LARGE = 5;
const KEYS: Record<string, number> = {
  ArrowUp: SMALL,
  ArrowRight: SMALL,
  ArrowDown: -SMALL,
  ArrowLeft: -SMALL,
  PageUp: LARGE,
  PageDown: -LARGE,
};
const GIVE_BACK = ['Delete', 'Backspace'];

interface BarHandlesProps {
  name: string;
  planeId: string;
  bar: LadderBar;
  /** As planned now. */
  planned: PlaneMeasures;
}

/** What a handle is set to when its end is to stand at `value`: darks and lights are lightnesses, the middle a shift. */
function amountFor(part: LightPart, value: number, planned: PlaneMeasures, shift: number): number {
  const held = Math.min(100, Math.max(0, value));
  return part === 'mid' ? Math.min(100, Math.max(-100, shift + held - (planned.mid ?? 0))) : held;
}

export function BarHandles({ name, planeId, bar, planned }: BarHandlesProps) {
  return PARTS.map((part) => <BarHandle key={part} part={part} {...{ name, planeId, bar, planned }} />);
}

function placeOf(part: LightPart, { top, height, middle }: LadderBar): number {
  if (part === 'mid') return middle ?? top + height / 2;
  return part === 'light' ? top : top + height;
}

function BarHandle({ part, name, planeId, bar, planned }: BarHandlesProps & { part: LightPart }) {
  const { handles, move, setHandle } = usePlannedLadder();
  const drag = useRef<{ y: number; plotPx: number; value: number; shift: number; at: PlaneMeasures } | null>(
    null,
  );
  const value = planned[part];
  if (value === null) return null;
  const shift = handles.get(planeId)?.mid ?? 0;
  const amountAt = (event: PointerEvent) => {
    const from = drag.current;
    if (!from) return null;
    const to = from.value - ((event.clientY - from.y) / from.plotPx) * 100;
    return Math.round(amountFor(part, to, from.at, from.shift) * 10) / 10;
  };
  const letGo = (event: PointerEvent) => {
    const amount = amountAt(event);
    const moved = drag.current && Math.abs(event.clientY - drag.current.y) > 0;
    drag.current = null;
    if (amount !== null && moved) setHandle(planeId, part, amount);
    move(null);
  };
  // From what is set, not from what is planned: keys may come faster than the plan.
  const steppedBy = (by: number) => {
    if (part === 'mid') return Math.min(100, Math.max(-100, shift + by));
    const middle = planned.mid ?? 0;
    const [least, most] = part === 'dark' ? [0, middle] : [middle, 100];
    return Math.min(most, Math.max(least, (handles.get(planeId)?.[part] ?? value) + by));
  };
  const press = (event: KeyboardEvent) => {
    const by = KEYS[event.key];
    if (by !== undefined) setHandle(planeId, part, steppedBy(by));
    else if (GIVE_BACK.includes(event.key)) setHandle(planeId, part, null);
    else return;
    event.preventDefault();
  };
  return (
    <button
      type="button"
      role="slider"
      className={styles.handle}
      data-part={part}
      data-set={handles.get(planeId)?.[part] === undefined ? undefined : ''}
      style={{ left: `${bar.x * 100}%`, top: `${placeOf(part, bar) * 100}%` }}
      aria-label={words.handle(part, name)}
      aria-orientation="vertical"
      aria-valuemin={0}
      aria-valuemax={10}
      aria-valuenow={Number((value / 10).toFixed(2))}
      aria-valuetext={words.value(figure(value / 10, 1))}
      title={words.handleKeys}
      onKeyDown={press}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        const plotPx = event.currentTarget.parentElement?.clientHeight || 1;
        drag.current = { y: event.clientY, plotPx, value, shift, at: planned };
      }}
      onPointerMove={(event) => {
        const amount = amountAt(event);
        if (amount !== null) move({ planeId, part, amount });
      }}
      onPointerUp={letGo}
      onPointerCancel={() => {
        drag.current = null;
        move(null);
      }}
    />
  );
}
