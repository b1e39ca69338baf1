'use client';
/**
 * The chosen ridge on the stage, as it is bent now, with one grip: up and down bends it, left and right moves the place.
 *
 * In the flow: chosen bend -> [bend-hand] -> move while the hand holds it, change when it lets go. By keys too.
 */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { MOST_LIFT } from '#server/core/contract/rearranging.ts';
import type { KeptBend } from '#server/core/live/plan/rearranging.ts';
import { bentLine, ridgeAt } from '#server/core/plan/rearrange/bend-ridge.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import styles from './rearrange.module.css';
import { type StepChange, useRearranging } from './rearranging.tsx';

const STEP = 0.005;
const FAR = 0.03;

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

export function BendHand({ bend }: { bend: KeptBend }) {
  const { widthPx, heightPx, fractionAt } = useStage();
  const { move, change } = useRearranging();
  const held = useRef(false);
  const to = (x: number, y: number): StepChange => {
    const at = within(x, 0, 1);
    return { at, lift: within(ridgeAt(bend.line, at) - y, -MOST_LIFT, MOST_LIFT) };
  };
  const now = (event: PointerEvent) => to(...(fractionAt(event.clientX, event.clientY) as [number, number]));
  const onKeyDown = (event: KeyboardEvent) => {
    const by = event.shiftKey ? FAR : STEP;
    const next: Record<string, StepChange> = {
      ArrowUp: { lift: within(bend.lift + by, -MOST_LIFT, MOST_LIFT) },
      ArrowDown: { lift: within(bend.lift - by, -MOST_LIFT, MOST_LIFT) },
      ArrowLeft: { at: within(bend.at - by, 0, 1) },
      ArrowRight: { at: within(bend.at + by, 0, 1) },
    };
    const wanted = next[event.key];
    if (!wanted) return;
    event.preventDefault();
    change(bend, wanted);
  };
  const path = bentLine(bend)
    .map(([x, y]) => `${x * widthPx},${y * heightPx}`)
    .join(' ');
  return (
    <>
      <OnStage>
        <polyline className={styles.casing} points={path} />
        <polyline className={styles.core} points={path} />
      </OnStage>
      <OverPicture>
        <button
          type="button"
          className={styles.grip}
          style={{
            left: `${bend.at * 100}%`,
            top: `${within(ridgeAt(bend.line, bend.at) - bend.lift, 0, 1) * 100}%`,
          }}
          aria-label={words.bendIt(bend.name)}
          title={words.bendKeys}
          onPointerDown={(event) => {
            if (event.button !== 0) return;
            event.currentTarget.setPointerCapture(event.pointerId);
            held.current = true;
          }}
          onPointerMove={(event) => held.current && move(now(event))}
          onPointerUp={(event) => {
            if (held.current) change(bend, now(event));
            held.current = false;
          }}
          onPointerCancel={() => {
            held.current = false;
            move(null);
          }}
          onKeyDown={onKeyDown}
        />
      </OverPicture>
    </>
  );
}
