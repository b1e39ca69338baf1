'use client';
/**
 * The chosen motif on the stage: its outline where it is now, moved by its body, sized by a grip at its top.
 *
 * In the flow: chosen motif -> [motif-hand] -> move while the hand holds it, change when it lets go. By keys too.
 */
import { type KeyboardEvent, type PointerEvent, useRef } from 'react';
import { LARGEST_SCALE, SMALLEST_SCALE } from '#server/core/contract/rearranging.ts';
import type { FractionPoint } from '#server/core/contract/setup.ts';
import type { KeptMotif } from '#server/core/live/plan/rearranging.ts';
import { footOf } from '#server/core/plan/rearrange/check-motif.ts';
import { rearrangeWords as words } from '#words/plan-rearrange.ts';
import { OnStage, OverPicture, useStage } from '../stage/stage-context.tsx';
import styles from './rearrange.module.css';
import { type StepChange, useRearranging } from './rearranging.tsx';

const STEP = 0.005;
const FAR = 0.05;
const SIZE_STEP = 1.05;
const ARROWS: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

function within(value: number, least: number, most: number): number {
  return Math.min(most, Math.max(least, value));
}

/** Where the points of the outline stand now. */
function placed({ outline, move, scale, mirrored }: KeptMotif): FractionPoint[] {
  const [footX, footY] = footOf(outline);
  const across = mirrored ? -scale : scale;
  return outline.map(
    ([x, y]): FractionPoint => [
      footX + move[0] + (x - footX) * across,
      footY + move[1] + (y - footY) * scale,
    ],
  );
}

/** What a pointer does between taking hold and letting go. */
function useDrag(
  motif: KeptMotif,
  changeAt: (begun: FractionPoint, at: FractionPoint, before: KeptMotif) => StepChange,
) {
  const { fractionAt } = useStage();
  const { move, change } = useRearranging();
  const begun = useRef<{ at: FractionPoint; motif: KeptMotif } | null>(null);
  const now = (event: PointerEvent): StepChange | null =>
    begun.current &&
    changeAt(begun.current.at, fractionAt(event.clientX, event.clientY), begun.current.motif);
  return {
    onPointerDown(event: PointerEvent<HTMLElement>) {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      begun.current = { at: fractionAt(event.clientX, event.clientY), motif };
    },
    onPointerMove(event: PointerEvent) {
      const to = now(event);
      if (to) move(to);
    },
    onPointerUp(event: PointerEvent) {
      const to = now(event);
      begun.current = null;
      if (to) change(motif, to);
    },
    onPointerCancel() {
      begun.current = null;
      move(null);
    },
  };
}

/** What a key does; null where it does nothing. */
function byKey({ move: [x, y], scale }: KeptMotif, { key, shiftKey }: KeyboardEvent): StepChange | null {
  const arrow = ARROWS[key];
  const by = shiftKey ? FAR : STEP;
  if (arrow) return { move: [within(x + arrow[0] * by, -1, 1), within(y + arrow[1] * by, -1, 1)] };
  if (key === '+' || key === '=') return { scale: within(scale * SIZE_STEP, SMALLEST_SCALE, LARGEST_SCALE) };
  return key === '-' ? { scale: within(scale / SIZE_STEP, SMALLEST_SCALE, LARGEST_SCALE) } : null;
}

export function MotifHand({ motif }: { motif: KeptMotif }) {
  const { widthPx, heightPx } = useStage();
  const { change } = useRearranging();
  const body = useDrag(motif, ([x0, y0], [x, y], { move }) => ({
    move: [within(move[0] + x - x0, -1, 1), within(move[1] + y - y0, -1, 1)],
  }));
  const size = useDrag(motif, (_, [, y], before) => {
    const [, footY] = footOf(before.outline);
    const height = footY - Math.min(...before.outline.map(([, each]) => each));
    return { scale: within((footY + before.move[1] - y) / height, SMALLEST_SCALE, LARGEST_SCALE) };
  });
  const points = placed(motif);
  const path = points.map(([x, y]) => `${x * widthPx},${y * heightPx}`).join(' ');
  const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
  const box = {
    left: Math.min(...xs),
    top: Math.min(...ys),
    right: Math.max(...xs),
    bottom: Math.max(...ys),
  };
  const percent = (share: number) => `${share * 100}%`;
  const onKeyDown = (event: KeyboardEvent) => {
    const to = byKey(motif, event);
    if (!to) return;
    event.preventDefault();
    change(motif, to);
  };
  return (
    <>
      <OnStage>
        <polygon className={styles.casing} points={path} />
        <polygon className={styles.core} points={path} />
      </OnStage>
      <OverPicture>
        <button
          type="button"
          className={styles.body}
          style={{
            ...{ left: percent(box.left), top: percent(box.top) },
            ...{ width: percent(box.right - box.left), height: percent(box.bottom - box.top) },
          }}
          aria-label={words.moveIt(motif.name)}
          title={words.moveKeys}
          {...body}
          onKeyDown={onKeyDown}
        />
        <button
          type="button"
          className={styles.grip}
          style={{ left: percent((box.left + box.right) / 2), top: percent(box.top) }}
          aria-label={words.sizeIt(motif.name)}
          {...size}
          onKeyDown={onKeyDown}
        />
      </OverPicture>
    </>
  );
}
